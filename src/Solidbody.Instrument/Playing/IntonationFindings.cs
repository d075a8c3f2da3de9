using System.Globalization;
using Solidbody.Findings;
using Solidbody.Instrument.Checks;

namespace Solidbody.Instrument.Playing;

/// <summary>What can be wrong with where the saddles must stand for the notes to be true.</summary>
public static class IntonationFindings
{
    private const string Model = "Anderson and Beausoleil, J. Acoust. Soc. Am. 156 (2024) 683; travel from the instrument file";

    public static Finding CoreUnknown(IReadOnlyCollection<int> strings) =>
        new("INTONE-01", Severity.Notes, $"string{(strings?.Count > 1 ? "s" : "")} {string.Join(", ", strings!)}", "the core's diameter is not given", "the diameter of the core of a wound string", "the instrument file",
            "give `core` for these strings: measure it where the wrap ends, or ask the maker.")
        { Title = "where these saddles must stand is not worked out" };

    public static Finding OutOfTravel(int number, double setBack, double from, double to, double shift) =>
        new("INTONE-02", Severity.Stops, $"bridge, saddle of string {number}", $"{Say.Mm(setBack)} behind the scale line", $"{Say.Mm(from)} to {Say.Mm(to)}: the travel less {Say.Mm(Intonation.TravelMargin)} at each end", Model,
            $"set the bridge {Say.Mm(Math.Abs(shift))} {(shift > 0 ? "further back" : "further forward")}: add {Say.Mm(shift)} to its plate, screws, string holes and saddle travel.")
        { Title = "a saddle cannot go where its string is in tune" };

    public static Finding TravelTooShort(int fore, int rear, double apart, double most) =>
        new("INTONE-03", Severity.Stops, $"bridge, saddles of strings {fore} and {rear}", $"{Say.Mm(apart)} between them along the strings", Say.AtMost(most), Model,
            "take a bridge with more travel, lower the action, or take strings nearer alike in stiffness.")
        { Title = "the saddles' travel cannot hold every string in tune" };

    public static Finding OffAtFret(int number, int fret, double cents, bool compensated) =>
        new("INTONE-04", Severity.Warns, $"string {number} at fret {fret}", $"{Cents(cents)} {(cents > 0 ? "sharp" : "flat")}, the saddle at its best", $"at most {Cents(Intonation.MostCents)}", Limits.Practice,
            compensated ? "lower the nut or the action." : "lower the nut or the action, or compensate the nut.")
        { Title = "a fretted note stays out of tune" };

    public static Finding NutTooFar(int number, double shift) =>
        new("INTONE-05", Severity.Warns, $"nut, slot of string {number}", $"{Say.Mm(Math.Abs(shift))} {(shift > 0 ? "toward the bridge" : "toward the head")}", Say.AtMost(Intonation.MostNutShift), Limits.Practice,
            "lower the nut first, or leave the nut uncompensated.")
        { Title = "the nut would be compensated by very much" };

    private static string Cents(double cents) => Math.Abs(cents).ToString("0.0", CultureInfo.InvariantCulture) + " cents";
}
