using Solidbody.App.Terminal;
using Solidbody.App.Tests.WholeJob;

namespace Solidbody.App.Tests.Commands;

/// <summary>A finding that stops, and a person who goes on all the same.</summary>
public sealed class OverrideCommandTests : IDisposable
{
    private static readonly string Shop = Job.ExamplePath("school-shop.toml");
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public async Task Check_stops_until_the_file_says_why_to_go_on()
    {
        Assert.Contains("stops  ROD-01", (await Check(ThinNeck)).Ends(ExitCode.Stopped).Output, StringComparison.Ordinal);
        var said = (await Check(ThinNeck + GoOn("ROD-01"))).Ends(ExitCode.Good);
        Assert.Contains("overridden by you: the band's own trial piece", said.Output, StringComparison.Ordinal);
        Assert.Contains("1 overridden", said.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_override_of_something_else_changes_nothing_and_is_told()
    {
        var said = (await Check(ThinNeck + GoOn("ROD-03"))).Ends(ExitCode.Stopped);
        Assert.Contains("OVERRIDE-01", said.Output, StringComparison.Ordinal);
        Assert.Contains("allowed  ROD-01", said.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_nothing_can_be_drawn_there_is_nothing_to_go_on_with()
    {
        var wide = Six.Replace("family = \"offset\"", "family = \"offset\"\nwaist_width = 150", StringComparison.Ordinal);
        var said = (await Check(wide + GoOn("OUTLINE-01"))).Ends(ExitCode.Stopped);
        Assert.Contains("stops  OUTLINE-01", said.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("overridden", said.Output, StringComparison.Ordinal);
    }

    private static string Six => Job.ExampleText("school-six.toml");
    private static string ThinNeck => Six.Replace("thickness_at_fret_1 = 20.5", "thickness_at_fret_1 = 17", StringComparison.Ordinal);
    private static string GoOn(string code) => $"\n[[override]]\nfinding = \"{code}\"\nreason = \"the band's own trial piece\"\n";
    private Task<Terminal> Check(string instrument) => Terminal.Type("check", scratch.Write("trial.toml", instrument), "--shop", Shop);
}
