using Solidbody.App.Terminal;
using Solidbody.App.Tests.WholeJob;
using Solidbody.Packet;
using Solidbody.Programs;

namespace Solidbody.App.Tests.Commands;

/// <summary><c>make</c> and <c>prove</c> on a real packet: what is written, what is left alone, what is caught.</summary>
public sealed class PacketCommandTests : IClassFixture<PacketCommandTests.MadePacket>, IDisposable
{
    private static readonly string Six = Job.ExamplePath("school-six.toml"), Shop = Job.ExamplePath("school-shop.toml");
    private readonly MadePacket made;
    private readonly Scratch scratch = new();

    public PacketCommandTests(MadePacket made) => this.made = made;

    public void Dispose() => scratch.Dispose();

    /// <summary>A packet made from the command line, for the tests to copy from.</summary>
    public sealed class MadePacket : IAsyncLifetime
    {
        private readonly Scratch scratch = new();
        internal Terminal Said { get; private set; } = new(-1, "", "");
        public string Folder => scratch.Path("six");

        public async ValueTask InitializeAsync() => Said = await Terminal.Type("make", Six, "--shop", Shop, "--out", Folder);

        public ValueTask DisposeAsync()
        {
            scratch.Dispose();
            return ValueTask.CompletedTask;
        }
    }

    [Fact]
    public void Make_writes_a_whole_packet_and_tells_what_it_made()
    {
        made.Said.Ends(ExitCode.Good);
        Assert.Empty(made.Said.Errors);
        var files = Directory.EnumerateFiles(made.Folder, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(made.Folder, f)).ToList();
        Assert.Equal(5, files.Count(f => f.EndsWith(".pdf", StringComparison.Ordinal)));
        Assert.Superset(new HashSet<string> { PacketFolder.Index, PacketFolder.Sums, PacketNames.Instrument, PacketNames.Shop, PacketNames.Picture("body"), PacketNames.Picture("neck") }, files.ToHashSet());
        Assert.All((string[])["Programs made", "Proved from the programs' text", "Body, front up", "fretboard", "Together", "The packet is in"], word => Assert.Contains(word, made.Said.Output, StringComparison.Ordinal));
        // Nothing is left beside it.
        Assert.Equal([made.Folder], Directory.GetFileSystemEntries(Path.GetDirectoryName(made.Folder)!));
    }

    [Fact, Trait("speed", "slow")]
    public async Task Made_again_it_takes_the_older_packet_s_place()
    {
        var folder = scratch.Copy(made.Folder, "six");
        var before = File.GetLastWriteTimeUtc(Path.Combine(folder, PacketFolder.Index));
        (await Terminal.Type("make", Six, "--shop", Shop, "--out", folder)).Ends(ExitCode.Good);
        Assert.NotEqual(before, File.GetLastWriteTimeUtc(Path.Combine(folder, PacketFolder.Index)));
        Assert.Equal([folder], Directory.GetFileSystemEntries(scratch.Root));
    }

    [Fact]
    public async Task A_folder_with_something_else_in_it_is_left_as_it_is()
    {
        scratch.Write("letter.txt", "Dear band");
        var before = scratch.Everything();
        var said = (await Terminal.Type("make", Six, "--shop", Shop, "--out", scratch.Root)).Ends(ExitCode.NotWritten);
        Assert.Contains("not a packet", said.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("Programs made", said.Output, StringComparison.Ordinal);   // told before the work, not after it
        (await Terminal.Type("make", Six, "--shop", Shop, "--out", scratch.Path("letter.txt"))).Ends(ExitCode.NotWritten);
        Assert.Equal(before, scratch.Everything());
    }

    [Fact]
    public async Task A_packet_edited_by_hand_is_not_written_over()
    {
        var folder = scratch.Copy(made.Folder, "six");
        File.AppendAllText(Path.Combine(folder, PacketNames.Instrument), "# my note\n");
        var before = scratch.Everything();
        Assert.Contains("was changed", (await Terminal.Type("make", Six, "--shop", Shop, "--out", folder)).Ends(ExitCode.NotWritten).Output, StringComparison.Ordinal);
        Assert.Equal(before, scratch.Everything());
    }

    [Fact]
    public async Task An_instrument_that_cannot_be_built_is_refused_and_nothing_is_written()
    {
        var file = scratch.Write("deep.toml", File.ReadAllText(Six).Replace("depth = \"5/8 in\"", "depth = 30", StringComparison.Ordinal));
        var before = scratch.Everything();
        var said = (await Terminal.Type("make", file, "--shop", Shop, "--out", scratch.Path("out"))).Ends(ExitCode.Stopped);
        Assert.Contains("Refused: ", said.Output, StringComparison.Ordinal);
        Assert.Equal(before, scratch.Everything());
    }

    [Fact]
    public async Task Prove_passes_the_packet_and_leaves_it_as_it_is()
    {
        var folder = scratch.Copy(made.Folder, "six");
        var before = scratch.Everything();
        var said = (await Terminal.Type("prove", folder)).Ends(ExitCode.Good);
        Assert.Contains("Proved: the programs as they now are cut the parts.", said.Output, StringComparison.Ordinal);
        Assert.Equal(before, scratch.Everything());
    }

    [Fact]
    public async Task Prove_names_program_and_line_of_an_edit_two_tenths_too_deep()
    {
        var folder = scratch.Copy(made.Folder, "six");
        var index = PacketFile.Read(File.ReadAllText(Path.Combine(folder, PacketFolder.Index)), "packet.json").Good;
        var entry = index.SetUps.Single(s => s.Name == "body-front").Programs.First(p => p.Operations.Any(o => o.Name.Contains("neck pocket", StringComparison.Ordinal)));
        var path = Path.Combine(folder, entry.File);
        var edit = ProgramEdit.Deeper(File.ReadAllText(path), "neck pocket, floor", 0.2);
        File.WriteAllText(path, edit.Text);
        var said = (await Terminal.Type("prove", folder)).Ends(ExitCode.Stopped);
        Assert.Contains("PROOF-01", said.Output, StringComparison.Ordinal);
        Assert.Contains(Enumerable.Range(edit.Line, edit.Last - edit.Line + 1), line => said.Output.Contains($"{entry.File} line {line}\n", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_truncated_program_is_not_proved_and_its_end_is_missed()
    {
        var folder = scratch.Copy(made.Folder, "six");
        var path = Directory.GetFiles(Path.Combine(folder, "programs")).Order(StringComparer.Ordinal).First();
        var text = File.ReadAllText(path);
        File.WriteAllText(path, text[..(text.Length / 2)]);
        var said = (await Terminal.Type("prove", folder)).Ends(ExitCode.Stopped);
        Assert.Contains("PROOF-14", said.Output, StringComparison.Ordinal);
        Assert.Contains(Path.GetFileName(path), said.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("not json", ExitCode.Mistaken)]
    [InlineData("{}", ExitCode.Mistaken)]
    [InlineData("", ExitCode.Mistaken)]
    [InlineData(null, ExitCode.NotWritten)]
    public async Task An_index_that_is_none_is_told_with_its_place(string? index, int exit)
    {
        var path = scratch.Path(PacketFolder.Index);
        if (index is not null) File.WriteAllText(path, index);
        var said = (await Terminal.Type("prove", scratch.Root)).Ends(exit);
        Assert.Contains(path, said.Output + said.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Stopped_by_the_person_nothing_is_left_behind()
    {
        using var stop = new CancellationTokenSource();
        var running = Terminal.Type(["make", Six, "--shop", Shop, "--out", scratch.Path("six")], null, stop.Token);
        await Task.Delay(TimeSpan.FromSeconds(0.5), TestContext.Current.CancellationToken);
        await stop.CancelAsync();
        Assert.Contains("Stopped. Nothing was written.", (await running).Ends(ExitCode.Cancelled).Errors, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(scratch.Root));
    }
}
