using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Instrument.Files;

namespace Solidbody.Instrument.Tests.Files;

/// <summary>What the file's defaults make of the scales and numbers of strings that are built: no stops, whatever a person leaves out.</summary>
public class DefaultsTests
{
    public static TheoryData<double, int> Sizes => [.. from scale in (double[])[558.8, 628.65, 647.7, 685.8, 762, 863.6, 914.4] from strings in (int[])[4, 5, 6, 7, 8] select (scale, strings)];

    [Theory, MemberData(nameof(Sizes))]
    public void A_default_instrument_is_sound(double scale, int strings) => Assert.Empty(Stops(scale, strings, ""));

    [Theory, MemberData(nameof(Sizes))]
    public void A_default_wire_way_meets_nothing(double scale, int strings) => Assert.DoesNotContain(Findings(scale, strings, ""), f => f.Code.StartsWith("WIRE", StringComparison.Ordinal));

    [Theory]
    [InlineData("body.outline.family = \"symmetric\""), InlineData("body.outline.family = \"single\""), InlineData("body.outline.family = \"travel\"")]
    [InlineData("neck.profile = \"D\""), InlineData("neck.profile = \"U\""), InlineData("neck.profile = \"V\""), InlineData("neck.profile = \"asymmetric\"")]
    [InlineData("hand = \"left\""), InlineData("body.pieces = 1"), InlineData("body.controls.fitted = false"), InlineData("body.jack.fitted = false"), InlineData("body.pickups = []")]
    [InlineData("fretboard.dots.frets = []"), InlineData("body.edges.front_radius = 0\nbody.edges.back_radius = 0"), InlineData("headstock.tuners_treble = 0\nheadstock.tuners_bass = 6")]
    public void So_is_one_with_a_choice_made(string choice) => Assert.Empty(Stops(635, 6, choice));

    private static IEnumerable<string> Stops(double scale, int strings, string more) => Findings(scale, strings, more).Where(f => f.Severity == Severity.Stops).Select(f => f.ToString());

    private static ImmutableArray<Finding> Findings(double scale, int strings, string more) =>
        Designer.Design(InstrumentFile.Read(FormattableString.Invariant($"units = \"mm\"\nname = \"any\"\nscale = {scale}\nstrings = {strings}\n{more}\n"), "any").Good).Findings;
}
