using Solidbody.App.Terminal;
using Solidbody.App.Terminal.Tables;
using Solidbody.App.Tests.WholeJob;

namespace Solidbody.App.Tests.Commands;

public sealed class FiguresCommandTests : IDisposable
{
    private static readonly string Six = Job.ExamplePath("school-six.toml");
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public async Task Every_table_is_shown_and_fits_on_a_narrow_terminal()
    {
        var said = (await Terminal.Type("figures", Six)).Ends(ExitCode.Good);
        Assert.All(FigureTable.All, t => Assert.Contains($"{t.Title} ({t.Name})", said.Output, StringComparison.Ordinal));
        Assert.All(said.Output.Split('\n'), line => Assert.InRange(line.TrimEnd().Length, 0, 84));
        Assert.DoesNotContain("NaN", said.Output, StringComparison.Ordinal);
    }

    public static TheoryData<string> Names => [.. FigureTable.All.Select(t => t.Name)];

    [Theory, MemberData(nameof(Names))]
    public async Task One_table_is_shown_alone_in_mm_or_inches(string name)
    {
        foreach (var unit in (string[])["mm", "in"])
        {
            var said = (await Terminal.Type("figures", scratch.Write("a.toml", $"units = \"{unit}\"\nname = \"a\"\nscale = \"25 in\"\n"), "--only", name)).Ends(ExitCode.Good);
            Assert.Single(FigureTable.All, t => said.Output.Contains($"({t.Name})", StringComparison.Ordinal));
            Assert.DoesNotContain(unit == "mm" ? ", in" : ", mm", said.Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_table_that_is_not_there_is_answered_with_those_that_are()
    {
        var said = (await Terminal.Type("figures", Six, "--only", "walz")).Ends(ExitCode.Mistaken);
        Assert.Contains("There is no table walz. Try one of tension, ", said.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_mistake_in_the_file_is_told_with_its_place() =>
        Assert.Contains("(1,9)", (await Terminal.Type("figures", scratch.Write("bad.toml", "units = \"feet\"\n"))).Ends(ExitCode.Mistaken).Output, StringComparison.Ordinal);

    [Theory] // 1 lbf = 4.4482216152605 N, 1 lb = 0.45359237 kg, 1 in = 25.4 mm: exact by definition.
    [InlineData(false, "25.40", "1.000", "kg")]
    [InlineData(true, "1.000", "2.205", "lb")]
    public void Figures_are_said_in_the_files_unit(bool inches, string length, string mass, string unit)
    {
        var words = new FigureWords(inches ? Geometry.LengthUnit.Inch : Geometry.LengthUnit.Millimetre);
        Assert.Equal((length, mass, unit), (words.Length(25.4), words.Mass(1), words.MassUnitName));
        Assert.Equal(("1.0", "-", "0.0"), (FigureWords.Pounds(4.4482216152605), FigureWords.Newtons(null), FigureWords.Number(-0.01, 1)));
    }
}
