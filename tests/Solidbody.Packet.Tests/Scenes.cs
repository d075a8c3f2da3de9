using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Packet.Sheets;
using Solidbody.Programs;

namespace Solidbody.Packet.Tests;

/// <summary>Two hand-made set-ups, simple enough that every figure on their sheets is known beforehand.</summary>
internal static class Scenes
{
    /// <summary>A neck blank laid at 45° on a bed of 624 × 624 with 600 × 600 of travel.</summary>
    public static SheetInput Neck()
    {
        var half = new[] { new Point2(-140, -4), new(-126, -11), new(-110, -20), new(-70, -27), new(-25, -32), new(0, -21.5), new(463, -28) };
        var outline = new Region(Loop.Of([.. half, .. half.Reverse().Select(p => new Point2(p.X, -p.Y))]));
        var tuners = new Point2[] { new(-37.4, 21.2), new(-72.3, 15), new(-107.3, 9.1), new(-107.3, -9.1), new(-72.3, -15), new(-37.4, -21.2) };
        var part = new Part
        {
            Name = "neck",
            Wood = "maple",
            Outline = outline,
            Front = new LevelHeight(0),
            Back = new LevelHeight(-20),
            FrontFinish = FaceFinish.AsPlaned,
            BackFinish = FaceFinish.CarvedAcross,
            Bounds = new(-140, -32, -20, 463, 32, 0),
            Holes = [.. tuners.Select((c, i) => new Hole($"tuner hole {i + 1}", Side.Front, c, 10, -4, -30, -30, true))],
            Pockets = [new("rod channel", Side.Front, new Region(Shapes.Rectangle(new(220, 0), 440, 6)), new LevelHeight(-9))],
            Flats = [new("heel back", Side.Back, new Region(Shapes.Rectangle(new(430, 0), 90, 80)), -20)],
        };
        var blank = new Box3(-202, -47.5, -27, 528, 47.5, 0);
        Point2 heel = new(513, 0), head = new(-189, 0);
        var turn = Math.PI / 4;
        var zero = heel.Turned(turn);
        var placement = new Placement(Side.Back, turn, new(-zero.X, -zero.Y, 0));
        var middle = placement.ToWork(new(163, 0, 0)).Plan;
        var travel = new Box3(middle.X - 300, middle.Y - 300, -2, middle.X + 300, middle.Y + 300, 90);
        KeepOut Screw(int n, double x, double y) => new($"screw {n}", At(placement.ToWork(new(x, y, 0)).Plan));
        static Box3 At(Point2 c) => new(c.X - 9, c.Y - 9, 0, c.X + 9, c.Y + 9, 36);
        return new()
        {
            SetUp = new()
            {
                Name = "neck-back",
                Part = "neck",
                Title = "Neck, back up",
                Order = 2,
                Blank = blank,
                Placement = placement,
                Zero = "X0 Y0 is the middle of the dowel at the heel end. Z0 is the spoilboard, not the blank: it is still there after the top is cut.",
                ClearanceHeight = 45,
                BedAllowance = 1,
                Travel = travel,
                Bed = travel.Plan.Grown(12),
                HoldDown = "Two dowels ⌀6 through the blank; 4 screws outside the part, nearest to a cutter 14 mm.",
                KeepOuts = [Screw(1, -160, 38), Screw(2, -160, -38), Screw(3, 490, 38), Screw(4, 490, -38)],
                Registration = [new("dowel at the heel end", heel, 6), new("second dowel", head, 6)],
                Tabs = [new(new(100, 22.9), 8, -27, -24), new(new(300, 25.7), 8, -27, -24), new(new(100, -22.9), 8, -27, -24), new(new(300, -25.7), 8, -27, -24)],
                Before = ["Turn the blank over about its long axis and set it on the two dowels.", "Put the four screws back."],
                After = ["Glue the fretboard on before the tabs are broken."],
                Checks =
                [
                    new("Spoilboard faced since it was moved", null, 0), new("Blank thickness", 27, 0.4), new("Both dowels go in by hand", null, 0),
                    new("Second dowel to work zero", 702, 0.2), new("Finished: thickness at fret 12", 16.2, 0.3),
                ],
                Programs =
                [
                    Program(5, "tuner-holes", CutterKind.Drill, 10, 2, 100, 5, 150), Program(6, "roughing", CutterKind.UpSpiral, 12, 3, 233, 35, 1060),
                    Program(7, "heel", CutterKind.UpSpiral, 6, 2, 300, 30, 350), Program(8, "finishing", CutterKind.BallEnd, 12, 2, 300, 40, 1300),
                    Program(9, "volute", CutterKind.TaperedBallEnd, 6, 2, 300, 25, 410), Program(10, "outline", CutterKind.UpSpiral, 6, 2, 300, 30, 535),
                ],
            },
            Part = part,
            Instrument = "School six",
            Shop = "School router 600 × 600",
            SetUps = 5,
            Previous = "Neck, front up",
            Next = "Fretboard, front up",
            Sheet = 3,
            Sheets = 5,
            Proof = "proved, b2 9e 55",
            Overridden = [new("CUTTER-02", Severity.Stops, "volute", "36 mm", "34 mm", "shop file", "a longer cutter") { Title = "flutes too short at the volute", OverriddenBecause = "tapered ⌀6 on order, will sand the last 2 mm" }],
        };
    }

    /// <summary>A body blank laid along X on the same bed.</summary>
    public static SheetInput Body()
    {
        var outline = new Region(Shapes.Rectangle(new(600, 0), 400, 310, 120));
        var part = new Part
        {
            Name = "body",
            Wood = "alder",
            Outline = outline,
            Front = new LevelHeight(0),
            Back = new LevelHeight(-44.5),
            FrontFinish = FaceFinish.AsPlaned,
            BackFinish = FaceFinish.AsPlaned,
            Bounds = new(400, -155, -44.5, 800, 155, 0),
            Pockets =
            [
                new("neck pocket", Side.Front, new Region(Shapes.Rectangle(new(430, 0), 90, 56, 4)), new LevelHeight(-16), Fit: true),
                new("bridge pickup", Side.Front, new Region(Shapes.Rectangle(new(610, 0), 38, 90, 4)), new LevelHeight(-19)),
                new("controls", Side.Back, new Region(Shapes.Rectangle(new(660, -90), 120, 60, 10, 0.6)), new LevelHeight(-6)),
            ],
            Holes = [.. Enumerable.Range(0, 6).Select(i => new Hole($"string hole {i + 1}", Side.Front, new(655, 10.5 * (i - 2.5)), 3.2, 0, -46, -46, true))],
        };
        var blank = new Box3(380, -170, -45, 820, 170, 0);
        var placement = new Placement(Side.Front, 0, new(-390, 0, 45));
        return new()
        {
            SetUp = new()
            {
                Name = "body-front",
                Part = "body",
                Title = "Body, front up",
                Order = 1,
                Blank = blank,
                Placement = placement,
                Zero = "X0 Y0 is the middle of the first dowel hole. Z0 is the spoilboard.",
                ClearanceHeight = 60,
                BedAllowance = 1,
                Travel = new(-80, -300, -2, 520, 300, 90),
                Bed = new(-92, -312, 532, 312),
                HoldDown = "Screws outside the part.",
                KeepOuts = [new("screw 1", new(-4, 150, 0, 14, 168, 50)), new("screw 2", new(404, 150, 0, 422, 168, 50))],
                Registration = [new("first dowel", new(390, 0), 6), new("second dowel", new(810, 0), 6)],
                Checks = [new("Blank thickness", 45, 0.5)],
                Programs = [Program(1, "cavities", CutterKind.UpSpiral, 6.35, 2, 300, 30, 900)],
            },
            Part = part,
            Instrument = "School six",
            Shop = "School router 600 × 600",
            SetUps = 5,
            Next = "Body, back up",
            Sheet = 1,
            Sheets = 5,
            Proof = "not proved",
        };
    }

    public static byte[] Print(SheetInput input) => SheetPrinter.Print(input);

    private static ProgramEntry Program(int number, string name, CutterKind kind, double diameter, int flutes, double turns, double feed, double seconds) => new()
    {
        File = $"programs/{number:00}-{name}.nc",
        Name = name,
        SpindleSpeed = turns,
        Feed = feed,
        Seconds = seconds,
        Bounds = new(-420, -420, -1, 60, 60, 45),
        Cutter = new() { Name = name, Kind = kind, Diameter = diameter, FluteLength = 30, OverallLength = 70, ShankDiameter = 6, Flutes = flutes, StickOut = 36, TipRadius = 1.5 },
    };
}
