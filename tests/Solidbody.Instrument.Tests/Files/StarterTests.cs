using Solidbody.Instrument.Files;

namespace Solidbody.Instrument.Tests.Files;

public class StarterTests
{
    const string Minimal = "units = \"mm\"\nname = \"My first instrument\"\nscale = 635\n";

    /// <summary>The same file with every default in force.</summary>
    static string Uncommented(string starter) => starter.Replace("#: ", "", StringComparison.Ordinal);

    [Theory, InlineData(true), InlineData(false)]
    public void The_starter_is_the_defaults(bool inches)
    {
        var result = InstrumentFile.Read(InstrumentFile.Starter(inches), "starter.toml");

        Assert.Empty(result.Mistakes);
        Assert.Equal(Records.Text(InstrumentFile.Read(Minimal, "m").Good with { Unit = result.Good.Unit }), Records.Text(result.Good));
    }

    [Fact]
    public void With_every_remark_in_force_it_is_still_the_defaults()
    {
        var result = InstrumentFile.Read(Uncommented(InstrumentFile.Starter(inches: false)), "starter.toml");

        Assert.Empty(result.Mistakes);
        Assert.Equal(Records.Rounded(InstrumentFile.Read(Minimal, "m").Good), Records.Rounded(result.Good));
    }

    [Fact] // Inches are shown to 0.0001 in: what is off a rule mark comes back within 0.00127 mm.
    public void The_inch_starter_with_every_remark_in_force_reads_without_a_mistake() =>
        Assert.Empty(InstrumentFile.Read(Uncommented(InstrumentFile.Starter(inches: true)), "starter.toml").Mistakes);
}
