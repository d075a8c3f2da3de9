using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Instrument.Playing;
using Solidbody.Packet.Drawing;

namespace Solidbody.Packet.Pictures;

/// <summary>How far every fretted note is off, string by string: rings with the saddle on the scale line, dots with saddle and nut where they shall stand.</summary>
public static class IntonationPicture
{
    // mm on the picture; text is 3.1 mm as on the sheets.
    private const double Margin = 12, Letters = 3.1, Names = 24, FretWidth = 7, StripHeight = 18, Between = 5, Words = 84, Foot = 16;
    private const double Mark = 0.85;
    /// <summary>A strip reaches to a whole number of these, cents.</summary>
    private const double ScaleStep = 5;

    /// <summary>The picture as SVG.</summary>
    /// <param name="table">What was worked out.</param>
    /// <param name="definition">The instrument: its name, and its strings' notes.</param>
    public static string Svg(IntonationTable table, InstrumentDefinition definition)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(definition);
        var frets = definition.Frets;
        var cents = table.Strings.SelectMany(s => s.Before.Concat(s.After)).ToList();
        var (sharpest, flattest) = (Rounded(cents.DefaultIfEmpty().Max()), -Rounded(-cents.DefaultIfEmpty().Min()));
        var (left, top) = (Margin + Names, Margin + 5 * Letters);
        var right = left + (frets + 1) * FretWidth;
        var svg = new Svg(right + Words + Margin, top + table.Strings.Length * (StripHeight + Between) + Foot, $"{definition.Name}, intonation");
        svg.Text(new(Margin, Margin + Letters), $"{definition.Name}: how far each fretted note is from true, in cents, the open string in tune", Letters * 1.2, weight: 700);
        Key(svg, new(Margin, Margin + 3.2 * Letters));

        var y = top;
        foreach (var intoned in table.Strings.Reverse())
        {
            Strip(svg, intoned, new(left, y, right, y + StripHeight), sharpest, flattest);
            svg.Text(new(Margin, y + StripHeight / 2 + 0.35 * Letters), $"{NoteName.Of(definition.Tuning!.Strings[intoned.String - 1].Note)}, string {intoned.String}", Letters);
            Beside(svg, intoned, new(right + 5, y + StripHeight / 2));
            y += StripHeight + Between;
        }
        for (var fret = 1; fret <= frets; fret++) svg.Text(new(left + fret * FretWidth, y + Letters), Written.Whole(fret), 0.9 * Letters, "middle");
        svg.Text(new(Margin, y + Letters), "fret", 0.9 * Letters);
        svg.Text(new(Margin, y + 3 * Letters), "Worked out, not measured. Setting each saddle by ear or by a tuner has the last word.", 0.9 * Letters, colour: Palette.SecondInk);
        return svg.ToString();
    }

    private static void Key(Svg svg, Point2 at)
    {
        svg.Circle(at + new Point2(Mark, -0.35 * Letters), Mark, 0.25);
        svg.Text(at + new Point2(4 * Mark, 0), "saddle on the scale line, nut in its place", Letters);
        var next = at.X + 6 * Mark + Pictures.Svg.WidestText("saddle on the scale line, nut in its place", Letters);
        svg.Dot(new(next, at.Y - 0.35 * Letters), Mark);
        svg.Text(new(next + 3 * Mark, at.Y), "saddle and nut set back as worked out", Letters);
    }

    private static double Rounded(double cents) => ScaleStep * Math.Max(1, Math.Ceiling(cents / ScaleStep));

    private static void Strip(Svg svg, IntonedString s, Box2 box, double sharpest, double flattest)
    {
        double Y(double cents) => box.Y0 + (sharpest - cents) / (sharpest - flattest) * box.Height;
        double X(int fret) => box.X0 + fret * FretWidth;
        foreach (var level in (double[])[sharpest, flattest])
        {
            svg.Line(new(box.X0, Y(level)), new(box.X1, Y(level)), 0.13, Palette.SecondInk);
            svg.Text(new(box.X0 - 1, Y(level) + 0.3 * Letters), Written.Signed(level, 0), 0.8 * Letters, "end", colour: Palette.SecondInk);
        }
        svg.Line(new(box.X0, Y(0)), new(box.X1, Y(0)), 0.25);
        for (var i = 0; i < s.Before.Length; i++) svg.Circle(new(X(i + 1), Y(s.Before[i])), Mark, 0.25);
        for (var i = 0; i < s.After.Length; i++) svg.Dot(new(X(i + 1), Y(s.After[i])), Mark);
    }

    private static void Beside(Svg svg, IntonedString s, Point2 at)
    {
        var nut = s.NutShift > 0 ? $", nut slot {Written.Millimetres(s.NutShift, 2)} mm nearer" : "";
        svg.Text(at + new Point2(0, -0.4 * Letters), $"saddle {Written.Millimetres(s.SaddleSetBack, 2)} mm behind the scale line{nut}", 0.9 * Letters);
        svg.Text(at + new Point2(0, 1.1 * Letters), $"then {Written.Signed(s.WorstAfter.Cents, 1)} at fret {s.WorstAfter.Fret} at most; root mean square {Written.Millimetres(s.RmsAfter, 1)}", 0.9 * Letters);
    }
}
