using System.Text;
using NJsonSchema;
using Solidbody.Packet;
using Solidbody.Programs;

namespace Solidbody.App.Tests.WholeJob;

/// <summary>The example, from its two files to its proof.</summary>
public sealed class ExampleTests
{
    private static Job Example => Job.Example;

    [Fact]
    public void Nothing_stops_the_example() => Assert.Empty(Example.Stopping);

    [Fact]
    public void Every_part_is_cut_in_its_set_ups() => Assert.Equal(
        ["body-front", "body-back", "neck-front", "neck-back", "fretboard"], Example.Made.SetUps.Select(s => s.Name));

    [Theory] // Gouge: stated tolerance of the tool. Leftover: the same, and on carved and surfaced faces the ridge of 0.02 mm that the plan leaves.
    [InlineData("body", 0.05)]
    [InlineData("neck", 0.07)]
    [InlineData("fretboard", 0.07)]
    public void The_cut_wood_is_the_part(string part, double mostLeft)
    {
        var result = Example.Proof.Parts.Single(p => p.Part == part);
        Assert.InRange(result.DeepestGouge, 0, 0.05);
        Assert.InRange(result.MostLeftover, 0, mostLeft);
    }

    [Fact]
    public void Every_measure_is_within_its_tolerance() =>
        Assert.All(Example.Proof.Parts.SelectMany(p => p.Measures), m =>
        {
            Assert.InRange(m.Tolerance, 0.001, 0.1);
            Assert.InRange(m.Measured, m.Expected - m.Tolerance, m.Expected + m.Tolerance);
        });

    // From the figures in examples/school-six.toml by hand: the board tapers from 43 mm at the nut to 56 mm at its end, 6 mm beyond fret 22
    // (635 · (1 − 2^(−22/12)) = 456.809): width at x = 43 + 13 x / 462.809. The heel is measured at x = 462.809 − 12 − 51/2 = 425.309.
    [Theory]
    [InlineData("neck", "neck thickness at fret 1, without board", 20.5 - 6.35)]
    [InlineData("neck", "neck thickness at fret 12, without board", 22.5 - 6.35)]
    [InlineData("neck", "neck width at the nut", 43 + 13 * 2 / 462.809)]
    [InlineData("neck", "heel width between the screws", 43 + 13 * 425.309 / 462.809)]
    [InlineData("neck", "heel thickness", 19.05)]
    [InlineData("body", "neck pocket depth", 15.875)]
    [InlineData("body", "neck pocket width between the screws", 43 + 13 * 425.309 / 462.809 + 2 * 0.1)]
    [InlineData("body", "neck pickup cavity from the nut", 494)]
    [InlineData("body", "neck pickup cavity along the strings", 40)]
    [InlineData("body", "neck pickup cavity across the strings", 72)]
    [InlineData("body", "neck pickup cavity depth", 18)]
    [InlineData("body", "bridge pickup cavity from the nut", 597)]
    public void What_the_file_says_is_measured_on_the_wood(string part, string name, double expected)
    {
        var measure = Example.Proof.Parts.Single(p => p.Part == part).Measures.Single(m => m.Name == name);
        Assert.Equal(expected, measure.Expected, 0.002);
        Assert.Equal(expected, measure.Measured, 0.1);
    }

    // Oracle: python3 -c "print([round(635*(1-2**(-n/12)),4) for n in range(1,23)])"; formula: twelve-tone equal temperament,
    // M. P. Varieschi and C. M. Gower, "Intonation and compensation of fretted string instruments", section II.A, from memory.
    private static readonly double[] FretsOf25Inches =
    [
        35.6398, 69.2793, 101.0308, 131.0002, 159.2875, 185.9872, 211.1883, 234.9751, 257.4267, 278.6183, 298.6205,
        317.5000, 335.3199, 352.1397, 368.0154, 383.0001, 397.1438, 410.4936, 423.0942, 434.9875, 446.2134, 456.8091,
    ];

    [Fact]
    public void Fret_slots_are_cut_where_the_table_says()
    {
        var measures = Example.Proof.Parts.Single(p => p.Part == "fretboard").Measures;
        for (var fret = 1; fret <= FretsOf25Inches.Length; fret++)
            Assert.Equal(FretsOf25Inches[fret - 1], measures.Single(m => m.Name == $"fret {fret} from the nut").Measured, 0.1);
    }

    [Fact]
    public void Holes_are_measured_in_place_and_diameter()
    {
        foreach (var hole in Example.Worked.Design.Part("neck").Holes.Where(h => h.Name.StartsWith("tuner", StringComparison.Ordinal)))
        {
            var own = Example.Proof.Parts.Single(p => p.Part == "neck").Measures.Where(m => m.Name.Contains(hole.Name, StringComparison.Ordinal)).ToList();
            Assert.Equal(3, own.Count);
            Assert.Equal(hole.Centre.X, own.Single(m => m.Name.EndsWith("from the nut", StringComparison.Ordinal)).Measured, 0.1);
            Assert.Equal(hole.Centre.Y, own.Single(m => m.Name.EndsWith("from the centre line", StringComparison.Ordinal)).Measured, 0.1);
            Assert.Equal(10, own.Single(m => m.Name.StartsWith("diameter", StringComparison.Ordinal)).Measured, 0.1);
        }
    }

    [Fact]
    public void Every_program_stays_inside_the_travel_and_out_of_the_bed() => Programs.StayInside(Example);

    [Fact]
    public async Task The_index_fits_its_schema_and_comes_back_as_it_went()
    {
        var text = Encoding.UTF8.GetString(Example.Packet()[PacketFolder.Index]);
        var schema = await JsonSchema.FromFileAsync(Path.Combine(Repository.Root, "docs", "packet.schema.json"), TestContext.Current.CancellationToken);
        Assert.Empty(schema.Validate(text));
        var index = PacketFile.Read(text, "packet.json").Good;
        Assert.Equal(text, PacketFile.Write(index));
        Assert.Equal(Example.Made.SetUps.Select(s => s.Name), index.SetUps.Select(s => s.Name));
        foreach (var (made, read) in Example.Made.SetUps.Zip(index.SetUps))
        {
            Assert.Equal(made.Placement.ToMatrix().Length, read.Placement.ToMatrix().Zip(made.Placement.ToMatrix()).Count(p => Math.Abs(p.First - p.Second) < 1e-6));
            Assert.Equal(made.Programs.Select(p => p.Cutter), read.Programs.Select(p => p.Cutter));
        }
    }

    [Fact]
    public void The_packet_proves_itself_from_its_index_alone()
    {
        var packet = Example.Packet();
        var index = PacketFile.Read(Encoding.UTF8.GetString(packet[PacketFolder.Index]), "packet.json").Good;
        var texts = index.SetUps.SelectMany(s => s.Programs).ToDictionary(p => p.File, p => Encoding.UTF8.GetString(packet[p.File]));
        var again = MainJob.Prove(Example.Worked.Design, Example.Shop, index.SetUps, texts, null, TestContext.Current.CancellationToken);
        Assert.Equal(Example.Proof.Findings.AsEnumerable(), again.Findings.AsEnumerable());
        Assert.Equal(Example.Proof.Parts.Select(p => p.DeepestGouge), again.Parts.Select(p => p.DeepestGouge));
    }

    [Fact, Trait("speed", "slow")] // Sheets carry font tags that the PDF library draws by lot; everything else is the same to the byte.
    public void Made_twice_it_is_the_same_to_the_byte()
    {
        var (one, two) = (Example.Packet(), Job.Of(Example.Files.InstrumentText, Example.Files.ShopText).Packet());
        Assert.Equal(one.Keys, two.Keys);
        foreach (var (name, bytes) in one.Where(f => !f.Key.EndsWith(".pdf", StringComparison.Ordinal))) Assert.True(bytes.AsSpan().SequenceEqual(two[name]), name);
    }
}
