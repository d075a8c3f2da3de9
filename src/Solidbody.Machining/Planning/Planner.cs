using Solidbody.Instrument;
using Solidbody.Shop;

namespace Solidbody.Machining.Planning;

/// <summary>Lays out the work: blanks, set-ups, operations with their cutters and feeds, in a safe order. No toolpaths: a plan is quick.</summary>
public static class Planner
{
    /// <summary>The plan of an instrument in a shop. A part that does not work leaves findings that stop, and as much of its plan as there is.</summary>
    public static Plan Plan(Design design, ShopDefinition shop)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(shop);
        if (design.Definition.Neck.Joint == JointKind.Through) return new([], [PlanFindings.GoesThrough()]);
        // Parts know nothing of one another: each is planned by itself, and they are put together in the design's order.
        var parts = new Plan[design.Parts.Length];
        Parallel.For(0, parts.Length, i => parts[i] = new PartPlanner(design.Parts[i], design.Definition, shop).Plan());
        var setUps = parts.SelectMany(p => p.SetUps).Select((s, i) => s with { SetUp = s.SetUp with { Order = i + 1 } });
        return new([.. setUps], [.. parts.SelectMany(p => p.Findings).Distinct()]);
    }
}
