namespace Solidbody.App.Tests.WholeJob;

/// <summary>The example cut out of its blanks the other ways a shop may ask for.</summary>
public sealed class OutlineHabitsTests
{
    private static Job Of(string outline, string example = "school-six.toml") => Job.Of(Job.ExampleText(example), Job.ExampleText("school-shop.toml") + "\n[outline]\n" + outline, Job.Coarse);

    [Fact]
    public void Divided_with_the_grain_and_on_thicker_tabs_it_is_proved()
    {
        var job = Of("direction = \"with-grain\"\ntab_thickness = 4\ntab_length = 12\n");
        Proved(job);
        Assert.DoesNotContain(job.Worked.Findings, f => f.Code == "GRAIN-01");
        Assert.All(job.Made.SetUps.SelectMany(s => s.Tabs), t => Assert.Equal(12, t.Length));
    }

    [Fact]
    public void On_a_skin_it_is_proved_and_the_sheet_says_how_it_comes_free()
    {
        var job = Of("hold = \"skin\"\nskin = 0.6\n");
        Proved(job);
        Assert.Empty(job.Made.SetUps.SelectMany(s => s.Tabs));
        Assert.Equal(3, job.Made.SetUps.Count(s => s.Skin is not null && s.After.Any(a => a.Contains("skin", StringComparison.Ordinal))));
        // A skin that is said to be there, and is not, must not pass.
        var without = Of("hold = \"skin\"\nskin = 1.5\n");
        var told = job.Made.SetUps.Where(s => s.Part == "fretboard").Select(s => s with { Skin = new(s.Skin!.Z1, s.Skin.Z1 + 1) });
        Assert.Contains(job.ProveAgain("fretboard", s => told.Single(t => t.Name == s.Name)).Findings, f => f.Code == "PROOF-26");
        Proved(without);
    }

    [Fact] // The bound front lies down, its ledge 6 mm deep, when the outline is cut.
    public void On_a_skin_over_a_bindings_ledge_it_is_proved()
    {
        var job = Of("hold = \"skin\"\nskin = 0.6\n", "school-bound.toml");
        Proved(job);
        Assert.Equal(-6.6, job.Made.SetUps.Single(s => s.Part == "body" && s.Skin is not null).Skin!.Z0, 1e-9);
    }

    [Fact]
    public void Climbing_all_round_says_where_it_runs_against_the_grain() =>
        Assert.Contains(Job.Example.Worked.Findings, f => f.Code == "GRAIN-01" && f.Place.StartsWith("body", StringComparison.Ordinal) && f.Figure.Contains(" mm against the grain: x ", StringComparison.Ordinal));

    private static void Proved(Job job)
    {
        Assert.True(!job.Stopping.Any(), string.Join("\n", job.Stopping.Select(f => $"{f.Code} {f.Place}: {f.Figure}")));
        Assert.All(job.Proof.Parts.SelectMany(p => p.Measures), m => Assert.True(m.IsWithin, m.Name));
    }
}
