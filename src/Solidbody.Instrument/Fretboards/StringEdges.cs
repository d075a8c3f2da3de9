namespace Solidbody.Instrument.Fretboards;

/// <summary>Board outside the outer strings.</summary>
internal static class StringEdges
{
    /// <summary>From the outer string to the board's edge on one side, where a fret crosses it, square to the centre line, mm.</summary>
    /// <param name="side">−1 bass, +1 treble.</param>
    public static double At(FretLayout layout, double fret, int side)
    {
        var at = layout.Strings.At(side < 0 ? 0 : layout.Strings.Count - 1, FretTable.Position(1, fret));
        return layout.HalfWidth(at.X) - side * at.Y;
    }

    /// <summary>The lesser of both sides.</summary>
    public static double Least(FretLayout layout, double fret) => Math.Min(At(layout, fret, -1), At(layout, fret, +1));

    /// <summary>Width of the board at its end, mm, so that at the last fret this much lies outside the outer strings, on a fan on both sides at least.</summary>
    /// <param name="layout">All but the width at the end, which is not looked at.</param>
    public static double WidthAtEnd(FretLayout layout, double edge)
    {
        var last = layout.Fret(layout.Frets);
        var ratio = FretTable.Position(1, layout.Frets);
        // y + e = h + g x where the string crosses the last fret.
        var gain = new[] { 0, layout.Strings.Count - 1 }.Select(i => layout.Strings.At(i, ratio)).Max(p => (Math.Abs(p.Y) + edge - layout.NutHalfWidth) / p.X);
        // A square end stands further back the wider it is: w = h + g (x + |m| w).
        var lean = layout.Board.End == BoardEndKind.Square ? Math.Abs(last.Slope) : 0;
        return 2 * (layout.NutHalfWidth + gain * (last.Middle + layout.Board.BeyondLastFret)) / (1 - gain * lean);
    }
}
