using CsCheck;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument.Files;
using Solidbody.Instrument.Necks;

namespace Solidbody.Instrument.Tests.Necks;

/// <summary>Tuners in any numbers on either side.</summary>
public class TunerSplitTests
{
    // 4 to 9 strings, any of them on the bass side, guitars and basses: what the defaults make of it.
    private static readonly Gen<InstrumentDefinition> Any =
        from strings in Gen.Int[4, 9]
        from bass in Gen.Int[0, strings]
        from scale in Gen.Int[600, 900]
        select InstrumentFile.Read($"units = \"mm\"\nname = \"any\"\nscale = {scale}\nstrings = {strings}\n[headstock]\ntuners_bass = {bass}\n", "any").Good;

    [Fact]
    public void The_outline_never_crosses_itself() => Any.Sample(d => !Crosses(NeckMaker.Headstock(d).Curve.Flatten(0.05)), iter: 300);

    [Fact]
    public void Every_split_is_drawn_or_its_measure_named() => Any.Sample(d =>
    {
        var design = Designer.Design(d);
        return design.Parts.Length > 0 || design.Findings.Any(f => f.Severity == Severity.Stops && f.Code.StartsWith("HEAD", StringComparison.Ordinal)) || design.Findings.Any(f => f.Code.StartsWith("OUTLINE", StringComparison.Ordinal));
    }, iter: 25);

    /// <summary>The scalar twin of the program's own test: every chord against every other that is not its neighbour.</summary>
    private static bool Crosses(IReadOnlyList<Point2> path)
    {
        static double Turn(Point2 a, Point2 b, Point2 c) => (b - a).Cross(c - a);
        for (var i = 0; i + 1 < path.Count; i++)
            for (var j = i + 2; j + 1 < path.Count; j++)
                if (Turn(path[i], path[i + 1], path[j]) * Turn(path[i], path[i + 1], path[j + 1]) < 0 && Turn(path[j], path[j + 1], path[i]) * Turn(path[j], path[j + 1], path[i + 1]) < 0) return true;
        return false;
    }
}
