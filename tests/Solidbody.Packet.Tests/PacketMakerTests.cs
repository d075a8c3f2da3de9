using System.Text;
using Solidbody.Proof;

namespace Solidbody.Packet.Tests;

public class PacketMakerTests
{
    [Fact]
    public void Whatever_is_no_sheet_is_the_same_bytes_each_time()
    {
        var input = new PacketInput
        {
            Design = Examples.Six,
            ShopName = "school workshop",
            InstrumentText = "a",
            ShopText = "b",
            SetUps = [Scenes.Body().SetUp],
            Texts = new Dictionary<string, string> { ["programs/01-cavities.nc"] = "%\n%\n" },
            Proof = new ProofResult([], [], []),
            Findings = [],
        };
        var (first, second) = (PacketMaker.Make(input, null, TestContext.Current.CancellationToken), PacketMaker.Make(input, null, TestContext.Current.CancellationToken));
        Assert.Equal(
            ["instrument.toml", "packet.json", "pictures/body.svg", "pictures/fretboard.svg", "pictures/intonation.svg", "pictures/neck.svg", "programs/01-cavities.nc", "sheets/01-body-front.pdf", "shop.toml"],
            first.Keys);
        Assert.All(first.Where(f => !f.Key.EndsWith(".pdf", StringComparison.Ordinal)), f => Assert.Equal(f.Value, second[f.Key]));
        Assert.Equal("a", Encoding.UTF8.GetString(first["instrument.toml"]));
    }
}
