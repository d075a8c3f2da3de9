using System.Globalization;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Proof;

/// <summary>Everything a proof has to say, one factory a code. <c>docs/checks/CODE.md</c> explains each.</summary>
internal static class ProofFindings
{
    public static Finding Gouge(string place, double depth, string culprit) =>
        Stops("PROOF-01", "the cut goes into the part", $"{place}{culprit}", $"{Mm(depth)} too deep", $"at most {Mm(ProofLimits.Gouge)}",
            ProofLimits.OwnTolerance, "do not run this program; make it again, or undo what was changed at that line");

    public static Finding Leftover(string place, double height, double limit, string last) =>
        Stops("PROOF-02", "wood is left on the part", $"{place}{last}", $"{Mm(height)} left", $"at most {Mm(limit)}",
            ProofLimits.OwnTolerance, "make the programs again; look for a line or a program that is missing, or another cutter than the one named");

    public static Finding Measure(string part, MeasureResult measure, bool found) =>
        Stops("PROOF-03", "a measure of the cut part is off", $"{part}, {measure.Name}",
            found ? $"{Mm(measure.Measured)} measured" : "the caliper finds no wall within its search", $"{Mm(measure.Expected)} ± {Mm(measure.Tolerance)}",
            "the instrument file", "make the programs again; if the figure stays, the measure cannot be cut with these cutters");

    public static Finding RapidThroughWood(string file, int line, string place, double depth) =>
        Stops("PROOF-04", "a rapid goes through wood", Where(file, line, place), $"{Mm(depth)} of wood in its way", $"at most {Mm(ProofLimits.Rapid)}",
            "common practice, no source: a rapid is no cut", "raise the clearance height, or feed there");

    public static Finding OutsideTravel(string file, int line, WorkPoint at, double by) =>
        Stops("PROOF-05", "a move leaves the machine's travel", Where(file, line, Work(at)), $"{Mm(by)} outside", "inside the travel",
            "the shop file's machine", "lay the blank elsewhere on the bed, or turn it");

    public static Finding IntoBed(string file, int line, WorkPoint at, double below) =>
        Stops("PROOF-06", "the cutter goes too deep into the bed", Where(file, line, Work(at)), $"{Mm(below)} below the allowance", "no deeper than the stated allowance",
            "the shop file's spoilboard allowance", "check the blank's thickness and the zero; make the programs again");

    public static Finding KeepOutEntered(string file, int line, WorkPoint at, string keepOut, string what, double by) =>
        Stops("PROOF-07", $"the {what} enters a keep-out", Where(file, line, $"{keepOut}, {Work(at)}"), $"{Mm(by)} below its top", "never",
            "the set-up's own keep-outs", "move the hold-down, or raise the clearance height above it");

    public static Finding SpindleStands(string file, int line) =>
        Stops("PROOF-08", "a feed move comes while the spindle stands", Where(file, line, "first such move"), "0 turns a minute", "a turning spindle",
            "common practice, no source", "start the spindle with M3 and a speed before the first feed move");

    public static Finding AboveFlutes(string file, int line, string place, double by, double flutes) =>
        Stops("PROOF-09", "wood is cut above the cutting edges", Where(file, line, place), $"{Mm(by)} above the edges", $"flutes of {Mm(flutes)}",
            "the shop file's cutter", "a cutter with longer flutes, or shallower steps");

    public static Finding ShankInWood(string file, int line, string place, double by, double flutes) =>
        Stops("PROOF-10", "the thicker shank meets wood", Where(file, line, place), $"{Mm(by)} of wood beside the shank", $"none above {Mm(flutes)} from the tip",
            "the shop file's cutter", "a longer or thinner-shanked cutter, or a wider room above");

    public static Finding ShankBesideWood(string file, int line, string place, double by, double flutes) =>
        new("PROOF-11", Severity.Warns, Where(file, line, place), $"{Mm(by)} of wood beside the shank", $"flutes of {Mm(flutes)}",
            "common practice, no source: a shank no thicker than the cutter clears, but chips pack there", "clear the chips, or take a cutter with longer flutes")
        { Title = "a wall is higher than the cutter's edges are long" };

    public static Finding ColletInWood(string file, int line, string place, double by, double stickOut) =>
        Stops("PROOF-12", "the collet meets wood", Where(file, line, place), $"{Mm(by)} deep", $"stick-out of {Mm(stickOut)}",
            "the shop file's cutter", "set the cutter out farther if its shank allows, or take a longer one");

    public static Finding ProgramMissing(SetUp setUp, string file) =>
        Stops("PROOF-13", "a program is missing", $"{setUp.Title}, {file}", "no such text", "every program the packet names",
            "packet.json", "put the file back, or make the packet again");

    public static Finding ProgramUnreadable(Mistake mistake) =>
        Stops("PROOF-14", $"a program cannot be read: {mistake.Wrong}", $"{mistake.File} line {mistake.Line} column {mistake.Column}", mistake.Wrong, mistake.Allowed,
            "NISTIR 6556 (RS274/NGC), as this tool takes it", mistake.Remedy);

    public static Finding PartNotCut(string part) =>
        Stops("PROOF-15", "a part could not be proved", part, "not all its set-ups and programs could be read", "every part of the instrument is proved",
            ProofLimits.OwnTolerance, "mend what the other findings name first, or plan the part");

    public static Finding StartsLow(string file, ProgramStart start, double wood) =>
        Stops("PROOF-16", "the program sets out below the wood's top", Where(file, start.RiseLine, "first rise"), $"Z {start.LowestRise.ToString("0.###", CultureInfo.InvariantCulture)} mm", $"above {Mm(wood)}",
            "common practice, no source: nobody knows where the cutter stands when a program starts", "begin with a rise to the clearance height");

    public static Finding BlanksDiffer(SetUp first, SetUp other, double apart) =>
        Stops("PROOF-17", "two set-ups of a part speak of different blanks", $"{first.Title}; {other.Title}", $"{Mm(apart)} apart", "one blank, as it was before its first set-up",
            OwnIndex, "make the packet again; the index was changed");

    public static Finding BlankTooSmall(string part, double missing) =>
        Stops("PROOF-18", "the blank does not hold the part", part, $"{Mm(missing)} missing", "the part within its blank",
            "the part's own bounds", "a larger blank");

    public static Finding BlankOffTheBed(SetUp setUp, double bottom) =>
        Stops("PROOF-19", "the blank does not lie on the spoilboard", setUp.Title, $"its lower face at Z {bottom.ToString("0.00#", CultureInfo.InvariantCulture)} mm", "Z 0, the spoilboard's face",
            OwnIndex, "make the packet again; the placement was changed");

    public static Finding DowelsApart(SetUp first, SetUp other, string dowel, double apart) =>
        Stops("PROOF-20", "a dowel does not meet its hole after the blank is turned", $"{first.Title}; {other.Title}, {dowel}", $"{Mm(apart)} apart on the bed", "the same place in both set-ups",
            OwnIndex, "make the packet again; the placement was changed");

    public static Finding DowelInPart(SetUp setUp, string dowel, double inside) =>
        Stops("PROOF-20", "a dowel's hole reaches into the part", $"{setUp.Title}, {dowel}", $"{Mm(inside)} inside the outline", "outside the part",
            OwnIndex, "a longer blank, or the dowels elsewhere");

    public static Finding DowelNotBored(SetUp setUp, string dowel, string figure, double diameter) =>
        Stops("PROOF-21", "a dowel's hole is not cut where the packet says", $"{setUp.Title}, {dowel}", figure, $"a hole of {Mm(diameter)} through the blank at its place, within {Mm(ProofLimits.Dowel)}",
            "the packet's registration", "make the programs again; look for a line or a program that is missing");

    public static Finding OtherThanTold(string file, int line, string what, string says, string told) =>
        Stops("PROOF-22", $"the {what} is not what the packet says", Where(file, line, "first such move"), says, told,
            OwnIndex, "make the packet again; the text or the index was changed");

    public static Finding NotInRack(string file, string cutter, bool named) =>
        Stops("PROOF-22", "the cutter is not the rack's", $"{file}, cutter {cutter}", named ? "other measures than in the rack" : "no such cutter in the rack", "a cutter of the shop file, with its measures",
            "the shop file's cutters", "measure the cutter, correct the shop file, and make the packet again");

    public static Finding OtherTool(string file, int? says, int? due) =>
        Stops("PROOF-22", "the tool number is not the cutter's place in the rack", file, says is { } s ? $"T{s}" : "no T word", due is { } d ? $"T{d}" : "no T word: the machine has no changer",
            "the shop file's cutters", "make the packet again; the text or the rack was changed");

    public static Finding PastTheMachine(string file, int line, string figure, string limit) =>
        Stops("PROOF-23", "a speed or feed is past what the machine can do", Where(file, line, "first such move"), figure, limit,
            "the shop file's machine", "correct the machine's limits in the shop file, or make the programs again");

    public static Finding SlantingRapid(string file, int line, WorkPoint at, double climb) =>
        Stops("PROOF-24", "a rapid changes plan and height at once", Where(file, line, Work(at)), $"{Mm(climb)} of height on the way", "straight up or down, or level",
            "NISTIR 6556, section 3.5.1, from memory: a rapid need not run straight", "rise first, then travel, then go down");

    public static Finding LowRapid(string file, int line, WorkPoint at, double below, double clearance) =>
        Stops("PROOF-24", "a rapid travels below the clearance height", Where(file, line, Work(at)), $"{Mm(below)} below it", $"Z {Mm(clearance)} or above",
            "NISTIR 6556, section 3.5.1, from memory: a rapid need not run straight", "rise to the clearance height before travelling");

    public static Finding RapidIntoBed(string file, int line, WorkPoint at, double below) =>
        Stops("PROOF-04", "a rapid goes into the spoilboard", Where(file, line, Work(at)), $"{Mm(below)} below its face", "above the spoilboard's face",
            "common practice, no source: a rapid is no cut", "feed there");

    public static Finding TabTooMuch(string place, string figure, string limit) =>
        Stops("PROOF-25", "tabs are listed that excuse too much wood", place, figure, limit,
            "stated limits of this tool, docs/checks", "make the packet again; the list of tabs was changed");

    public static Finding TabMissing(string place, double wood, double due) =>
        Stops("PROOF-26", "a tab is cut away", place, $"{Mm(wood)} of wood stands", $"at least {Mm(due)}",
            "common practice, no source: a part that comes loose while it is cut is thrown", "make the programs again; the cutter must rise over its tabs");

    public static Finding NotProved(string what) =>
        Stops("PROOF-27", "the packet holds something that nothing proves", what, "not proved", "every program belongs to a set-up of one of the instrument's parts",
            OwnIndex, "take it out of the packet's folder, or make the packet again");

    public static Finding Plunged(string file, int line, string place, double by, string cutter) =>
        new("PROOF-28", Severity.Stops, Where(file, line, place), $"{Mm(by)} of wood under its middle", $"none: {cutter} may only ramp",
            "the shop file's cutter", "ramp in, start beside the wood, or take a cutter that plunges")
        { Title = "a cutter that does not cut to its middle goes straight down into wood" };

    private const string OwnIndex = "packet.json";

    private static Finding Stops(string code, string title, string place, string figure, string limit, string source, string remedy) =>
        new(code, Severity.Stops, place, figure, limit, source, remedy) { Title = title };

    private static string Where(string file, int line, string place) => $"{file} line {line}, {place}";
    private static string Work(WorkPoint p) => string.Create(CultureInfo.InvariantCulture, $"X{p.X:0.###} Y{p.Y:0.###} Z{p.Z:0.###}");
    private static string Mm(double value) => string.Create(CultureInfo.InvariantCulture, $"{value:0.00#} mm");
}
