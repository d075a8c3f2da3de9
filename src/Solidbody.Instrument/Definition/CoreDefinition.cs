namespace Solidbody.Instrument;

/// <summary>A through-neck's wood behind the neck: the middle of the body, level and parallel from the shoulder line to the tail, with a wing glued on at either side.</summary>
/// <param name="Width">From glue line to glue line, mm.</param>
public sealed record CoreDefinition(double Width)
{
    /// <summary>The glue lines' y, bass side first.</summary>
    public (double Bass, double Treble) Lines => (-Width / 2, Width / 2);
    /// <summary>The board on hand its blank must come out of; null when the file does not say.</summary>
    public BoardDefinition? Board { get; init; }
}

/// <summary>A board as it lies there, mm.</summary>
public sealed record BoardDefinition(double Length, double Width, double Thickness);
