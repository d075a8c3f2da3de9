using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Programs;

namespace Solidbody.Proof.Tests;

/// <summary>A whole job in small: a block 80 × 50 × 20 with a pocket and two holes from the front, a back carved by a ball-end, and an outline
/// cut from the back with two tabs. Two set-ups, four programs.</summary>
internal static class BlockJob
{
    public const string PocketFile = "programs/1-pocket.nc", DrillFile = "programs/2-drill.nc", CarveFile = "programs/3-carve.nc", OutlineFile = "programs/4-outline.nc";

    private const double Clearance = 30, Thick = 21, HalfLength = 40, HalfWidth = 25, Corner = 5, Middle = 40;
    private const double PocketX = 25, PocketLength = 30, PocketWidth = 20, PocketDepth = 8, PocketCorner = 4;
    private static readonly Point2 Blind = new(60, 12), Bore = new(60, -12);
    private static readonly Cutter Six = Cutters.Flat(6), Ball = Cutters.Ball(6), Drill = Cutters.Drill(6, 118);
    private static readonly double BlindTip = -10 - Drill.ConeHeight;

    /// <summary>The back: a hollow-less round of radius 100 across the block.</summary>
    private sealed class RoundBack : IHeight
    {
        public double Z(double x, double y) => -20 + y * y / 200;
    }

    public static Design Design => new(null!, [Part], []);

    public static Part Part => new()
    {
        Name = "block",
        Wood = "alder",
        Outline = new Region(Shapes.Rectangle(new(Middle, 0), 2 * HalfLength, 2 * HalfWidth, Corner)),
        Front = new LevelHeight(0),
        Back = new RoundBack(),
        FrontFinish = FaceFinish.AsPlaned,
        BackFinish = FaceFinish.CarvedAcross,
        Bounds = new(0, -HalfWidth, -20, 80, HalfWidth, 0),
        Pockets = [new("pocket", Side.Front, new Region(Shapes.Rectangle(new(PocketX, 0), PocketLength, PocketWidth, PocketCorner)), new LevelHeight(-PocketDepth))],
        Holes =
        [
            new("blind hole", Side.Front, Blind, 6, 0, -10, BlindTip),
            new("through hole", Side.Front, Bore, 8, 0, -25, -25, Through: true),
        ],
        Measures =
        [
            new("thickness in the middle", 20, 0.1, new Caliper.Thickness(new(50, 0))),
            new("pocket depth", PocketDepth, 0.1, new Caliper.DepthFromTop(new(PocketX, 0), 0)),
            new("pocket length", PocketLength, 0.1, new Caliper.Inside(new(PocketX, 0), new(1, 0), -4, 25)),
            new("width", 2 * HalfWidth, 0.1, new Caliper.Outside(new(50, 0), new(0, 1), -5, 30)),
            new("bore diameter", 8, 0.1, new Caliper.Inside(Bore, new(0, 1), -5, 10)),
            new("bore from the end", Bore.X, 0.1, new Caliper.InsideCentre(new(0, Bore.Y), new(1, 0), Bore.X, -5, 10)),
            new("back at the edge", 20 - 20.0 * 20 / 200, 0.1, new Caliper.DepthFromBottom(new(50, 20), 0)),
        ],
    };

    /// <summary>Two set-ups; the back-up one lies on the front face.</summary>
    /// <param name="turn">Turn of both on the bed, radians: programs follow.</param>
    public static ImmutableArray<SetUp> SetUps(double turn = 0) =>
    [
        SetUp("block-front", 1, new(Side.Front, turn, new(70, 70, Thick)), [], [Entry(PocketFile, Six), Entry(DrillFile, Drill)]),
        SetUp("block-back", 2, new(Side.Back, turn, new(70, 70, 0)), [new(new(Middle, HalfWidth), 8, -3, 0), new(new(Middle, -HalfWidth), 8, -3, 0)],
            [Entry(CarveFile, Ball), Entry(OutlineFile, Six)]),
    ];

    private static SetUp SetUp(string name, int order, Placement placement, ImmutableArray<Tab> tabs, ImmutableArray<ProgramEntry> programs) => new()
    {
        Name = name,
        Part = "block",
        Title = name,
        Order = order,
        Blank = new(-15, -40, -Thick, 95, 40, 0),
        Placement = placement,
        Zero = "corner",
        ClearanceHeight = Clearance,
        BedAllowance = 0.5,
        Travel = new(-100, -100, -1, 300, 300, 60),
        Bed = new(-100, -100, 300, 300),
        HoldDown = "tape",
        Tabs = tabs,
        Programs = programs,
    };

    /// <summary>What the index says of a program: the room is the clearance over the whole bed, the figures are the texts' own.</summary>
    private static ProgramEntry Entry(string file, Cutter cutter) =>
        new() { File = file, Name = file, Cutter = cutter, SpindleSpeed = 300, Feed = 20, Seconds = 0, Bounds = new(-100, -100, -1, 300, 300, Clearance) };

    /// <summary>The four texts. The plan is worked out in the part's own x and, for the back, in y turned over; <paramref name="turn"/> turns it on the bed.</summary>
    public static Dictionary<string, string> Texts(double turn = 0)
    {
        Point2 Lay(double x, double y) => new Point2(x, y).Turned(turn) + new Point2(70, 70);
        return new()
        {
            [PocketFile] = Pocket(Lay, turn),
            [DrillFile] = Drilling(Lay),
            [CarveFile] = Carve(Lay),
            [OutlineFile] = Outline(Lay, turn),
        };
    }

    private static string Pocket(Func<double, double, Point2> lay, double turn)
    {
        var text = new ProgramText(Clearance);
        const double inset = 3, stock = 1;   // the ring takes what the rows leave, corners too
        var (a, b) = (PocketLength / 2 - inset - stock, PocketWidth / 2 - inset - stock);
        foreach (var depth in new[] { 4.0, PocketDepth })
        {
            var start = lay(PocketX - a, -b);
            text.Over(start.X, start.Y).Rapid(Thick + 1).Down(Thick - depth);
            var way = 1;
            for (var y = -b; y <= b; y += 2, way = -way)
                foreach (var x in new[] { PocketX - way * a, PocketX + way * a })
                {
                    var p = lay(x, y);
                    text.To(p.X, p.Y, Thick - depth);
                }
            Ring(text, lay, turn, new(PocketX, 0), PocketLength / 2, PocketWidth / 2, PocketCorner, -inset, _ => Thick - depth);
        }
        // The through hole is bored as a helix: radius 1 for an 8 mm hole with a 6 mm cutter.
        var side = lay(Bore.X + 1, Bore.Y);
        var spoke = -1 * new Point2(1, 0).Turned(turn);
        text.Over(side.X, side.Y).Rapid(Thick + 1).Down(Thick);
        for (var z = Thick - 1; z >= -0.2; z -= 1) text.Arc(side.X, side.Y, z, spoke.X, spoke.Y);
        return text.Arc(side.X, side.Y, -0.2, spoke.X, spoke.Y).Arc(side.X, side.Y, -0.2, spoke.X, spoke.Y).End();
    }

    private static string Drilling(Func<double, double, Point2> lay)
    {
        var p = lay(Blind.X, Blind.Y);
        return new ProgramText(Clearance).Over(p.X, p.Y).Rapid(Thick + 1).Down(Thick - 5).Rapid(Thick + 1).Rapid(Thick - 4.5).Down(Thick + BlindTip).End();
    }

    /// <summary>Passes across, every 0.6 mm, the ball's middle 3 mm off the face along its normal.</summary>
    private static string Carve(Func<double, double, Point2> lay)
    {
        var text = new ProgramText(Clearance);
        var way = 1;
        for (var x = -2.0; x <= 82; x += 0.6, way = -way)
            for (var i = -60; i <= 60; i++)
            {
                var y = way * i * 0.5;
                var steep = y / 100;
                var length = Math.Sqrt(1 + steep * steep);
                var p = lay(x, y + 3 * steep / length);
                var z = 20 - y * y / 200 + 3 / length - 3;
                if (i == -60 && x == -2.0) text.Over(p.X, p.Y).Rapid(Thick + 1);
                text.To(p.X, p.Y, z);
            }
        return text.End();
    }

    private static string Outline(Func<double, double, Point2> lay, double turn)
    {
        var text = new ProgramText(Clearance);
        var start = lay(Middle - HalfLength + Corner, -HalfWidth - 3);
        text.Over(start.X, start.Y).Rapid(Thick + 1);
        foreach (var z in new[] { 14.0, 7.0, -0.2 })
        {
            text.Down(z);
            Ring(text, lay, turn, new(Middle, 0), HalfLength, HalfWidth, Corner, 3, x => z < 0 && Math.Abs(x - Middle) <= 7 ? 3 : z);
        }
        return text.End();
    }

    /// <summary>Once counter-clockwise round a rounded rectangle grown by an offset, its long sides in steps so that tabs can be stepped over.</summary>
    private static void Ring(ProgramText text, Func<double, double, Point2> lay, double turn, Point2 c, double halfLength, double halfWidth, double corner, double offset, Func<double, double> z)
    {
        var (a, b, r) = (halfLength - corner, halfWidth - corner, corner + offset);
        void Go(double x, double y, double height) { var p = lay(x, y); text.To(p.X, p.Y, height); }
        void Bend(double x, double y, double towardsX, double towardsY)
        {
            var p = lay(x, y);
            var spoke = new Point2(towardsX, towardsY).Turned(turn);
            text.Arc(p.X, p.Y, z(x), spoke.X, spoke.Y);
        }
        void Side(double y, int way)
        {
            var before = z(c.X - way * a);
            Go(c.X - way * a, y, before);
            foreach (var x in new[] { -7.01, -7, 7, 7.01 }.Select(d => c.X + way * d).Where(x => Math.Abs(x - c.X) < a))
            {
                if (z(x) != before) Go(x, y, before);
                Go(x, y, before = z(x));
            }
            Go(c.X + way * a, y, before);
        }
        Side(c.Y - halfWidth - offset, 1);
        Bend(c.X + a + r, c.Y - b, 0, r);
        Go(c.X + a + r, c.Y + b, z(c.X + a + r));
        Bend(c.X + a, c.Y + b + r, -r, 0);
        Side(c.Y + halfWidth + offset, -1);
        Bend(c.X - a - r, c.Y + b, 0, -r);
        Go(c.X - a - r, c.Y - b, z(c.X - a - r));
        Bend(c.X - a, c.Y - b - r, r, 0);
    }

    public static ProofResult Prove(IReadOnlyDictionary<string, string>? texts = null, ImmutableArray<SetUp>? setUps = null, double cell = 0.2) =>
        Prover.Prove(Design, setUps ?? SetUps(), texts ?? Texts(), new ProofSettings { Cell = cell, ColletDiameter = 20, Threads = 2 }, null, Xunit.TestContext.Current.CancellationToken);
}
