using System.Security.Cryptography;
using Solidbody.App.Terminal;
using Solidbody.App.Tests.WholeJob;
using Solidbody.Packet;
using Solidbody.Programs;

namespace Solidbody.App.Tests.Commands;

/// <summary>An instrument with a drawing beside it: found there and nowhere else, carried in the packet, made again from it.</summary>
public sealed class DrawingCommandTests : IDisposable
{
    private static readonly string Drawn = Job.ExamplePath("school-drawn.toml"), Shop = Job.ExamplePath("school-shop.toml");
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact, Trait("speed", "slow")]
    public async Task The_packet_carries_the_drawing_and_proves_and_checks_from_it_alone()
    {
        var folder = scratch.Path("drawn");
        (await Terminal.Type("make", Drawn, "--shop", Shop, "--out", folder)).Ends(ExitCode.Good);
        var (bytes, carried) = (await Bytes(Job.ExamplePath("school-drawn.svg")), await Bytes(Path.Combine(folder, "school-drawn.svg")));
        Assert.Equal(bytes, carried);
        var index = PacketFile.Read(await File.ReadAllTextAsync(Path.Combine(folder, PacketFolder.Index), Cancel), PacketFolder.Index).Good;
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(bytes)), index.Sources["school-drawn.svg"]);
        (await Terminal.Type("prove", folder)).Ends(ExitCode.Good);
        (await Terminal.Type("check", Path.Combine(folder, PacketNames.Instrument), "--shop", Path.Combine(folder, PacketNames.Shop))).Ends(ExitCode.Good);
        // Without its drawing the packet no longer tells what it is.
        File.Delete(Path.Combine(folder, "school-drawn.svg"));
        Assert.Contains("There is no file", (await Terminal.Type("prove", folder)).Ends(ExitCode.Mistaken).Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_drawing_is_found_beside_its_file_and_nowhere_else()
    {
        Directory.CreateDirectory(scratch.Path("inner"));
        var file = scratch.Write("inner/a.toml", await File.ReadAllTextAsync(Drawn, Cancel));
        File.Copy(Job.ExamplePath("school-drawn.svg"), scratch.Path("school-drawn.svg"));
        Assert.Contains("There is no file", (await Terminal.Type("check", file, "--shop", Shop)).Ends(ExitCode.Mistaken).Output, StringComparison.Ordinal);
        File.CreateSymbolicLink(scratch.Path("inner/school-drawn.svg"), scratch.Path("school-drawn.svg"));
        Assert.Contains("a link to another file", (await Terminal.Type("check", file, "--shop", Shop)).Ends(ExitCode.Mistaken).Output, StringComparison.Ordinal);
        File.Delete(scratch.Path("inner/school-drawn.svg"));
        File.Copy(scratch.Path("school-drawn.svg"), scratch.Path("inner/school-drawn.svg"));
        (await Terminal.Type("check", file, "--shop", Shop)).Ends(ExitCode.Good);
    }

    [Fact]
    public async Task A_drawing_without_end_is_not_even_read()
    {
        var file = scratch.Write("a.toml", await File.ReadAllTextAsync(Drawn, Cancel));
        await using (var huge = File.Create(scratch.Path("school-drawn.svg"))) huge.SetLength(2L << 30);
        Assert.Contains("larger than 4194304 bytes", (await Terminal.Type("check", file, "--shop", Shop)).Ends(ExitCode.Mistaken).Output, StringComparison.Ordinal);
    }

    private static Task<byte[]> Bytes(string path) => File.ReadAllBytesAsync(path, Cancel);
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;
}
