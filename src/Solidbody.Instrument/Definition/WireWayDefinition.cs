namespace Solidbody.Instrument;

/// <summary>A way for wires between two rooms, by their names: a pickup's name, <c>neck pocket</c>, <c>controls</c>, <c>bridge</c> (ground).</summary>
public sealed record WireWayDefinition(string From, string To, double Diameter);
