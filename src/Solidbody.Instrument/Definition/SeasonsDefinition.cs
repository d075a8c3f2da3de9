namespace Solidbody.Instrument;

/// <summary>Air that wood settles in.</summary>
/// <param name="Temperature">°C.</param>
/// <param name="Humidity">Relative, 0 to 1.</param>
public readonly record struct Climate(double Temperature, double Humidity)
{
    /// <summary>Moisture wood settles at, per cent.</summary>
    public double Moisture => Materials.Moisture.Equilibrium(Temperature, Humidity);
}

/// <summary>The air in the workshop while it is built, and the driest and wettest it will live in. Defaults: a heated room's year; common practice, no source.</summary>
public sealed record SeasonsDefinition
{
    public Climate Built { get; init; } = new(20, 0.45);
    public Climate Driest { get; init; } = new(21, 0.30);
    public Climate Wettest { get; init; } = new(24, 0.60);
}
