using Solidbody.Geometry;
using Solidbody.Shop;

namespace Solidbody.Machining.Planning;

/// <summary>What lies on the bed, laid frame: the blank's corners must lie on the bed, the swept points within the travel.</summary>
/// <param name="Blank">Corners.</param>
/// <param name="Swept">Points the cutter's tip stays within <paramref name="Grow"/> of.</param>
/// <param name="Grow">mm.</param>
public sealed record Footprint(IReadOnlyList<Point2> Blank, IReadOnlyList<Point2> Swept, double Grow)
{
    /// <summary>Points the tip goes to and not beyond: dowel holes, rooms that run out of the outline.</summary>
    public IReadOnlyList<Point2> Reached { get; init; } = [];
}

/// <summary>A laying: the laid frame turned, then its origin put at a point of the bed (from the bed's near left corner).</summary>
/// <param name="Turn">Radians.</param>
/// <param name="Origin">mm.</param>
/// <param name="Slack">Room left over in the tighter direction, mm; negative is what is missing.</param>
/// <param name="BedIsTighter">Whether the bed rather than the travel sets the slack.</param>
public sealed record Laying(double Turn, Point2 Origin, double Slack, bool BedIsTighter)
{
    public Point2 OnBed(Point2 laid) => laid.Turned(Turn) + Origin;
}

/// <summary>Finds how to lay a blank: straight when it fits, turned when it must be, by the angle that leaves most room.</summary>
public static class BedPlacement
{
    /// <summary>The laying, whose slack is negative when nothing fits.</summary>
    /// <remarks>
    /// At a given angle the two shifts are independent, and each has an interval in closed form; the slack is the shorter interval's length.
    /// Over the angle, straight comes first (0, then a quarter turn), then the whole degree with most slack, because a person sets it;
    /// only when none fits is the peak of the slack sought between degrees, by golden section about the best ones.
    /// The travel lies in the middle of the bed.
    /// </remarks>
    public static Laying Find(Footprint footprint, Machine machine)
    {
        ArgumentNullException.ThrowIfNull(footprint);
        ArgumentNullException.ThrowIfNull(machine);
        var outer = footprint with { Swept = Hull.Of(footprint.Swept), Blank = Hull.Of(footprint.Blank), Reached = Hull.Of(footprint.Reached) };
        foreach (var quarter in (double[])[0, Math.PI / 2])
            if (At(outer, machine, quarter) is { Slack: >= 0 } straight) return straight;
        var degrees = Enumerable.Range(-89, 179).Select(d => At(outer, machine, d * Math.PI / 180)).ToList();
        // Equal slack (a mirror image) goes to the smaller turn, counter-clockwise first.
        var best = degrees.OrderByDescending(l => Math.Round(l.Slack, 6)).ThenBy(l => Math.Abs(l.Turn)).ThenByDescending(l => l.Turn).First();
        if (best.Slack >= 0) return best;
        return degrees.OrderByDescending(l => l.Slack).Take(8).Select(l => Peak(outer, machine, l.Turn)).Append(best).MaxBy(l => l.Slack)!;
    }

    /// <summary>The best shift at one angle.</summary>
    public static Laying At(Footprint footprint, Machine machine, double turn)
    {
        var blank = Turned(footprint.Blank, turn, Box2.Empty);
        var swept = Turned(footprint.Reached, turn, Turned(footprint.Swept, turn, Box2.Empty).Grown(footprint.Grow));
        var (travelX, travelY) = ((machine.BedX - machine.TravelX) / 2, (machine.BedY - machine.TravelY) / 2);
        var x = Interval(blank.X0, blank.X1, 0, machine.BedX, swept.X0, swept.X1, travelX, travelX + machine.TravelX);
        var y = Interval(blank.Y0, blank.Y1, 0, machine.BedY, swept.Y0, swept.Y1, travelY, travelY + machine.TravelY);
        var tighter = x.Slack <= y.Slack ? x : y;
        return new(turn, new(x.Middle, y.Middle), tighter.Slack, tighter.Bed);
    }

    private static Box2 Turned(IReadOnlyList<Point2> points, double turn, Box2 box)
    {
        var along = Point2.Polar(turn);
        foreach (var p in points) box = box.With(p.X * along + p.Y * along.Left);
        return box;
    }

    private static (double Middle, double Slack, bool Bed) Interval(double b0, double b1, double bed0, double bed1, double s0, double s1, double travel0, double travel1)
    {
        var (low, high) = (Math.Max(bed0 - b0, travel0 - s0), Math.Min(bed1 - b1, travel1 - s1));
        var bedRoom = bed1 - bed0 - (b1 - b0);
        var travelRoom = travel1 - travel0 - (s1 - s0);
        return ((low + high) / 2, high - low, bedRoom <= travelRoom);
    }

    private static Laying Peak(Footprint footprint, Machine machine, double about)
    {
        const double degree = Math.PI / 180;
        var ratio = (Math.Sqrt(5) - 1) / 2;
        var (a, b) = (about - degree, about + degree);
        for (var i = 0; i < 40; i++)   // 2° · 0.618⁴⁰ < 1e-9 rad
        {
            var (c, d) = (b - ratio * (b - a), a + ratio * (b - a));
            if (At(footprint, machine, c).Slack >= At(footprint, machine, d).Slack) b = d; else a = c;
        }
        return At(footprint, machine, (a + b) / 2);
    }
}
