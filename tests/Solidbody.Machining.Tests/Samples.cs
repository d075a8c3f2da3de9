using Solidbody.Geometry;
using Solidbody.Shop;

namespace Solidbody.Machining.Tests;

/// <summary>A small workshop of our own for the tests.</summary>
internal static class Samples
{
    public static Machine Machine { get; } = new()
    {
        TravelX = 600,
        TravelY = 600,
        TravelZ = 120,
        BedX = 640,
        BedY = 640,
        SpoilboardAllowance = 1,
        SpindleSpeedLeast = 8000 / 60.0,
        SpindleSpeedMost = 24000 / 60.0,
        SpindlePower = 1000,
        FeedMostXY = 60,
        FeedMostZ = 30,
        RapidXY = 80,
        RapidZ = 40,
        AccelerationXY = 400,
        AccelerationZ = 250,
        Arcs = true,
        ToolChanger = false,
        Decimals = 3,
        Inches = false,
        LineNumbers = false,
        Comments = true,
        SideForce = 150,
        ColletDiameter = 22,
    };

    public static ShopDefinition Shop { get; } = new()
    {
        Name = "school workshop",
        Machine = Machine,
        Cutters =
        [
            Flat("flat 12", 12, 52, 60, 2), Flat("flat 6", 6, 30, 52, 2), Flat("flat 3", 3, 15, 25, 2) with { ShankDiameter = 3 },
            Flat("slot 0.58", 0.58, 3.5, 15, 2) with { Kind = CutterKind.Straight, ShankDiameter = 3 },
            Flat("ball 12", 12, 30, 45, 2) with { Kind = CutterKind.BallEnd }, Flat("ball 6", 6, 25, 40, 2) with { Kind = CutterKind.BallEnd },
            Drill("drill 2.5", 2.5), Drill("drill 3", 3), Drill("drill 4.5", 4.5), Drill("drill 8", 8),
            new Cutter { Name = "roundover 6", Kind = CutterKind.Roundover, Diameter = 16, FluteLength = 10, OverallLength = 50, ShankDiameter = 6, Flutes = 2, StickOut = 25, TipRadius = 2, EdgeRadius = 6 },
        ],
        Woods = [new("sugar-maple", 0.7), new("red-alder", 0.9), new("indian-rosewood", 0.6)],
        HoldDowns = new(9, 4, 3, true, 8, 8),
    };

    public static Cutter Cutter(string name) => Shop.Cutters.Single(c => c.Name == name);

    private static Cutter Flat(string name, double diameter, double flutes, double stickOut, int count) => new()
    { Name = name, Kind = CutterKind.UpSpiral, Diameter = diameter, FluteLength = flutes, OverallLength = stickOut + 25, ShankDiameter = diameter, Flutes = count, StickOut = stickOut, Plunges = true };

    private static Cutter Drill(string name, double diameter) => new()
    { Name = name, Kind = CutterKind.Drill, Diameter = diameter, FluteLength = 60, OverallLength = 100, ShankDiameter = diameter, Flutes = 2, StickOut = 70, Angle = 118 * Math.PI / 180, Material = "steel", Plunges = true };
}
