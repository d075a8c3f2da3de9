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

    private static Finding Stops(string code, string title, string place, string figure, string limit, string source, string remedy) =>
        new(code, Severity.Stops, place, figure, limit, source, remedy) { Title = title };

    private static string Where(string file, int line, string place) => $"{file} line {line}, {place}";
    private static string Work(WorkPoint p) => string.Create(CultureInfo.InvariantCulture, $"X{p.X:0.###} Y{p.Y:0.###} Z{p.Z:0.###}");
    private static string Mm(double value) => string.Create(CultureInfo.InvariantCulture, $"{value:0.00#} mm");
}
