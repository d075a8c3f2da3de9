using Solidbody.Geometry;
using Solidbody.Instrument;

namespace Solidbody.Machining.Tests;

/// <summary>Plain parts with every kind of feature, small enough to reason about by hand.</summary>
internal static class SampleParts
{
    /// <summary>420 × 320 × 44: neck pocket, pickup room, control room in a ledge, through and blind holes, rounded edges.</summary>
    public static Part Body { get; } = new()
    {
        Name = "body",
        Wood = "red-alder",
        Outline = new(Shapes.Rectangle(new(600, 0), 420, 320, 60)),
        Front = new LevelHeight(0),
        Back = new LevelHeight(-44),
        FrontFinish = FaceFinish.AsPlaned,
        BackFinish = FaceFinish.AsPlaned,
        Bounds = new(390, -160, -44, 810, 160, 0),
        Pockets =
        [
            new("neck pocket", Side.Front, new(Shapes.Rectangle(new(425, 0), 76, 56, 6)), new LevelHeight(-16), Fit: true),
            new("pickup", Side.Front, new(Shapes.Rectangle(new(560, 0), 40, 90, 6)), new LevelHeight(-18)),
            new("control cavity", Side.Back, new(Shapes.Rectangle(new(700, 80), 100, 50, 8)), new LevelHeight(-6)),
            new("cover ledge", Side.Back, new(Shapes.Rectangle(new(700, 80), 116, 66, 12)), new LevelHeight(-41)),
        ],
        Holes =
        [
            new("bridge screw 1", Side.Front, new(640, 20), 2.5, 0, -20, -22), new("bridge screw 2", Side.Front, new(640, -20), 2.5, 0, -20, -22),
            new("control shaft 1", Side.Front, new(690, 80), 10, 0, -7, -7),
            new("neck screw 1", Side.Back, new(440, 15), 4.5, -44, -15, -12), new("neck screw 2", Side.Back, new(440, -15), 4.5, -44, -15, -12),
        ],
        Edges = [new("front edge", Side.Front, Shapes.Rectangle(new(600, 0), 420, 320, 60).Points, true, new EdgeForm.Rounded(6)), new("back edge", Side.Back, Shapes.Rectangle(new(600, 0), 420, 320, 60).Points, true, new EdgeForm.Rounded(6))],
        Measures = [new("pocket depth", 16, 0.1, new Caliper.DepthFromTop(new(425, 0), 0))],
    };

    /// <summary>600 mm long: a carved back (an arch over the width), heel and headstock level, a channel as wide as the 6 mm cutter, tuner holes.</summary>
    public static Part Neck { get; } = new()
    {
        Name = "neck",
        Wood = "sugar-maple",
        Outline = new(Shapes.Rectangle(new(150, 0), 600, 56, 4)),
        Front = new LevelHeight(0),
        Back = new Arch(20, 28, 4),
        FrontFinish = FaceFinish.AsPlaned,
        BackFinish = FaceFinish.CarvedAcross,
        Bounds = new(-150, -28, -20, 450, 28, 0),
        Pockets =
        [
            new("headstock face", Side.Front, new(Shapes.Rectangle(new(-90, 0), 150, 80)), new LevelHeight(-3)),
            new("rod channel", Side.Front, new(Shapes.Capsule(new(-20, 0), new(380, 0), 3)), new LevelHeight(-10)),
        ],
        Holes = [.. Enumerable.Range(1, 6).Select(i => new Hole($"tuner hole {i}", Side.Front, new(-130 + 18 * i, i % 2 == 0 ? 14 : -14), 10, -3, -25, -25, true))],
        TabPlaces = [new(450, 0), new(-150, 0)],
    };

    /// <summary>470 × 56 × 6: playing face of 254 mm radius, dots, fret slots.</summary>
    public static Part Fretboard { get; } = new()
    {
        Name = "fretboard",
        Wood = "indian-rosewood",
        Outline = new(Shapes.Rectangle(new(235, 0), 470, 56)),
        Front = new Radius(6, 254),
        Back = new LevelHeight(0),
        FrontFinish = FaceFinish.SurfacedAlong,
        BackFinish = FaceFinish.AsPlaned,
        Bounds = new(0, -28, 0, 470, 28, 6),
        Holes = [new("dot 3", Side.Front, new(100, 0), 6, 6, 4, 4), new("dot 5", Side.Front, new(140, 0), 6, 6, 4, 4)],
        Slots = [.. Enumerable.Range(1, 5).Select(i => new Slot($"fret {i}", new(35 * i, -30), new(35 * i, 30), 0.58, 2.0))],
    };

    /// <summary>z = −edge − (depth − edge)·√(1 − (y/half)²): the back of a neck, deepest on the centre line.</summary>
    private sealed record Arch(double Depth, double Half, double Edge) : IHeight
    {
        public double Z(double x, double y) => -Edge - (Depth - Edge) * (1 - y * y / (Half * Half));
    }

    private sealed record Radius(double Crown, double R) : IHeight
    {
        public double Z(double x, double y) => Crown - (R - Math.Sqrt(R * R - y * y));
    }

    public static Design Design { get; } = new(Definition(), [Body, Neck, Fretboard], []);

    private static InstrumentDefinition Definition() => new()
    {
        Name = "sample",
        Scale = 635,
        Nut = new(43, 4, 35),
        Fretboard = new() { Wood = "indian-rosewood", Thickness = 6, RadiusAtNut = 254, RadiusAtLastFret = 254, BeyondLastFret = 8, WidthAtEnd = 56, SlotWidth = 0.58, SlotDepth = 2, Dots = new([3, 5], [], 6, 2, 20) },
        Neck = new()
        {
            Wood = "sugar-maple",
            ThicknessAtFret1 = 21,
            ThicknessAtFret12 = 23,
            Profile = "C",
            Lip = 4,
            Heel = new(19, 60, 10, 4, 76, new(50, 38, 12, 3, 18, 4.5, 0, 0)),
            Rod = new(6, 10, -20, 380, 20, 10, 3),
            VoluteHeight = 0,
        },
        Headstock = new()
        {
            TunersBass = 3,
            TunersTreble = 3,
            Thickness = 14,
            Drop = 3,
            TunerHole = 10,
            PostRadius = 3,
            FirstPost = 40,
            TunerPitch = 30,
            Splay = 0,
            EdgeDistance = 12,
            EdgeLead = 10,
            EdgeTrail = 10,
            NeckBlend = 20,
            Guard = 5,
            Swell = 2,
            Dip = 2,
            TipLength = 20,
            TipLean = 0,
            TipRadius = 8,
            TipLeg = 10,
            OgeeBass = 1,
            OgeeTreble = 1,
        },
        Body = new()
        {
            Wood = "red-alder",
            Thickness = 44,
            Pieces = 2,
            Pocket = new(76, 16, 0.1, 6),
            Outline = new()
            {
                BodyLength = 420,
                LowerBoutWidth = 320,
                LowerBoutAt = 300,
                WaistWidth = 250,
                WaistAt = 180,
                UpperBoutWidth = 290,
                UpperBoutAt = 80,
                Treble = new ShoulderDefinition.Rounded(20, 0.2),
                Bass = new ShoulderDefinition.Rounded(20, 0.2),
            },
            Bridge = new() { StringSpread = 52.5, Screws = [(0, 20), (0, -20)], ScrewPilot = 2.5, ScrewDepth = 20, StringHole = 3, Ferrule = 8, FerruleDepth = 10, PlateFrom = -10, PlateTo = 40, PlateHalfWidth = 40 },
            FrontEdge = new EdgeForm.Rounded(6),
            BackEdge = new EdgeForm.Rounded(6),
        },
    };
}
