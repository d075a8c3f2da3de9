using System.Globalization;
using System.Text;

namespace Solidbody.Proof.Tests;

/// <summary>Writes program text plainly, so that a proof's tests lean on no planner.</summary>
internal sealed class ProgramText
{
    private readonly StringBuilder text = new();
    private readonly double clearance;

    public ProgramText(double clearance)
    {
        this.clearance = clearance;
        Line("G17 G21 G90 G94");
        Line(Words("G0", ("Z", clearance)));
        Line("M3 S18000");
    }

    /// <summary>Travels at clearance over a point.</summary>
    public ProgramText Over(double x, double y) => Line(Words("G0", ("Z", clearance))).Line(Words("G0", ("X", x), ("Y", y)));
    public ProgramText Rapid(double z) => Line(Words("G0", ("Z", z)));
    public ProgramText To(double x, double y, double z) => Line(Words("G1", ("X", x), ("Y", y), ("Z", z)) + " F1200");
    public ProgramText Down(double z) => Line(Words("G1", ("Z", z)) + " F300");
    /// <summary>A counter-clockwise arc or helix.</summary>
    public ProgramText Arc(double x, double y, double z, double i, double j) => Line(Words("G3", ("X", x), ("Y", y), ("Z", z), ("I", i), ("J", j)) + " F1200");
    public ProgramText Line(string line) { text.Append(line).Append('\n'); return this; }
    public string End() => Line(Words("G0", ("Z", clearance))).Line("M5").Line("M2").text.ToString();

    private static string Words(string word, params (string Letter, double Value)[] values) =>
        word + string.Concat(values.Select(v => string.Create(CultureInfo.InvariantCulture, $" {v.Letter}{Math.Round(v.Value, 3):0.###}")));
}
