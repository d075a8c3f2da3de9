using Solidbody.Geometry;

namespace Solidbody.Instrument.Walls;

/// <summary>A place in a part where there is no wood.</summary>
/// <param name="Name">As the part calls it.</param>
/// <param name="Into">Rooms it opens into on purpose.</param>
/// <param name="Box">Smallest box around it.</param>
internal abstract record Void(string Name, IReadOnlyList<string> Into, Box3 Box)
{
    /// <summary>Distance between two voids' boxes, mm: no wall between them is thinner.</summary>
    public double BoxGap(Void other)
    {
        static double Gap(double a0, double a1, double b0, double b1) => Math.Max(0, Math.Max(b0 - a1, a0 - b1));
        var (x, y, z) = (Gap(Box.X0, Box.X1, other.Box.X0, other.Box.X1), Gap(Box.Y0, Box.Y1, other.Box.Y0, other.Box.Y1), Gap(Box.Z0, Box.Z1, other.Box.Z0, other.Box.Z1));
        return Math.Sqrt(x * x + y * y + z * z);
    }

    protected static Box3 BoxOf(Box2 plan, double low, double high) => new(plan.X0, plan.Y0, low, plan.X1, plan.Y1, high);
}

/// <summary>A void with upright walls between two heights: its plan and its height are free of each other, so that distances to it are too.</summary>
internal abstract record UprightVoid(string Name, IReadOnlyList<string> Into, Box3 Box) : Void(Name, Into, Box)
{
    public double Low => Box.Z0;
    public double High => Box.Z1;

    /// <summary>From a point of the plan to the walls, negative inside; any size ≥ <paramref name="within"/> stands for "at least that".</summary>
    public abstract double PlanGap(Point2 p, double within);

    /// <summary>From a point of the part; inside, less the way to the nearest wall, floor or mouth.</summary>
    public double Gap(PartPoint p, double within)
    {
        var (plan, height) = (PlanGap(p.Plan, within), Math.Max(Low - p.Z, p.Z - High));
        return Combine(plan, height);
    }

    /// <summary>Distance over a plan gap and a height gap, mm; where both are negative the lesser depth.</summary>
    public static double Combine(double plan, double height) =>
        plan > 0 && height > 0 ? Math.Sqrt(plan * plan + height * height) : Math.Max(plan, height);
}

/// <summary>A room.</summary>
internal sealed record RoomVoid(Pocket Pocket, double Low, double High, IReadOnlyList<string> Into) : UprightVoid(Pocket.Name, Into, BoxOf(Pocket.Region.Bounds, Low, High))
{
    public override double PlanGap(Point2 p, double within) => Pocket.Region.SignedDistance(p, within);
}

/// <summary>A ledge round the part: everything beyond the wood it leaves.</summary>
internal sealed record LedgeVoid(Ledge Ledge, Box2 Plan, double Low, double High) : UprightVoid(Ledge.Name, [], BoxOf(Plan, Low, High))
{
    public override double PlanGap(Point2 p, double within) => -Ledge.Inside.SignedDistance(p, within);
}

/// <summary>A hole square to the faces; a drill's cone counts as full diameter.</summary>
internal sealed record HoleVoid(Hole Hole, double Low, double High, IReadOnlyList<string> Into)
    : UprightVoid(Hole.Name, Into, BoxOf(new Box2(Hole.Centre.X, Hole.Centre.Y, Hole.Centre.X, Hole.Centre.Y).Grown(Hole.Diameter / 2), Low, High))
{
    public override double PlanGap(Point2 p, double within) => p.DistanceTo(Hole.Centre) - Hole.Diameter / 2;
}

/// <summary>A bore made by hand, in any direction; its ends count as round.</summary>
internal sealed record BoreVoid(HandBore Bore) : Void(Bore.Name, Bore.Into, BoxAround(Bore))
{
    public double Radius => Bore.Diameter / 2;
    public double Length => Math.Sqrt(Math.Pow(Bore.B.X - Bore.A.X, 2) + Math.Pow(Bore.B.Y - Bore.A.Y, 2) + Math.Pow(Bore.B.Z - Bore.A.Z, 2));

    /// <summary>A point of its axis, a part <paramref name="t"/> of the way from A to B.</summary>
    public PartPoint Axis(double t) => new(Bore.A.X + t * (Bore.B.X - Bore.A.X), Bore.A.Y + t * (Bore.B.Y - Bore.A.Y), Bore.A.Z + t * (Bore.B.Z - Bore.A.Z));

    private static Box3 BoxAround(HandBore b)
    {
        var (plan, r) = (Box2.Around([b.A.Plan, b.B.Plan]).Grown(b.Diameter / 2), b.Diameter / 2);
        return BoxOf(plan, Math.Min(b.A.Z, b.B.Z) - r, Math.Max(b.A.Z, b.B.Z) + r);
    }
}
