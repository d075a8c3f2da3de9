namespace Solidbody.Instrument;

/// <summary>What was worked out about how the instrument plays, holds and hangs: figures for tables and plots. What is not right among them is a finding too.</summary>
public sealed record Figures
{
    /// <summary>Of an instrument whose parts could not be drawn.</summary>
    public static Figures None { get; } = new();
}
