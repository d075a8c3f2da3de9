using Solidbody.Findings;
using Solidbody.Instrument.Fretboards;

namespace Solidbody.Instrument.Checks;

/// <summary>Whether frets can be pressed, played past, and are true under every string.</summary>
internal static class FretChecks
{
    public static IEnumerable<Finding> Of(InstrumentDefinition d)
    {
        var layout = FretLayout.Of(d);
        return [.. Slant(layout), .. Gaps(layout), .. BlindSlots(layout), .. True(layout)];
    }

    private static IEnumerable<Finding> Slant(FretLayout layout)
    {
        foreach (var (name, line) in ((string, CrossLine)[])[("the nut", layout.Fret(0)), ("the last fret", layout.Fret(layout.Frets)), ("the scale line", layout.ScaleLine)])
            if (double.RadiansToDegrees(Math.Abs(line.Turn)) is var degrees && !(degrees <= Limits.SteepFan)) yield return FretFindings.TooSteep(name, degrees);
    }

    /// <summary>The closest pair: on a fan, on the side of the shorter scale.</summary>
    private static IEnumerable<Finding> Gaps(FretLayout layout)
    {
        var (fret, gap) = Enumerable.Range(1, layout.Frets).Select(n => (n, Gap(layout, n))).MinBy(g => g.Item2);
        if (!(gap >= Limits.BetweenFrets)) yield return FretFindings.TooClose(FretboardMaker.SlotName(fret), gap, Limits.BetweenFrets, !(gap - layout.Board.SlotWidth >= Limits.BetweenSlots));
    }

    /// <summary>From a fret to the one before, square to it, at the nearer edge, mm.</summary>
    internal static double Gap(FretLayout layout, int fret)
    {
        var (line, before) = (layout.Fret(fret), layout.Fret(fret - 1));
        return new[] { -1, 1 }.Min(side => layout.AtEdge(line, side) is var p ? (p.X - before.X(p.Y)) * Math.Cos(before.Turn) : 0);
    }

    private static IEnumerable<Finding> BlindSlots(FretLayout layout)
    {
        if (layout.Board.BlindSlotsInside is not { } inside) yield break;
        foreach (var (side, name) in ((int, string)[])[(-1, "bass"), (1, "treble")])
        {
            double Beyond(int fret)
            {
                var end = layout.InsideEdge(layout.Fret(fret), side, inside);
                return side * (end.Y - layout.Strings.At(side < 0 ? 0 : layout.Strings.Count - 1, FretTable.Position(1, fret)).Y);
            }
            var (fret, beyond) = Enumerable.Range(layout.Nut.ZeroFretSetBack is null ? 1 : 0, layout.Frets).Select(n => (n, Beyond(n))).MinBy(b => b.Item2);
            if (!(beyond >= Limits.SlotBeyondString)) yield return FretFindings.BlindTooShort(FretboardMaker.SlotName(fret), name, beyond);
        }
    }

    /// <summary>The worst place of a straight fret under a string that stands in another share at the nut than at the bridge.</summary>
    private static IEnumerable<Finding> True(FretLayout layout)
    {
        if (!layout.IsFanned || layout.Strings.NutShares.IsEmpty) yield break;
        var worst = (Fret: 0, String: 0, Cents: 0.0);
        for (var n = 1; n <= layout.Frets; n++)
            for (var i = 1; i + 1 < layout.Strings.Count; i++)
                if (Cents(layout, n, i) is var cents && !(Math.Abs(cents) <= Math.Abs(worst.Cents))) worst = (n, i, cents);
        if (!(Math.Abs(worst.Cents) <= Limits.FretCents)) yield return FretFindings.OffTheString(worst.String + 1, worst.Fret, Math.Abs(worst.Cents));
    }

    /// <summary>What a string sounds sharp of its own twelve-tone place, from where the fret's line truly crosses it: 1200 log₂ of the lengths' ratio.</summary>
    internal static double Cents(FretLayout layout, int fret, int which)
    {
        var (strings, line) = (layout.Strings, layout.Fret(fret));
        var (nut, run) = (strings.Nut(which), strings.Saddle(which) - strings.Nut(which));
        var share = (line.X(nut.Y) - nut.X) / (run.X - line.Slope * run.Y);
        return 1200 * Math.Log2((1 - FretTable.Position(1, fret)) / (1 - share));
    }
}
