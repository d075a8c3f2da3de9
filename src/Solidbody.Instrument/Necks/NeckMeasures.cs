using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;

namespace Solidbody.Instrument.Necks;

/// <summary>What is measured on the cut neck. Caliper lines keep clear of the rod channel, the screws and the tuner holes.</summary>
internal static class NeckMeasures
{
    /// <summary>Wood wanted above and below a caliper's height, mm.</summary>
    private const double Grip = 0.5;

    public static ImmutableArray<Measure> Of(InstrumentDefinition d, NeckBack back, Region plan, ImmutableArray<Hole> tuners, ImmutableArray<Hole> screws) =>
    [
        .. Thicknesses(d, back),
        .. Widths(d, back, screws),
        .. Rod(d.Neck.Rod),
        .. Bars(d.Neck.Bars),
        .. tuners.SelectMany(t => Take.Hole(t, -d.Headstock.Drop - d.Headstock.Thickness / 2)),
        .. HeadThickness(d, back, plan, tuners),
    ];

    /// <summary>Depth of the back on its deepest line; the board's thickness, which the file's figure includes, is taken off.</summary>
    private static IEnumerable<Measure> Thicknesses(InstrumentDefinition d, NeckBack back)
    {
        foreach (var (fret, thickness) in ((int, double)[])[(1, d.Neck.ThicknessAtFret1), (12, d.Neck.ThicknessAtFret12)])
        {
            var x = FretTable.Position(d.Scale, fret);
            // Where a blend has begun, the file's figure no longer rules.
            if (fret > d.Frets || x > back.HeelBlendFrom(back.Apex(x)) || -x > HeadBlendStart(back)) continue;
            yield return new($"neck thickness at fret {fret}, without board", thickness - d.Fretboard.Thickness, Take.Tolerance,
                new Caliper.DepthFromBottom(new(x, back.ApexY(x)), 0));
        }
    }

    /// <summary>u where the headstock's blend or the volute begins on the deepest line.</summary>
    private static double HeadBlendStart(NeckBack back) => Math.Min(
        back.Head.StartCentre + (back.Head.StartEdge - back.Head.StartCentre) * back.Profile.Apex * back.Profile.Apex,
        back.Head.VoluteAt - back.Head.VoluteHalfLength);

    private static IEnumerable<Measure> Widths(InstrumentDefinition d, NeckBack back, ImmutableArray<Hole> screws)
    {
        var (rod, joint) = (d.Neck.Rod, NeckJoint.Of(d));
        double Floor(double x) => x >= rod.Start && x <= rod.End ? rod.Depth : 0;

        // Beside the nut the edges already run deep into the headstock: below the channel's floor the wood goes from edge to edge.
        var nutX = Take.InsideEnd;
        var edge = Math.Min(back.Depth(nutX, back.HalfWidth(nutX)), back.Depth(nutX, -back.HalfWidth(nutX)));
        if (edge - Floor(nutX) > 2 * Grip)
            yield return Width("neck width at the nut", d, nutX, (edge + Floor(nutX)) / 2);

        // A through-neck's heel is the body's middle: no caliper comes round it.
        if (d.Neck.Joint == JointKind.Through) yield break;
        // On the heel, between the rear screws and the end, or between the rows.
        var (rear, r) = (joint.HeelEnd - d.Neck.Heel.Screws.FromEnd, d.Neck.Heel.Screws.Pilot / 2);
        var heelX = rear - d.Neck.Heel.Screws.AlongX / 2;
        if (heelX > back.HeelX && d.Neck.Heel.Screws.AlongX > 2 * (r + Grip) && d.Neck.Heel.Thickness - Floor(heelX) > 2 * Grip)
        {
            yield return Width(d.Neck.Joint == JointKind.BoltOn ? "heel width between the screws" : "heel width", d, heelX, (d.Neck.Heel.Thickness + Floor(heelX)) / 2);
            yield return new("heel thickness", d.Neck.Heel.Thickness, Take.Tolerance, new Caliper.Thickness(new(heelX, (rod.Width / 2 + Tenon.NeckHalfWidth(d, heelX)) / 2)));
        }
    }

    private static Measure Width(string name, InstrumentDefinition d, double x, double depth)
    {
        var half = Tenon.NeckHalfWidth(d, x);
        return new(name, 2 * half, Take.Tolerance, new Caliper.Outside(new(x, 0), Take.AlongY, -depth, 2 * half));
    }

    private static IEnumerable<Measure> Rod(RodDefinition rod)
    {
        var middle = new Point2((Math.Max(rod.Start, 0) + rod.End) / 2, 0);
        yield return new("rod channel width", rod.Width, Take.Tolerance, new Caliper.Inside(middle, Take.AlongY, -rod.Depth / 2, 2 * rod.Width));
        yield return new("rod channel depth", rod.Depth, Take.Tolerance, new Caliper.DepthFromTop(middle, 0));
    }

    private static IEnumerable<Measure> Bars(BarsDefinition bars)
    {
        foreach (var y in bars.Sides)
        {
            var middle = new Point2((bars.Start + bars.End) / 2, y);
            yield return new($"{NeckMaker.Bar(y)} channel width", bars.Width, Take.Tolerance, new Caliper.Inside(middle, Take.AlongY, -bars.Depth / 2, 2 * bars.Width));
            yield return new($"{NeckMaker.Bar(y)} channel depth", bars.Depth, Take.Tolerance, new Caliper.DepthFromTop(middle, 0));
        }
    }

    private static IEnumerable<Measure> HeadThickness(InstrumentDefinition d, NeckBack back, Region plan, ImmutableArray<Hole> tuners)
    {
        // On a leaning headstock an upright caliper meets the plate aslant.
        var thickness = d.Headstock.Thickness / Math.Cos(d.Headstock.Angle);
        var end = Math.Min(-back.HeadLevelFrom, NeckMaker.AccessSpan(d)?.From ?? 0);
        end = Math.Min(end, Math.Min(d.Neck.Rod.Start, -Strings.Of(d).HeadFrom - d.Nut.Thickness)) - 2;
        if (Clearest.Point(new(plan.Bounds.X0, plan.Bounds.Y0, end, plan.Bounds.Y1), p =>
                Math.Min(-plan.SignedDistance(p), tuners.Select(t => t.Centre.DistanceTo(p) - t.Diameter / 2).DefaultIfEmpty(double.PositiveInfinity).Min())) is { } at)
            yield return new(d.Headstock.Angle > 0 ? "headstock thickness, upright" : "headstock thickness", thickness, Take.Tolerance, new Caliper.Thickness(at));
    }
}
