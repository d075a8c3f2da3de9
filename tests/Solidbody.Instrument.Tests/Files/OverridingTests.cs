using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Instrument.Files;

namespace Solidbody.Instrument.Tests.Files;

/// <summary>Overrides: what the file may say, and which finding each means.</summary>
public class OverridingTests
{
    const string Start = "units = \"mm\"\nname = \"a\"\nscale = 635\n[[override]]\n";

    static readonly ImmutableArray<Finding> Said = [Stop("WALL-02", "bridge pickup"), Stop("WALL-02", "neck pickup"), Stop("SCREW-01", "heel"), Stop("EDGE-01", "front") with { Severity = Severity.Warns }];

    static Finding Stop(string code, string place) => new(code, Severity.Stops, place, "1 mm", "2 mm", "common practice, no source", "more") { Title = "too thin" };

    [Fact]
    public void It_reads_code_place_and_reason() =>
        Assert.Equal([new Override("WALL-02", "neck pickup", "the back is maple")],
            InstrumentFile.Read(Start + "finding = \"WALL-02\"\nat = \"neck pickup\"\nreason = \"the back is maple\"\n", "a.toml").Good.Overrides);

    [Theory]
    [InlineData("finding = \"walls\"\nreason = \"the back is maple\"", "5,11: \"walls\" is no finding's code")]
    [InlineData("finding = \"PROOF-07\"\nreason = \"the back is maple\"", "5,11: PROOF-07 is the proof's")]
    [InlineData("finding = \"WALL-02\"\nreason = \"ok\"", "6,10: it says too little")]
    [InlineData("finding = \"WALL-02\"", "4,1: `reason` of [[override]] 1 is missing")]
    [InlineData("finding = \"WALL-02\"\nreason = \"the back is maple\"\nplace = \"x\"", "7,1: unknown key `place`")]
    public void What_is_no_override_is_refused_with_its_place(string lines, string wrong)
    {
        var mistake = Assert.Single(InstrumentFile.Read(Start + lines + "\n", "a.toml").Mistakes);
        Assert.StartsWith(wrong, $"{mistake.Line},{mistake.Column}: {mistake.Wrong}", StringComparison.Ordinal);
    }

    [Fact]
    public void One_finding_is_overridden_and_no_other()
    {
        var after = Overriding.Of(Said, [new("WALL-02", "neck pickup", "the back is maple"), new("SCREW-01", null, "longer inserts are glued in")]);
        Assert.Equal(4, after.Length);
        Assert.Equal([true, false, false, false], after.Select(f => f.KeepsProgramsBack));
        Assert.Equal([null, "the back is maple", "longer inserts are glued in", null], after.Select(f => f.OverriddenBecause));
    }

    [Fact]
    public void One_that_means_two_overrides_neither_and_says_their_places()
    {
        var after = Overriding.Of(Said, [new("WALL-02", null, "the back is maple")]);
        Assert.Equal(3, after.Count(f => f.KeepsProgramsBack));
        Assert.Contains("\"bridge pickup\"; \"neck pickup\"", Assert.Single(after, f => f.Code == "OVERRIDE-02").Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("WALL-02", "control room", "at = \"bridge pickup\"; at = \"neck pickup\"")]
    [InlineData("WALL-03", null, "WALL-02, SCREW-01")]
    [InlineData("EDGE-01", null, "WALL-02, SCREW-01")]
    public void One_that_means_none_says_what_there_is(string code, string? place, string allowed)
    {
        var after = Overriding.Of(Said, [new(code, place, "the back is maple")]);
        Assert.Equal(3, after.Count(f => f.KeepsProgramsBack));
        Assert.Equal(allowed, Assert.Single(after, f => f.Code == "OVERRIDE-01").Limit);
    }

    [Fact]
    public void Without_overrides_nothing_changes() => Assert.Equal(Said, Overriding.Of(Said, []));
}
