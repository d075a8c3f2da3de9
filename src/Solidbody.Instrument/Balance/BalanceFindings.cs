using Solidbody.Findings;
using Solidbody.Instrument.Checks;

namespace Solidbody.Instrument.Balance;

/// <summary>How an instrument can hang or sit badly.</summary>
public static class BalanceFindings
{
    private const string Model = "statics of a body on a strap that grips a shoulder (docs/checks/BALANCE-01.md); weights of what is bought by [weights]";

    public static Finding NeckDrops(double hand, double rests, double played) =>
        new("BALANCE-01", Severity.Warns, "hanging from the strap",
            rests <= -Math.PI / 2 + 1e-9
                ? $"let go at {Angle(played)}, the neck drops until it points down; {Say.Newtons(hand)} at the nut hold it"
                : $"let go at {Angle(played)}, the neck drops to {Angle(rests)}; {Say.Newtons(hand)} at the nut hold it",
            $"at rest at {Angle(played)}", Model, "move the horn's button toward the nut, lighten the tuners, or take a heavier body; the table of changes says what each does.")
        { Title = "the neck drops when it is let go" };

    public static Finding NeckRises(double rests, double played) =>
        new("BALANCE-02", Severity.Notes, "hanging from the strap", $"let go at {Angle(played)}, the neck rises to {Angle(rests)}", $"at rest at {Angle(played)}", Model,
            "move the tail's button toward the bass side or a heavy part toward the neck, if the player minds.")
        { Title = "the neck rises when it is let go" };

    public static Finding NotHung(string why) =>
        new("BALANCE-03", Severity.Notes, "hanging from the strap", why, "two buttons, and a strap longer than they are apart", Limits.OwnFile,
            "give two [[body.strap_buttons]] and the `strap` in [hanging]; until then how it hangs is not worked out.")
        { Title = "there is nothing to hang it by" };

    public static Finding TipsOnTheKnee(double hand, double most) =>
        new("BALANCE-04", Severity.Notes, "on the knee", $"it tips toward the head; {Say.Newtons(hand)} at the nut hold it, without the arm on the body", $"at most {Say.Newtons(most)}", "common practice, no source",
            "move the waist toward the head, or weight toward the tail.")
        { Title = "seated, the head wants to drop" };

    private static string Angle(double radians) => Say.Degrees(double.RadiansToDegrees(radians));
}
