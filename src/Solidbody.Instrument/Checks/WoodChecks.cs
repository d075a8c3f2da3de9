using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Instrument.Balance;
using Solidbody.Materials;

namespace Solidbody.Instrument.Checks;

/// <summary>Which figures of the woods chosen are missing: each wood once, with the parts made of it.</summary>
internal static class WoodChecks
{
    public static IEnumerable<Finding> Of(InstrumentDefinition d, ImmutableArray<PartWood> woods)
    {
        foreach (var group in woods.GroupBy(w => w.Wood))
        {
            var (wood, names) = (d.WoodOf(group.Key), string.Join(", ", group.Select(w => w.Name)));
            if (wood?.Gravity is null) yield return WoodFindings.NoWeight(group.Key, names);
            if (wood?.RadialChange is null || wood.TangentialChange is null) yield return WoodFindings.NoMovement(group.Key, names);
            var isNeck = group.Any(w => w.Part.Name is "neck" or "fretboard");
            if (isNeck && Missing(wood) is { Length: > 0 } missing) yield return WoodFindings.NoStrength(group.Key, names, missing);
        }
    }

    private static string Missing(Wood? wood)
    {
        (string What, Sourced? Figure)[] figures = [("stiffness", wood?.Stiffness), ("bending strength", wood?.BendingStrength)];
        return string.Join(" or ", figures.Where(f => f.Figure is null).Select(f => f.What));
    }
}
