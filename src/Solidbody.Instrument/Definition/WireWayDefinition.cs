namespace Solidbody.Instrument;

/// <summary>How a way for wires is made.</summary>
public enum WireMaking
{
    /// <summary>With a long drill from a room's own opening, or from the neck pocket.</summary>
    Drilled,
    /// <summary>As a groove while the blank is still in pieces: under the top, or in the joint of the halves.</summary>
    Ploughed,
}

/// <summary>A way for wires between two rooms, by their names: a pickup's name, <c>neck pocket</c>, <c>controls</c>, <c>bridge</c> (ground).</summary>
public sealed record WireWayDefinition(string From, string To, double Diameter)
{
    public WireMaking Made { get; init; } = WireMaking.Drilled;
}

/// <summary>The long drill on hand.</summary>
/// <param name="Length">Free of the chuck.</param>
/// <param name="Chuck">Diameter of the chuck.</param>
public sealed record LongDrillDefinition(double Length, double Chuck);
