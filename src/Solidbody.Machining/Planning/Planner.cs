using System.Collections.Immutable;
using Solidbody.Findings;
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
        var setUps = ImmutableArray.CreateBuilder<PlannedSetUp>();
        var findings = ImmutableArray.CreateBuilder<Finding>();
        foreach (var part in design.Parts)
        {
            var planned = new PartPlanner(part, design.Definition, shop, setUps.Count + 1).Plan();
            setUps.AddRange(planned.SetUps);
            findings.AddRange(planned.Findings);
        }
        return new(setUps.ToImmutable(), [.. findings.Distinct()]);
    }
}
