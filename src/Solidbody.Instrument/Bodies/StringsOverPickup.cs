using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Instrument.Necks;

namespace Solidbody.Instrument.Bodies;

/// <summary>Where the strings cross a pickup's long axis.</summary>
internal static class StringsOverPickup
{
    /// <summary>Place of every string on the axis, mm from the pickup's middle, positive toward the treble side.</summary>
    public static ImmutableArray<double> Crossings(PickupDefinition p, Strings strings)
    {
        var axis = new Point2(0, 1).Turned(p.Turn);
        // Nut + t run = centre + v axis.
        return [.. Enumerable.Range(0, strings.Count).Select(i =>
        {
            var (from, run) = (strings.Nut(i) - new Point2(p.CentreX, 0), strings.Saddle(i) - strings.Nut(i));
            return from.Cross(run) / axis.Cross(run);
        })];
    }

    /// <summary>The outer string that lies further out, mm from the middle.</summary>
    public static double Widest(PickupDefinition p, Strings strings) => Crossings(p, strings).Max(Math.Abs);
}
