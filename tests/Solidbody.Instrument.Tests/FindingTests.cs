using Solidbody.Findings;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Tests;

/// <summary>Each finding fires when one figure of the sound band guitar is spoilt, and only then.</summary>
public class FindingTests
{
    private static InstrumentDefinition G => Workshop.Guitar;
    private static InstrumentDefinition Body(Func<BodyDefinition, BodyDefinition> change) => G with { Body = change(G.Body) };
    private static InstrumentDefinition Head(Func<HeadstockDefinition, HeadstockDefinition> change) => G with { Headstock = change(G.Headstock) };
    private static InstrumentDefinition Neck(Func<NeckDefinition, NeckDefinition> change) => G with { Neck = change(G.Neck) };
    private static InstrumentDefinition Board(Func<FretboardDefinition, FretboardDefinition> change) => G with { Fretboard = change(G.Fretboard) };
    private static InstrumentDefinition Screws(Func<ScrewPattern, ScrewPattern> change) => Neck(n => n with { Heel = n.Heel with { Screws = change(n.Heel.Screws) } });
    private static InstrumentDefinition Pickup(Func<PickupDefinition, PickupDefinition> change) => Body(b => b with { Pickups = [change(b.Pickups[0]), b.Pickups[1]] });

    private static InstrumentDefinition Controls(Func<ControlsDefinition, ControlsDefinition> change) => Body(b => b with { Controls = change(b.Controls!) });
    private static InstrumentDefinition Covered(Func<CoverDefinition, CoverDefinition> change) => Controls(c => c with { Cover = change(new(0.25, 2, 0.1, 4, 2, 10)) });
    private static InstrumentDefinition Tremolo(Func<TremoloDefinition, TremoloDefinition> change, double? stringsThrough = null) => Body(b => b with
    {
        Tremolo = change(new(-9, 13, 74, 12, -110, 58, 14, 24, 3, 35, 9, 0, new(0.25, 2, 0.1, 6, 2.5, 10))),
        Bridge = b.Bridge with { StringThroughAt = stringsThrough, Screws = [(-12, -25), (-12, 25)], Hold = StringHold.Bridge },
    });

    private static InstrumentDefinition Contoured(Func<ArmContourDefinition, ArmContourDefinition> arm, Func<BellyContourDefinition, BellyContourDefinition> belly) => Body(b => b with
    {
        ArmContour = arm(new(655, -98, double.DegreesToRadians(-66), double.DegreesToRadians(14), 18, 900)),
        BellyContour = belly(new(492, -66, double.DegreesToRadians(-94), double.DegreesToRadians(19), 26, 22, 84)),
    });

    private static readonly Dictionary<string, InstrumentDefinition> Spoilt = new()
    {
        ["OUTLINE-01"] = Body(b => b with { Outline = b.Outline with { UpperBoutAt = 0.95 } }),
        ["HEAD-01"] = Head(h => h with { TunersTreble = 1 }),
        ["HEAD-02"] = Head(h => h with { FirstPost = 20 }),
        ["HEAD-03"] = G with { Headstock = Shape.HeadstockDefinition("three and three") with { Splay = 0, TunerPitch = 60 } },
        ["HEAD-04"] = G with { Nut = G.Nut with { StringSpread = 8 } },
        ["HEAD-05"] = Head(h => h with { EdgeDistance = 8 }),
        ["HEAD-06"] = Head(h => h with { TipLength = 10, TipLeg = 20, TipRadius = 5, OgeeBass = 6 }),
        ["HEAD-07"] = Head(h => h with { TunerPitch = 20 }),
        ["HEAD-08"] = Head(h => h with { TunerPitch = 5 }),
        ["NECK-01"] = Neck(n => n with { Profile = "X" }),
        ["NECK-02"] = Neck(n => n with { ThicknessAtFret1 = 10 }),
        ["NECK-03"] = Neck(n => n with { Heel = n.Heel with { BlendCentre = 330, BlendEdgeExtra = 60 } }),
        ["NECK-04"] = Neck(n => n with { Heel = n.Heel with { BlendCentre = 90 } }),
        ["NECK-05"] = Head(h => h with { Drop = 12, Thickness = 22 }),
        ["NECK-06"] = Neck(n => n with { VoluteAt = 40, VoluteHeight = 6, VoluteLength = 100 }),
        ["PROFILE-01"] = Neck(n => n with { Section = new(1, 1, 0.9, 0, 0.2) }),
        ["PROFILE-02"] = Neck(n => n with { Section = new(4, 3, 0.99, 0.05, 0) }),
        ["ROD-01"] = Neck(n => n with { ThicknessAtFret1 = 18 }),
        ["ROD-02"] = Neck(n => n with { Rod = n.Rod with { End = 462 } }),
        ["ROD-03"] = Neck(n => n with { Rod = n.Rod with { Start = 5 } }),
        ["SCREW-01"] = Screws(s => s with { PilotDepth = 18 }),
        ["SCREW-02"] = Screws(s => s with { AlongY = 8, AlongX = 60 }),
        ["SCREW-03"] = Screws(s => s with { AlongY = 52 }),
        ["POCKET-01"] = Body(b => b with { Pocket = b.Pocket with { Depth = 20 } }),
        ["POCKET-02"] = Body(b => b with { Thickness = 30 }),
        ["POCKET-03"] = Body(b => b with { Outline = b.Outline with { Treble = ((ShoulderDefinition.Horned)b.Outline.Treble) with { ShoulderMargin = 8 } } }),
        ["POCKET-04"] = Body(b => b with { Pocket = b.Pocket with { CornerRadius = 30 } }),
        ["WALL-01"] = Pickup(p => p with { CentreX = 486 }),
        ["WALL-02"] = Body(b => b with { Controls = b.Controls! with { CentreY = 128 } }),
        ["WALL-03"] = Body(b => b with { Bridge = b.Bridge with { Screws = [(-20, 30), (22, 36)] } }),
        ["WALL-04"] = Body(b => b with { Bridge = b.Bridge with { Screws = [(14, 22), (22, 36)] } }),
        ["WALL-05"] = Body(b => b with { BackEdge = new EdgeForm.Rounded(15.5) }),
        ["WALL-06"] = Body(b => b with { Jack = b.Jack! with { Diameter = 30 }, Controls = b.Controls! with { LedgeDepth = 6 } }),
        ["WALL-07"] = Body(b => b with { Bridge = b.Bridge with { Screws = [(130, 31), (22, 36)] } }),
        ["STRAP-01"] = Body(b => b with { StrapButtons = [new("side button", 684, 180, 3, 60)] }),
        ["STRAP-02"] = Body(b => b with { StrapButtons = [new("side button", 684, 250, 3, 25)] }),
        ["CAVITY-01"] = Pickup(p => p with { Legs = new(86, 14, 38) }),
        ["CAVITY-02"] = Pickup(p => p with { Legs = new(60, 14, 24) }),
        ["CAVITY-03"] = Pickup(p => p with { Screws = new(62, 2.5, 26) }),
        ["CAVITY-04"] = Pickup(p => p with { Screws = new(71, 2.5, 10) }),
        ["CONTROL-04"] = Controls(c => c with { Shafts = [c.Shafts[0], c.Shafts[1] with { Along = -10 }, c.Shafts[2]] }),
        ["CONTROL-05"] = Controls(c => c with { Floor = 10 }),
        ["CONTROL-06"] = Controls(c => c with { Width = 30 }),
        ["JACK-02"] = Body(b => b with { Jack = b.Jack! with { Plate = new(38, 40, 3, 30, 2, 15) } }),
        ["JACK-03"] = Body(b => b with { Jack = b.Jack! with { Plate = new(60, 25, 0.5, 30, 2, 15) } }),
        ["COVER-01"] = Covered(c => c with { Thickness = 3 }),
        ["COVER-02"] = Covered(c => c with { Pilot = 3 }),
        ["COVER-03"] = Covered(c => c with { Gap = 1.5 }),
        ["COVER-04"] = Covered(c => c with { Screws = 2 }),
        ["TREM-01"] = Tremolo(t => t with { OpeningTo = 40 }),
        ["TREM-02"] = Tremolo(t => t, stringsThrough: 14),
        ["TREM-03"] = Tremolo(t => t with { SpringsFrom = -70 }),
        ["TREM-04"] = Tremolo(t => t with { Depth = 38 }),
        ["TREM-05"] = Tremolo(t => t with { SpringsWidth = 80 }),
        ["CONTOUR-01"] = Contoured(a => a with { Angle = double.DegreesToRadians(28), Y = -80 }, b => b with { X = 640, Y = -90, Angle = double.DegreesToRadians(28) }),
        ["CONTOUR-02"] = Contoured(a => a with { Y = -50 }, b => b),
        ["CONTOUR-04"] = Contoured(a => a, b => b with { WindowBlend = 24, Angle = double.DegreesToRadians(28) }),
        ["CONTOUR-05"] = Contoured(a => a with { Y = -240 }, b => b),
        ["CONTROL-01"] = Body(b => b with { Controls = b.Controls! with { Floor = 4 } }),
        ["CONTROL-02"] = Body(b => b with { Controls = b.Controls! with { Shafts = [new("volume shaft", 55, 0, 9.5)] } }),
        ["CONTROL-03"] = Body(b => b with { Controls = b.Controls! with { Floor = 40 } }),
        ["BRIDGE-01"] = Body(b => b with { Bridge = b.Bridge with { PlateTo = 128 } }),
        ["BRIDGE-02"] = Body(b => b with { Bridge = b.Bridge with { ScrewDepth = 43 } }),
        ["BRIDGE-03"] = Body(b => b with { Bridge = b.Bridge with { FerruleDepth = 25 } }),
        ["PICKUP-01"] = Pickup(p => p with { AlongY = 48 }),
        ["PICKUP-02"] = Pickup(p => p with { Depth = 40 }),
        ["PICKUP-03"] = Body(b => b with { Pickups = [b.Pickups[0], b.Pickups[1] with { CentreX = 603 }] }),
        ["JOINT-01"] = Body(b => b with { Bridge = b.Bridge with { Screws = [(22, 0), (22, 36)] } }),
        ["EDGE-01"] = Body(b => b with { FrontEdge = new EdgeForm.Chamfered(400, Math.PI / 4) }),
        ["EDGE-02"] = Body(b => b with { BackEdge = new EdgeForm.Rounded(36) }),
        ["WIRE-01"] = Pickup(p => p with { Depth = 9 }),
        // A fence of screws, 8 mm apart, between the bridge pickup and the plate's underside.
        ["WIRE-02"] = Body(b => b with { WireWays = [new("bridge pickup", "bridge", 6)], Bridge = b.Bridge with { Screws = [.. Enumerable.Range(-5, 11).Select(i => (-14.0, 8.0 * i))] } }),
        ["WIRE-04"] = Body(b => b with { WireWays = [b.WireWays[0], b.WireWays[2]] }),
        ["WIRE-05"] = Body(b => b with { LongDrill = new(90, 40) }),
        ["WIRE-06"] = Body(b => b with { WireWays = [b.WireWays[0], b.WireWays[1] with { Made = WireMaking.Ploughed }, b.WireWays[2]] }),
        ["WIRE-03"] = Body(b => b with { WireWays = [new("neck pickup", "cellar", 6)] }),
        ["JACK-01"] = Body(b => b with { Jack = b.Jack! with { Angle = double.DegreesToRadians(-30) } }),
        ["BOARD-01"] = Board(b => b with { Thickness = 4, SlotDepth = 2.8 }),
        ["BOARD-02"] = Board(b => b with { Dots = b.Dots with { Depth = 5.6 } }),
        ["BOARD-03"] = Board(b => b with { Dots = b.Dots with { Diameter = 11 } }),
        ["STRING-01"] = Board(b => b with { WidthAtEnd = 50 }),
    };

    public static TheoryData<string> Codes => [.. Spoilt.Keys];

    [Theory, MemberData(nameof(Codes))]
    public void A_spoilt_figure_is_found(string code) => Fires.OnlyWhenSpoilt(code, G, Spoilt[code]);

    [Fact] public void Every_part_is_there_unless_something_stops() => Assert.All(Spoilt.Values.Select(Designer.Design), d => Assert.True(d.Parts.Length == 3 || d.Findings.Any(f => f.Severity == Severity.Stops)));
}
