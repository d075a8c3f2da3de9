namespace Solidbody.Machining.Planning;

/// <summary>The trade's habits for laying out the work, mm. All are common practice, no source, unless a line says otherwise.</summary>
internal static class PlanPractice
{
    public const string Source = "common practice, no source";

    /// <summary>Waste left round a body.</summary>
    public const double BodyMargin = 18;
    /// <summary>Waste at each end of a neck blank, for dowels and screws; usual 30 to 40.</summary>
    public const double NeckEndRoom = 35;
    /// <summary>Rail beside a neck beyond the outline's groove.</summary>
    public const double NeckRail = 12;
    /// <summary>Added all round where the usual waste has no room for screws.</summary>
    public const double MoreForScrews = 12;
    /// <summary>Skim on a neck's back.</summary>
    public const double NeckBackSkim = 1;
    /// <summary>Waste beyond the groove round a fretboard.</summary>
    public const double BoardMargin = 8;
    /// <summary>Wood over a fretboard's crown before it is surfaced.</summary>
    public const double BoardSkim = 0.3;
    /// <summary>Blanks are planed to whole steps of this.</summary>
    public const double PlaningStep = 0.5;
    /// <summary>Wood between a groove and a dowel hole.</summary>
    public const double LandAtDowel = 3;
    /// <summary>Wood between a dowel hole and the blank's end.</summary>
    public const double LandAtEnd = 8;

    /// <summary>Most a front and a back may lie beside each other before sanding no longer hides it.</summary>
    public const double FlipMismatchMost = 0.2;

    /// <summary>Left on walls and outlines for the finishing pass.</summary>
    public const double RoughLeave = 0.3;
    /// <summary>Least diameter, over the widest cutter's, for roughing a face: what a pass takes goes with its square.</summary>
    public const double NearlyAsWide = 0.75;
    /// <summary>From one lap round a ledge to the next, a share of the cutter's diameter.</summary>
    public const double LedgeStepOver = 0.8;
    /// <summary>Left on a floor for its own pass, where something will rest on it.</summary>
    public const double FloorLeave = 0.2;
    /// <summary>Left on a carved face for the ball-end.</summary>
    public const double CarveLeave = 0.5;
    /// <summary>Ridge between two passes of a ball-end on a face that will be sanded.</summary>
    public const double Scallop = 0.02;
    /// <summary>Ridge between two passes on a sloping floor: under half of what the proof lets stand on a floor.</summary>
    public const double SlopeRidge = 0.02;
    /// <summary>Most that may stand along the walls of a sloping floor: what the proof lets stand there.</summary>
    public const double SlopeStrip = 0.05;
    /// <summary>Steepest sloping floor, radians: the cutter comes down it as on a ramp, and ramps into it are taken that much gentler.</summary>
    public const double SteepestFloor = 2 * Math.PI / 180;
    /// <summary>How far through-cuts go into the spoilboard, within the shop's allowance.</summary>
    public const double Overshoot = 0.2;
    /// <summary>Over the board a blind slot begins this high: ridges between passes stand there, 0.035 mm where passes end aslant.</summary>
    public const double OverRidge = 0.06;
    /// <summary>A finishing pass more over the walls of a fit.</summary>
    public const int SpringPasses = 1;
    /// <summary>How far two half outlines, one from each side, overlap.</summary>
    public const double HalvesOverlap = 0.5;

    /// <summary>A change of cutter by hand, with touching off, seconds; usual 2 to 4 minutes.</summary>
    public const double HandChange = 180;
    /// <summary>A change by a changer, seconds; usual 10 to 20.</summary>
    public const double ChangerChange = 15;

    public const double TabThickness = 3;
    /// <summary>Thickest a tab may be, of its blank: more is hard to trim, and the proof takes it for wood left over.</summary>
    public const double TabOfBlank = 0.48;
    public const double TabLengthThick = 10;
    public const double TabLengthThin = 8;
    public const int TabsLeast = 4;
    public const int TabsMost = 6;
    /// <summary>From this part thickness on, tabs are of the longer kind.</summary>
    public const double ThickPart = 30;

    /// <summary>Travel height over the highest thing on the bed; usual 5 to 10.</summary>
    public const double ClearanceOverAll = 6;
    /// <summary>Least room between collet and wood.</summary>
    public const double ColletRoom = 2;
    /// <summary>By how much a shank is thinner than the edges, in diameter, when it stands clear of the wall.</summary>
    public const double ShankRelief = 0.1;
    /// <summary>From a screw's head to the blank's edge.</summary>
    public const double ScrewEdge = 3;

    /// <summary>A drill makes a hole of its own diameter within this.</summary>
    public const double DrillMatch = 0.05;
    /// <summary>A boring cutter is at most this share of its hole, so that chips find a way out.</summary>
    public const double BoreShare = 0.9;
    /// <summary>A slot cutter's measure matches within this.</summary>
    public const double FormMatch = 0.05;
    /// <summary>A cutter that roughs before another is at least so much wider.</summary>
    public const double MuchWider = 1.5;
    /// <summary>Narrowest flat cutter that clears rooms; thinner ones are for slots.</summary>
    public const double LeastRoomCutter = 1.5;
}
