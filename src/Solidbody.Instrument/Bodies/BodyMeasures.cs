using System.Collections.Immutable;
using System.Globalization;
using Solidbody.Geometry;
using Solidbody.Instrument.Outlines;

namespace Solidbody.Instrument.Bodies;

/// <summary>What is measured on the cut body. Caliper lines keep clear of everything they do not measure.</summary>
internal static class BodyMeasures
{
    /// <summary>How far from its ends a sloping pocket's depth is taken, mm.</summary>
    private const double FromPocketEnds = 6;

    public static ImmutableArray<Measure> Of(InstrumentDefinition d, Region plan, ImmutableArray<Pocket> rooms, ImmutableArray<Hole> holes, ImmutableArray<Ledge> ledges) =>
    [
        .. d.Neck.Joint == JointKind.Through ? [] : Pocket(d),
        .. d.Body.Pickups.SelectMany(p => Pickup(p, rooms.First(r => r.Name == p.Name))),
        .. Holes(d, holes),
        .. Controls(d.Body, rooms, holes),
        .. Springs(d),
        .. Outside(d.Body, plan, rooms, holes),
        .. ledges.SelectMany(l => Binding(d.Body, plan, l, rooms, holes)),
    ];

    private static IEnumerable<Measure> Pocket(InstrumentDefinition d)
    {
        var (pocket, joint) = (d.Body.Pocket, NeckJoint.Of(d));
        var middle = joint.HeelEnd - d.Neck.Heel.Screws.FromEnd - d.Neck.Heel.Screws.AlongX / 2;
        foreach (var depth in Depths(NeckSeat.Of(d), joint, middle)) yield return depth;
        // In front and in the middle: the widths the heel's sides must find.
        foreach (var (name, x) in ((string, double)[])[(d.Neck.Joint == JointKind.BoltOn ? "neck pocket width between the screws" : "neck pocket width in the middle", middle), ("neck pocket width before its end", joint.HeelEnd - joint.PocketCorner - Take.InsideEnd)])
        {
            var half = BodyMaker.PocketHalfWidth(d, x);
            yield return new(name, 2 * half, Take.Tolerance, new Caliper.Inside(new(x, 0), Take.AlongY, -pocket.Depth / 2, 4 * half));
        }
        // The pocket is open in front: its length is its end wall's distance from the shoulder line.
        yield return new("neck pocket length, shoulder line to end wall", pocket.Length + pocket.Clearance, Take.Tolerance,
            new Caliper.InsideEnd(new(joint.ShoulderX, 0), Take.AlongX, pocket.Length - joint.PocketCorner, -pocket.Depth / 2, pocket.Length));
        var wall = joint.HeelEnd + joint.Clearance;
        if (d.Body.Pickups.Where(p => p.CentreX > wall).MinBy(p => p.CentreX) is { Turn: 0 } first && first.CentreX - first.AlongX / 2 - wall is > 1 and var bridge)
            yield return new("wood between neck pocket and first pickup", bridge, Take.Tolerance,
                new Caliper.Outside(new(wall + bridge / 2, 0), Take.AlongX, -Math.Min(pocket.Depth, first.Depth) / 2, 2 * bridge));
    }

    /// <summary>A level floor's depth in the middle; a sloping one's at both its ends, and what the two differ by: that is the neck's angle.</summary>
    private static ImmutableArray<Measure> Depths(NeckSeat seat, NeckJoint joint, double middle)
    {
        static Point2 On(double x) => new(x, 0);
        Measure Depth(string name, double x) => new(name, -seat.FloorZ(x), Take.Tolerance, new Caliper.DepthFromTop(On(x), 0));
        if (seat.FloorSlope == 0) return [Depth("neck pocket depth", middle)];
        var (mouth, end) = (joint.ShoulderX + FromPocketEnds, joint.HeelEnd - FromPocketEnds);
        var (high, low) = seat.FloorSlope > 0 ? (end, mouth) : (mouth, end);
        return
        [
            Depth(Said($"neck pocket depth {FromPocketEnds:0} mm behind the shoulder line"), mouth),
            Depth(Said($"neck pocket depth {FromPocketEnds:0} mm before the heel's end"), end),
            new(Said($"neck pocket's two depths differ by ({double.RadiansToDegrees(seat.Angle):0.00}° over {end - mouth:0.0} mm)"), seat.FloorZ(high) - seat.FloorZ(low), Take.Fall, new Caliper.Fall(On(high), On(low))),
        ];
    }

    private static string Said(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static IEnumerable<Measure> Pickup(PickupDefinition p, Pocket room)
    {
        var (centre, z) = (new Point2(p.CentreX, 0), -p.Depth / 2);
        yield return new($"{p.Name} cavity from the nut", p.CentreX, Take.Tolerance, new Caliper.InsideCentre(new(0, 0), Take.AlongX, p.CentreX, z, 2 * p.AlongX));
        yield return new($"{p.Name} cavity along the strings", p.AlongX, Take.Tolerance, new Caliper.Inside(centre, Take.AlongX.Turned(p.Turn), z, 2 * p.AlongX));
        // Beside the legs' rooms, which are wider.
        var beside = p.Legs is { } legs ? (legs.Along / 2 + p.AlongX / 2 - p.CornerRadius) / 2 : 0;
        yield return new($"{p.Name} cavity across the strings", p.AlongY, Take.Tolerance, new Caliper.Inside(centre + new Point2(beside, 0).Turned(p.Turn), Take.AlongY.Turned(p.Turn), z, 2 * p.AlongY));
        yield return new($"{p.Name} cavity depth", p.Depth, Take.Tolerance, new Caliper.DepthFromTop(centre, 0));
    }

    private static IEnumerable<Measure> Holes(InstrumentDefinition d, ImmutableArray<Hole> holes) =>
        holes.Where(h => h.From == Side.Front).SelectMany(h => Take.Hole(h, (h.Mouth + Math.Max(h.Reach, -d.Body.Thickness)) / 2));

    private static IEnumerable<Measure> Springs(InstrumentDefinition d)
    {
        if (d.Body.Tremolo is { } t)
            yield return new("spring cavity depth", t.Depth, Take.Tolerance, new Caliper.DepthFromBottom(BridgePlace.Of(d).At((t.SpringsFrom + t.OpeningFrom) / 2, 0), -d.Body.Thickness));
    }

    private static IEnumerable<Measure> Controls(BodyDefinition body, ImmutableArray<Pocket> rooms, ImmutableArray<Hole> holes)
    {
        if (body.Controls is not { } c || rooms.FirstOrDefault(r => r.Name == RoomNames.Controls) is not { } cavity) yield break;
        double ClearOfHoles(Point2 p) => Math.Min(holes.Select(h => h.Centre.DistanceTo(p) - h.Diameter / 2).DefaultIfEmpty(double.PositiveInfinity).Min(),
            rooms.Where(r => r.From == Side.Front && r.Into == RoomNames.Controls).Select(r => r.Region.SignedDistance(p)).DefaultIfEmpty(double.PositiveInfinity).Min());
        if (Clearest.Point(cavity.Region.Bounds, p => Math.Min(-cavity.Region.SignedDistance(p), ClearOfHoles(p))) is { } floor)
            yield return new("control cavity depth", body.Thickness - c.Floor, Take.Tolerance, new Caliper.DepthFromBottom(floor, -body.Thickness));
        if (rooms.FirstOrDefault(r => r.Name == RoomNames.CoverLedge) is not { } ledge) yield break;
        double OnLedge(Point2 p) => Math.Min(Math.Min(-ledge.Region.SignedDistance(p), cavity.Region.SignedDistance(p)), ClearOfHoles(p));
        // The middle of the ledge on the cavity's long side, or the clearest place there is.
        var middle = new Point2(c.CentreX, c.CentreY) + new Point2(0, c.Width / 2 + c.LedgeWidth / 2).Turned(c.Angle);
        if ((OnLedge(middle) > 1 ? middle : Clearest.Point(ledge.Region.Bounds, OnLedge)) is { } onLedge)
            yield return new("cover ledge depth", c.LedgeDepth, Take.Tolerance, new Caliper.DepthFromBottom(onLedge, -body.Thickness));
    }

    /// <summary>Body width and length over solid wood, at half thickness: the expected figures are the outline's own.</summary>
    private static IEnumerable<Measure> Outside(BodyDefinition body, Region plan, ImmutableArray<Pocket> rooms, ImmutableArray<Hole> holes)
    {
        var (box, z) = (plan.Bounds, -body.Thickness / 2);
        bool IsClear(Point2 a, Point2 b) => MeetsWoodOnly(rooms, holes, a, b, z);
        // From the waist outward: the first line across, and the first along, that meets wood only.
        foreach (var x in Outward(box.X0 + 0.25 * box.Width, box.X1 - 0.1 * box.Width, box.X0 + 0.5 * box.Width))
        {
            var ys = Segments.CrossingsAtX(plan.Loops[0], x);
            if (ys.Count != 2 || !IsClear(new(x, ys[0]), new(x, ys[1]))) continue;
            yield return new($"body width at x {Math.Round(x)}", ys[1] - ys[0], Take.Tolerance, new Caliper.Outside(new(x, (ys[0] + ys[1]) / 2), Take.AlongY, z, ys[1] - ys[0]));
            break;
        }
        var xs = new List<double>();
        foreach (var y in Outward(box.Y0 + 0.2 * box.Height, box.Y1 - 0.2 * box.Height, box.Y0 + 0.35 * box.Height))
        {
            plan.Crossings(y, xs);
            if (xs.Count != 2 || !IsClear(new(xs[0], y), new(xs[1], y))) continue;
            yield return new($"body length at y {Math.Round(y)}", xs[1] - xs[0], Take.Tolerance, new Caliper.Outside(new((xs[0] + xs[1]) / 2, y), Take.AlongX, z, xs[1] - xs[0]));
            break;
        }
    }

    /// <summary>A ledge's depth in its middle, and the width it leaves, halfway down.</summary>
    private static IEnumerable<Measure> Binding(BodyDefinition body, Region plan, Ledge ledge, ImmutableArray<Pocket> rooms, ImmutableArray<Hole> holes)
    {
        var (box, face) = (plan.Bounds, ledge.From == Side.Front ? 0 : -body.Thickness);
        var z = (face + ledge.Floor) / 2;
        foreach (var x in Outward(box.X0 + 0.25 * box.Width, box.X1 - 0.1 * box.Width, box.X0 + 0.5 * box.Width))
        {
            var (outer, inner) = (Segments.CrossingsAtX(plan.Loops[0], x), Segments.CrossingsAtX(ledge.Inside.Loops[0], x));
            if (outer.Count != 2 || inner.Count != 2 || !MeetsWoodOnly(rooms, holes, new(x, outer[0]), new(x, outer[1]), z)) continue;
            var on = new Point2(x, (outer[1] + inner[1]) / 2);
            yield return new($"{ledge.Name} depth at x {Math.Round(x)}", Math.Abs(ledge.Floor - face), Take.Tolerance, ledge.From == Side.Front ? new Caliper.DepthFromTop(on, face) : new Caliper.DepthFromBottom(on, face));
            yield return new($"body width inside the {ledge.Name} at x {Math.Round(x)}", inner[1] - inner[0], Take.Tolerance, new Caliper.Outside(new(x, (inner[0] + inner[1]) / 2), Take.AlongY, z, inner[1] - inner[0]));
            break;
        }
    }

    private static bool MeetsWoodOnly(ImmutableArray<Pocket> rooms, ImmutableArray<Hole> holes, Point2 a, Point2 b, double z) =>
        !rooms.Any(r => Reaches(r.From, r.Floor.Z(a.X, a.Y), z) && Comes(r.Region, a, b))
        && !holes.Any(h => Reaches(h.From, h.Tip, z) && Segments.Distance(h.Centre, a, b) < h.Diameter / 2 + 1);

    /// <summary>Whether the line from a to b comes within 1 mm of a region: steps as long as the way to it is free.</summary>
    private static bool Comes(Region region, Point2 a, Point2 b)
    {
        var (length, along) = (a.DistanceTo(b), (b - a).Unit);
        for (var t = 0.0; t <= length;)
        {
            var free = region.SignedDistance(a + t * along);
            if (free < 1) return true;
            t += Math.Max(free - 1, 0.25);
        }
        return false;
    }

    private static bool Reaches(Side from, double depth, double z) => from == Side.Front ? depth <= z + 1 : depth >= z - 1;

    /// <summary>Whole millimetres between two bounds, the nearest to the middle first.</summary>
    private static IEnumerable<double> Outward(double low, double high, double middle) =>
        Enumerable.Range(0, (int)(high - low) + 1).Select(i => Math.Ceiling(low) + i).Where(v => v <= high).OrderBy(v => Math.Abs(v - middle)).ThenBy(v => v);
}
