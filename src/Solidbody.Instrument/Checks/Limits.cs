namespace Solidbody.Instrument.Checks;

/// <summary>The limits of fit and strength, mm, in one table. Common practice, no source, unless stated.</summary>
internal static class Limits
{
    public const string Practice = "common practice, no source", OwnShapes = "rules of our own shapes, docs/shapes.md", OwnFile = "the instrument file";

    /// <summary>Wall between two rooms, and from a room to the body's edge; ledges are shallow and take less.</summary>
    public const double BetweenRooms = 5, ToEdge = 8, LedgeToEdge = 3, HoleToRoom = 2;
    /// <summary>Wood between arm and belly contour, and to the faces opposite them (docs/shapes.md).</summary>
    public const double BetweenContours = 20;
    /// <summary>Wood between two holes, from a hole to the body's edge, and from a bore to edge or face.</summary>
    public const double BetweenHoles = 2, HoleToEdge = 4, BoreToOutside = 4;
    /// <summary>Wood round a strap button's screw, which carries the instrument; how far off the outline its place may be given.</summary>
    public const double AroundStrapScrew = 5, StrapOffOutline = 5;
    /// <summary>Pickup screw's pilot to the wall it stands beside; the thickest front a common bush passes; least room for springs at rest.</summary>
    public const double ScrewToWall = 1, FrontForBush = 8, SpringRoom = 80;
    public const string PracticeRemembered = "common practice, from memory";
    /// <summary>A cover: how far below the back it may lie, what it lies on, wood beside its pilots (a ledge is narrow), distance between its screws.</summary>
    public const double CoverBelow = 1, CoverBearing = 3, AroundCoverScrew = 1.5, CoverScrewSpacing = 120;
    /// <summary>Level wood left between a rounded edge and a room's mouth.</summary>
    public const double LandAtEdge = 1;
    /// <summary>Wood left under pocket, pickup cavity, and control cavity.</summary>
    public const double UnderPocket = 15, UnderPickup = 8, UnderControls = 5;
    /// <summary>A cap of another wood: a floor this near to the glue cannot be told from it; least layer left at the glue; bridge screw in the wood under the cap.</summary>
    public const double GlueLine = 0.2, LeftAtGlue = 1, ScrewUnderTop = 5;
    /// <summary>Wood beyond a blind screw hole's tip; wood from a heel screw to the heel's side; screw to the joint of two pieces, beside the hole.</summary>
    public const double BeyondScrew = 1.5, ScrewToSide = 5, ScrewToJoint = 3;
    /// <summary>Rod channel to the heel's end; hollows of the back must let a 12.7 mm ball-end in with room to spare (docs/shapes.md).</summary>
    public const double RodToHeelEnd = 3, HollowRadius = 8;
    /// <summary>Shaft left below the glue plane beyond the upright lip.</summary>
    public const double ShaftBelowLip = 2;
    /// <summary>Tuner post to the headstock's edge; posts of opposite sides; string to another string's post (docs/shapes.md).</summary>
    public const double PostToEdge = 9, OppositePosts = 16, OppositePostsBass = 24, StringToPost = 2;
    /// <summary>From this post radius on, tuners are a bass's; room a tuner's casing takes behind its neighbour.</summary>
    public const double BassPostRadius = 4.5, TunerPitch = 22, TunerPitchBass = 36;
    /// <summary>Hollow at the nut: (u of the edge's start)² ≥ 40 mm × its rise keeps its radius at 8 mm (docs/shapes.md).</summary>
    public const double NutHollow = 40;
    /// <summary>Least bite of a neck screw. Board over a tenon's shoulders off the body's front; least glue faces of a set neck, and of a wing, mm²; loosest glue joint, a side.</summary>
    public const double ScrewBite = 10, BoardOffBody = 0.2, TenonGlue = 3000, GlueGap = 0.15;
    /// <summary>Narrowest body beside a through-neck's core that is a wing at all.</summary>
    public const double Wing = 20;
    /// <summary>How far the headstock's back may be off its plane under a tuner; steepest edge of a section that passes still follow, radians (docs/shapes.md).</summary>
    public const double TunerSeat = 0.3, SteepestEdge = 85 * Math.PI / 180;
    /// <summary>Slope of grain from which a one-piece headstock is called short-grained: 1 in 10. Glue face of a scarf joint; its line kept from the board's end.</summary>
    public const double SlopeOfGrain = 0.1, ScarfLength = 50, ScarfLineToNut = 5;
    /// <summary>A fan's lines from square, degrees: to warn, and beyond which nothing can be played or cut.</summary>
    public const double SteepFan = 30, SteepestFan = 45;
    /// <summary>Fret to fret: a crown of 2.9 mm and as much to press on; wood between two slots; a blind slot's end outside the outer string; a straight fret beside a string's own place, cents.</summary>
    public const double BetweenFrets = 6, BetweenSlots = 1, SlotBeyondString = 1, FretCents = 1;
    /// <summary>Nut outside the outer slot; clear way between two strings there, or from middle to middle where gauges are not given; a string beside its pole.</summary>
    public const double NutOutside = 1.5, BetweenStrings = 3.5, BetweenStringCentres = 5, StringToPole = 1.5;
    /// <summary>Fall of the playing face from its middle to its edge: as 184 mm of radius over a board 66 mm wide.</summary>
    public const double CrownFall = 3;
    /// <summary>Board between an end slot and the board's end; an overhanging board to a pickup's cavity, and above the body.</summary>
    public const double SlotToEnd = 2, OverhangToPickup = 1, OverhangAboveBody = 0.3;
    /// <summary>For the hand on the treble side: frets that may lie over the body, wood from the playing face to the back at the last of them, clear width of the cutaway.</summary>
    public const int FretsOverBody = 6;
    public const double HeelForHand = 65, CutawayRoom = 20;
    /// <summary>Board outside the outer string; string inside a pickup's cavity; board left under a fret slot's end, and under a dot.</summary>
    public const double StringToEdge = 2, StringInPickup = 2, UnderSlot = 0.8, UnderDot = 1, DotToSlot = 0.3;
}
