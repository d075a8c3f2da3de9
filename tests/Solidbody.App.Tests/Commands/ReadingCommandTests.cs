using Solidbody.App.Terminal;
using Solidbody.App.Tests.WholeJob;

namespace Solidbody.App.Tests.Commands;

/// <summary>What a person reads who types something wrong, or only asks.</summary>
public sealed class ReadingCommandTests : IDisposable
{
    private static readonly string Six = Job.ExamplePath("school-six.toml"), Shop = Job.ExamplePath("school-shop.toml");
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public async Task Check_says_what_there_is_to_say()
    {
        var said = (await Terminal.Type("check", Six, "--shop", Shop)).Ends(ExitCode.Good);
        Assert.StartsWith("School six, in school workshop: ", said.Output.TrimEnd().Split('\n')[^1], StringComparison.Ordinal);
        Assert.Empty(said.Errors);
    }

    [Fact]
    public async Task Three_mistakes_are_told_together_each_with_its_place_and_nothing_is_written()
    {
        var file = scratch.Write("three.toml", "units = \"mm\"\nname = \"three\"\nscale = \"25 ins\"\nstrngs = 6\n\n[neck]\nprofile = \"Q\"\n");
        var before = scratch.Everything();
        foreach (string[] command in (string[][])[["check", file, "--shop", Shop], ["make", file, "--shop", Shop, "--out", scratch.Path("out")]])
        {
            var said = (await Terminal.Type(command)).Ends(ExitCode.Mistaken);
            Assert.Contains($"{file}(3,9)  ", said.Output, StringComparison.Ordinal);
            Assert.Contains($"{file}(4,1)  ", said.Output, StringComparison.Ordinal);
            Assert.Contains($"{file}(7,11)  ", said.Output, StringComparison.Ordinal);
            Assert.Contains("strings", said.Output, StringComparison.Ordinal);
            Assert.Contains("3 mistakes", said.Output, StringComparison.Ordinal);
        }
        Assert.Equal(before, scratch.Everything());
    }

    public static TheoryData<string, string> WrongLines => new()
    {
        { "", "A command is missing." },
        { "carve", "There is no command carve." },
        { "check", "INSTRUMENT is missing." },
        { "check a.toml", "--shop SHOP is missing." },
        { "check a.toml --shop", "--shop needs its SHOP." },
        { "check a.toml --shop b.toml --shop c.toml", "--shop is given 2 times" },
        { "check a.toml b.toml --shop c.toml", "b.toml is one too many" },
        { "make a.toml --shop b.toml", "--out DIR is missing." },
        { "make a.toml --shop b.toml --ou dir", "--out DIR is missing." },
        { "prove", "DIR is missing." },
        { "new", "FILE is missing." },
    };

    [Theory, MemberData(nameof(WrongLines))]
    public async Task A_wrong_command_line_is_answered_with_what_is_missing_and_what_to_type(string words, string answer)
    {
        var said = (await Terminal.Type(words.Split(' ', StringSplitOptions.RemoveEmptyEntries))).Ends(ExitCode.Mistaken);
        Assert.Contains(answer, said.Errors, StringComparison.Ordinal);
        Assert.Contains("Try", said.Errors, StringComparison.Ordinal);
        Assert.Empty(said.Output);
    }

    [Fact]
    public async Task Help_names_every_command()
    {
        var said = (await Terminal.Type("--help")).Ends(ExitCode.Good);
        Assert.All((string[])["make", "check", "figures", "prove", "new"], name => Assert.Contains($"  {name} ", said.Output, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_new_file_checks_without_a_stop(bool inches)
    {
        var file = scratch.Path("mine.toml");
        (await Terminal.Type(inches ? ["new", file, "--inches"] : ["new", file])).Ends(ExitCode.Good);
        (await Terminal.Type("check", file, "--shop", Shop)).Ends(ExitCode.Good);
        Assert.Equal([file], Directory.GetFileSystemEntries(scratch.Root));
    }

    [Fact]
    public async Task New_leaves_what_exists_as_it_is()
    {
        var file = scratch.Write("mine.toml", "mine");
        var folder = Directory.CreateDirectory(scratch.Path("folder")).FullName;
        var before = scratch.Everything();
        Assert.Contains("exists already", (await Terminal.Type("new", file)).Ends(ExitCode.NotWritten).Errors, StringComparison.Ordinal);
        Assert.Contains("exists already", (await Terminal.Type("new", folder)).Ends(ExitCode.NotWritten).Errors, StringComparison.Ordinal);
        (await Terminal.Type("new", scratch.Path("nowhere/mine.toml"))).Ends(ExitCode.NotWritten);
        Assert.Equal(before, scratch.Everything());
    }

    [Fact]
    public async Task Files_that_are_none_are_refused_in_a_sentence()
    {
        var large = scratch.Path("large.toml");
        using (var file = File.Create(large)) file.SetLength(Files.MostOfSource + 1);
        var binary = scratch.Path("binary.toml");
        await File.WriteAllBytesAsync(binary, [0x7F, 0x45, 0xFF, 0xFE, 0x00, 0x80], TestContext.Current.CancellationToken);
        foreach (var (path, answer) in ((string, string)[])[(scratch.Path("none.toml"), "There is no file"), (scratch.Root, "is a folder"), (large, "is larger than"), (binary, "is not UTF-8 text")])
        {
            Assert.Contains(answer, (await Terminal.Type("check", path, "--shop", Shop)).Ends(ExitCode.NotWritten).Errors, StringComparison.Ordinal);
            Assert.Contains(answer, (await Terminal.Type("check", Six, "--shop", path)).Ends(ExitCode.NotWritten).Errors, StringComparison.Ordinal);
        }
    }

    [Fact] // A file held by another program stands for every file that exists and may not be read.
    public async Task A_file_that_may_not_be_read_is_refused_in_a_sentence()
    {
        var file = scratch.Write("held.toml", "units = \"mm\"\n");
        using var held = new FileStream(file, FileMode.Open, FileAccess.ReadWrite, FileShare.None);
        Assert.Contains("held.toml", (await Terminal.Type("check", file, "--shop", Shop)).Ends(ExitCode.NotWritten).Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\0\0\0\0")]
    [InlineData("[[[[[[[[[[")]
    [InlineData("units = \"mm\"\nscale = 1e999\n")]
    [InlineData("{\"units\": \"mm\"}")]
    [InlineData("")]
    public async Task Text_that_is_no_instrument_is_told_as_mistakes(string text)
    {
        var file = scratch.Write("garbage.toml", text);
        Assert.Contains("garbage.toml(", (await Terminal.Type("check", file, "--shop", Shop)).Ends(ExitCode.Mistaken).Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task On_a_narrow_terminal_lines_break_between_words_and_hang_under_their_label()
    {
        var file = scratch.Write("two.toml", "units = \"mm\"\nname = \"two\"\nscale = \"25 in\"\n[neck]\nwood = \"cardboard\"\n");
        var said = (await Terminal.Type(["check", file, "--shop", Shop], 80, TestContext.Current.CancellationToken)).Ends(ExitCode.Mistaken);
        var lines = said.Output.Split('\n');
        Assert.All(lines.Skip(1), line => Assert.InRange(line.Length, 0, 80));
        Assert.Contains(lines, line => line.StartsWith("                ", StringComparison.Ordinal));
    }
}
