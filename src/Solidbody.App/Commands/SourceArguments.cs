using System.CommandLine;
using Solidbody.App.Terminal;
using Spectre.Console;

namespace Solidbody.App.Commands;

/// <summary>The arguments by which commands are given the two files.</summary>
internal static class SourceArguments
{
    public static Argument<string> Instrument() => new("INSTRUMENT") { Description = "The instrument file (TOML)." };
    public static Option<string> Shop() => new("--shop") { Description = "The shop file (TOML): machine, cutters, woods, hold-downs.", Required = true };

    public static SourceFiles ReadFiles(string instrument, string shop) =>
        new(instrument, Files.ReadText(instrument), shop, Files.ReadText(shop));

    /// <summary>Both definitions; null when a file has mistakes, which are then on the terminal.</summary>
    public static SourceDefinitions? Understand(SourceFiles files)
    {
        var read = MainJob.Read(files);
        if (read.IsGood) return read;
        FindingsView.Write(AnsiConsole.Console, read.Mistakes);
        AnsiConsole.WriteLine($"{read.Mistakes.Length} {(read.Mistakes.Length == 1 ? "mistake" : "mistakes")} in what was read; nothing else was done.");
        return null;
    }
}
