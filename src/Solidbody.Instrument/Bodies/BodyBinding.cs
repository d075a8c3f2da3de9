using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Instrument.Outlines;
using Solidbody.Materials;

namespace Solidbody.Instrument.Bodies;

/// <summary>A strip of binding to buy and to bend.</summary>
/// <param name="Name"><c>front binding</c> or <c>back binding</c>.</param>
/// <param name="Definition">Its measures.</param>
/// <param name="Round">Along the outline from one wall of the neck pocket's mouth round to the other, mm.</param>
/// <param name="Bought">With what the file adds for waste, mm.</param>
/// <param name="LeastRadius">Inside radius of its tightest bend, mm; 0 at a sharp corner.</param>
/// <param name="Tightest">Where that is, right-handed.</param>
/// <param name="Centre">Of its line, for a centre of gravity.</param>
public sealed record BodyBinding(string Name, BindingDefinition Definition, double Round, double Bought, double LeastRadius, Point2 Tightest, PartPoint Centre)
{
    /// <summary>kg.</summary>
    public double Mass => Round * Definition.Height * Definition.Thickness * BindingStrip.Of(Definition.Kind).Density;

    /// <returns>Front before back; none where neither edge is bound.</returns>
    public static ImmutableArray<BodyBinding> Of(InstrumentDefinition d, Region plan)
    {
        ArgumentNullException.ThrowIfNull(d);
        ArgumentNullException.ThrowIfNull(plan);
        if (d.Body.Binding is not { } binding) return [];
        var outline = plan.Loops[0].CounterClockwise;
        var round = outline.Perimeter - 2 * BodyMaker.PocketHalfWidth(d, NeckJoint.Of(d).ShoulderX);
        var (radius, at) = TightestBend(outline, binding.Thickness);
        var middle = LineCentre(outline);
        return [.. new[] { Side.Front, Side.Back }.Where(binding.Binds).Select(side => new BodyBinding(side == Side.Front ? "front binding" : "back binding", binding,
            round, round * (1 + d.Buying.Waste), radius, at, new(middle.X, middle.Y, side == Side.Front ? -binding.Height / 2 : -d.Body.Thickness + binding.Height / 2)))];
    }

    /// <summary>The strip's outer face lies on the outline. Round a horn its inner face is the inside of the bend, in a hollow its outer one.</summary>
    private static (double Radius, Point2 At) TightestBend(Loop outline, double thickness) =>
        PathBends.Of(outline).Select(b => (Math.Max(0, b.Turn > 0 ? b.Radius - thickness : b.Radius), b.At)).MinBy(b => b.Item1);

    private static Point2 LineCentre(Loop outline)
    {
        var (points, sum) = (outline.Points, new Point2(0, 0));
        for (var i = 0; i < points.Length; i++)
            if (points[(i + 1) % points.Length] is var next) sum += points[i].DistanceTo(next) / 2 * (points[i] + next);
        return 1 / outline.Perimeter * sum;
    }
}
