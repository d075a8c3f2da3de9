using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Instrument.Outlines;

namespace Solidbody.Instrument.Bodies;

/// <summary>One side of the body's outline, from the lower bout to the shoulder. Points are (x, w): w is the distance from the centre line, mm.</summary>
public sealed record OutlineSide
{
    /// <summary><c>treble</c> or <c>bass</c>.</summary>
    public required string Name { get; init; }
    public required Point2 LowerBout { get; init; }
    public required Point2 Waist { get; init; }
    public required Point2 UpperBout { get; init; }
    /// <summary>Radii at the stations; the waist's is that of a hollow.</summary>
    public double LowerBoutRadius { get; init; }
    public double WaistRadius { get; init; }
    public double UpperBoutRadius { get; init; }
    /// <summary>X: lower bout to tail along x; Wt: lower bout to the tail's point across.</summary>
    public required double TailToBout { get; init; }
    public required double TailToSide { get; init; }
    /// <summary>Horn and cutaway; null on a rounded side.</summary>
    public HornShape? Horn { get; init; }
    /// <summary>Shoulder of a rounded side; null on a horned one.</summary>
    public ShoulderDefinition.Rounded? Rounded { get; init; }
    /// <summary>Control points after the tail's, up to but without the shoulder's own.</summary>
    public ImmutableArray<Point2> Controls { get; init; } = [];

    internal static OutlineSide Build(string name, int sign, OutlineDefinition o, ShoulderDefinition shoulder, OutlineFrame frame)
    {
        Point2 Station(double at, double width, double skew, double offset) =>
            new(frame.TailX - at * o.BodyLength + sign * skew / 2, width / 2 + sign * offset);
        var lower = Station(o.LowerBoutAt, o.LowerBoutWidth, o.LowerBoutSkew, o.LowerBoutOffset);
        var waist = Station(o.WaistAt, o.WaistWidth, o.WaistSkew, o.WaistOffset);
        var upper = UpperBoutOf(o, sign, frame);

        var (tailToBout, tailToSide) = (frame.TailX - lower.X, lower.Y - sign * o.TailOffset);
        var (f, m) = (OutlineFrame.OvalLeg * (1 + OutlineFrame.SquareLeg * o.TailSquareness), 1 - OutlineFrame.SquareCurvature * o.TailSquareness);
        var (rise1, drop) = (lower.X - waist.X, lower.Y - waist.Y);
        var (rise2, up) = (waist.X - upper.X, upper.Y - waist.Y);
        // Curvature of the sine that joins two stations: half its height times (π / its length)².
        var (n1, n2) = (drop / 2 * Square(Math.PI / rise1), up / 2 * Square(Math.PI / rise2));

        StationTriple Triple(Point2 at, double before, double after, double curvature, double most) =>
            StationTriple.At(at, new(-1, 0), new(0, 1), before, after, curvature, most);
        var l = Triple(lower, f * tailToBout, rise1 / 3, Math.Sqrt(m * tailToSide / Square(tailToBout) * n1), Math.Min(0.26 * drop, 0.13 * tailToSide));
        var w = Triple(waist, rise1 / 3, rise2 / 3, -Math.Sqrt(n1 * n2), 0.26 * Math.Min(drop, up));
        var side = new OutlineSide
        {
            Name = name,
            LowerBout = lower,
            Waist = waist,
            UpperBout = upper,
            TailToBout = tailToBout,
            TailToSide = tailToSide,
            LowerBoutRadius = 1 / l.Curvature,
            WaistRadius = -1 / w.Curvature,
            Controls = [l.Before, l.Middle, l.After, w.Before, w.Middle, w.After],
        };
        return shoulder switch
        {
            ShoulderDefinition.Rounded r => side.WithRoundedShoulder(r, frame, rise2, up, n2, Triple),
            ShoulderDefinition.Horned h => side.WithHorn(h, frame, rise2, up, n2, Triple),
            _ => throw new ArgumentException($"A shoulder is horned or rounded, not {shoulder.GetType().Name}.", nameof(shoulder)),
        };
    }

    /// <summary>The upper bout's station.</summary>
    internal static Point2 UpperBoutOf(OutlineDefinition o, int sign, OutlineFrame frame) =>
        new(frame.TailX - o.UpperBoutAt * o.BodyLength + sign * o.UpperBoutSkew / 2, o.UpperBoutWidth / 2 + sign * o.UpperBoutOffset);

    private delegate StationTriple TripleMaker(Point2 at, double before, double after, double curvature, double most);

    private OutlineSide WithRoundedShoulder(ShoulderDefinition.Rounded r, OutlineFrame frame, double rise, double up, double n2, TripleMaker triple)
    {
        var (reach, width) = (UpperBout.X - frame.ShoulderX, UpperBout.Y - r.ShoulderMeet);
        var u = triple(UpperBout, rise / 3, OutlineFrame.OvalLeg * reach, Math.Sqrt(n2 * width / Square(reach)), Math.Min(0.26 * up, 0.13 * width));
        return this with
        {
            UpperBoutRadius = 1 / u.Curvature,
            Rounded = r,
            Controls =
            [
                .. Controls, u.Before, u.Middle, u.After,
                Corner(UpperBout, r, frame),
                new(frame.ShoulderX, r.ShoulderMeet),
            ],
        };
    }

    /// <summary>The control point where a rounded shoulder turns from the neck to the side.</summary>
    internal static Point2 Corner(Point2 upperBout, ShoulderDefinition.Rounded r, OutlineFrame frame) =>
        new(frame.ShoulderX + r.ShoulderSlope * (upperBout.X - frame.ShoulderX), r.ShoulderMeet + OutlineFrame.OvalLeg * (upperBout.Y - r.ShoulderMeet));

    private OutlineSide WithHorn(ShoulderDefinition.Horned h, OutlineFrame frame, double rise, double up, double n2, TripleMaker triple)
    {
        var horn = HornShape.Build(h, frame, UpperBout);
        var after = 0.40 * horn.OuterFlankLength;
        var u = triple(UpperBout, Math.Min(rise / 3, 1.25 * after), after, Math.Sqrt(n2 * 1.4 * horn.OuterFlankAngle / horn.OuterFlankLength),
            Math.Min(0.26 * up, 0.33 * after * horn.OuterFlankAngle / 1.9));
        return this with
        {
            UpperBoutRadius = 1 / u.Curvature,
            Horn = horn,
            Controls = [.. Controls, u.Before, u.Middle, u.After, .. horn.GuidesFrom(u), .. horn.Controls],
        };
    }

    private static double Square(double v) => v * v;
}
