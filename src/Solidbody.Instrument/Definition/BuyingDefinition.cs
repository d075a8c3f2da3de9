namespace Solidbody.Instrument;

/// <summary>What is bought beside what the parts need. Defaults: common practice, no source.</summary>
public sealed record BuyingDefinition
{
    /// <summary>Rough board over the planed thickness, both faces together, mm.</summary>
    public double Planing { get; init; } = 6;
    /// <summary>Board beside and beyond the part at each side and end, mm.</summary>
    public double Margin { get; init; } = 20;
    /// <summary>Bought beyond that, a share of it: knots, checks, the saw's kerf.</summary>
    public double Waste { get; init; } = 0.20;
}
