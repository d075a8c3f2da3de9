namespace Solidbody.App.Tests.WholeJob;

/// <summary>The example for a controller with a changer, lengths in a table, drilling cycles, chip air, and room for short programs only.</summary>
public sealed class ControllerTests
{
    private const int Longest = 60;

    private static readonly Lazy<Job> Made = new(() => Job.Of(Job.ExampleText("school-six.toml"), Job.ExampleText("school-shop.toml")
        .Replace("tool_changer = false", $"tool_changer = true\nlength_offsets = true\ndrilling_cycles = true\nchip_air = \"M7\"\nterse = true\nlongest_program = {Longest}", StringComparison.Ordinal), Job.Coarse));

    [Fact]
    public void It_is_proved()
    {
        Assert.True(!Made.Value.Stopping.Any(), string.Join("\n", Made.Value.Stopping.Select(f => $"{f.Code} {f.Place}: {f.Figure}")));
        Assert.All(Made.Value.Proof.Parts.SelectMany(p => p.Measures), m => Assert.True(m.IsWithin, m.Name));
    }

    [Fact]
    public void Every_program_fits_and_says_the_words_of_its_controller() => Assert.All(Made.Value.Made.Texts.Values, text =>
    {
        Assert.InRange(text.Length, 1, 1000 * Longest);
        Assert.Contains("M6\nG43H", text, StringComparison.Ordinal);
        Assert.Contains("\nM7\n", text, StringComparison.Ordinal);
        Assert.Contains("\nM9\nM5\nM2\n", text, StringComparison.Ordinal);
    });

    [Fact]
    public void Holes_are_cycles_and_the_carve_is_divided()
    {
        Assert.Contains("G98\nG83X", Made.Value.Made.Texts.Single(t => t.Key.Contains("body-front-d3", StringComparison.Ordinal)).Value, StringComparison.Ordinal);
        var parts = Made.Value.Made.SetUps.Single(s => s.Name == "neck-back").Programs.Where(p => p.Name.Contains("-of-", StringComparison.Ordinal)).ToArray();
        Assert.True(parts.Length > 3);
        Assert.All(parts, p => Assert.NotEmpty(p.Operations));
    }
}
