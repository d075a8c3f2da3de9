using System.Collections.Immutable;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Balance;

/// <summary>One thing on the scales.</summary>
/// <param name="Name">For people; several of a kind are one.</param>
/// <param name="Mass">kg.</param>
/// <param name="Centre">Of gravity: x from the nut, y toward the treble side of a right-handed instrument, z from the body's front.</param>
public sealed record Weighed(string Name, double Mass, PartPoint Centre)
{
    /// <summary>All together: mass, and centre of gravity.</summary>
    public static Weighed Together(string name, IReadOnlyCollection<Weighed> things)
    {
        ArgumentNullException.ThrowIfNull(things);
        var mass = things.Sum(t => t.Mass);
        double Mean(Func<PartPoint, double> of) => mass > 0 ? things.Sum(t => t.Mass * of(t.Centre)) / mass : 0;
        return new(name, mass, new(Mean(p => p.X), Mean(p => p.Y), Mean(p => p.Z)));
    }

    /// <summary>Several alike at their places.</summary>
    public static Weighed Each(string name, double mass, IEnumerable<PartPoint> places) => Together(name, [.. places.Select(p => new Weighed(name, mass, p))]);
}

/// <summary>The instrument's wood, part by part and kind by kind.</summary>
internal static class WoodWeights
{
    /// <returns>Null when a wood's density is not known.</returns>
    public static ImmutableArray<Weighed>? Of(InstrumentDefinition d, ImmutableArray<PartWood> woods)
    {
        var weights = ImmutableArray.CreateBuilder<Weighed>();
        foreach (var wood in woods)
        {
            if (DensityOf(d, wood.Wood) is not { } density) return null;
            weights.Add(new(wood.Name, density * wood.Volume.Volume, wood.Volume.Centre with { Z = wood.Volume.Centre.Z + DatumAboveBody(d, wood.Part.Name) }));
        }
        return weights.ToImmutable();
    }

    /// <summary>kg/mm³ at the workshop's moisture.</summary>
    public static double? DensityOf(InstrumentDefinition d, string wood) => d.WoodOf(wood)?.DensityAt(d.Seasons.Built.Moisture) * 1e-9;

    /// <summary>Height of a part's datum over the body's front, mm: neck and fretboard share the glue plane, everything else the front.</summary>
    public static double DatumAboveBody(InstrumentDefinition d, string part) => part is "neck" or "fretboard" ? d.Neck.Heel.Thickness - d.Body.Pocket.Depth : 0;
}
