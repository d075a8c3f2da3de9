using Solidbody.Geometry;

namespace Solidbody.Instrument.Tests;

/// <summary>The instrument of the school workshop's band: a sound definition that tests start from.</summary>
internal static class Workshop
{
    public static InstrumentDefinition Guitar { get; } = new()
    {
        Name = "Band guitar",
        Scale = 635,
        Nut = new(43, 5, 35.5),
        Fretboard = new()
        {
            Wood = "indian-rosewood",
            Thickness = 6.35,
            RadiusAtNut = 254,
            RadiusAtLastFret = 304.8,
            BeyondLastFret = 6,
            WidthAtEnd = 56,
            SlotWidth = 0.58,
            SlotDepth = 2.4,
            Dots = new([3, 5, 7, 9, 12, 15, 17, 19, 21], [12], 6, 1.8, 22),
        },
        Neck = new()
        {
            Wood = "sugar-maple",
            ThicknessAtFret1 = 20.5,
            ThicknessAtFret12 = 22.5,
            Profile = "C",
            Lip = 2.5,
            Heel = new(19.05, 36, 24, 8, 75, new(50, 38, 12, 3.2, 14, 4.8, 12, 3)),
            Rod = new(6, 10, -14, 400, 14, 10, 3),
            VoluteHeight = 1.5,
        },
        Headstock = Shape.HeadstockDefinition("six in line"),
        Body = new()
        {
            Wood = "red-alder",
            Thickness = 44.45,
            Pieces = 2,
            Outline = Shape.Outline("offset"),
            Pocket = new(75, 16, 0.1, 8),
            Pickups = [new("neck pickup", 494, 40, 72, 18, 4, 0), new("bridge pickup", 597, 40, 72, 18, 4, 0)],
            Bridge = new()
            {
                StringSpread = 52.5,
                Screws = [(22, -36), (22, -18), (22, 18), (22, 36)],
                ScrewPilot = 2.5,
                ScrewDepth = 20,
                StringThroughAt = 14,
                StringHole = 3.5,
                Ferrule = 8,
                FerruleDepth = 9,
                PlateFrom = -14,
                PlateTo = 30,
                PlateHalfWidth = 43,
            },
            Controls = new(684, 98, 112, 44, double.DegreesToRadians(-27), 10, 6, 4, 2.5,
                [new("volume shaft", -34, 0, 9.5), new("tone shaft", 0, 0, 9.5), new("switch", 36, 0, 12.5)]),
            Jack = new(712, double.DegreesToRadians(-120), 22),
            WireWays = [new("neck pickup", "bridge pickup", 6), new("bridge pickup", "controls", 6), new("bridge", "controls", 3)],
            FrontEdge = new EdgeForm.Rounded(6.35),
            BackEdge = new EdgeForm.Rounded(6.35),
        },
    };

    /// <summary>Six strings of the band guitar. Gauges are common practice, no source; the wound ones' unit masses and cores are invented round numbers.</summary>
    public static TuningDefinition SixStrings { get; } = new(440,
    [
        new(new(40), 1.1684, 0.0068, 0.4064),
        new(new(45), 0.9144, 0.0043, 0.4064),
        new(new(50), 0.6604, 0.0023, 0.3556),
        new(new(55), 0.4318),
        new(new(59), 0.3302),
        new(new(64), 0.254),
    ]);

    /// <summary>The band guitar with its strings, of woods the wood table knows.</summary>
    public static InstrumentDefinition Strung { get; } = Guitar with
    {
        Tuning = SixStrings,
        Neck = Guitar.Neck with { Wood = "sugar-maple" },
        Fretboard = Guitar.Fretboard with { Wood = "indian-rosewood" },
        Body = Guitar.Body with { Wood = "red-alder" },
    };
}
