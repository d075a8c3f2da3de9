using System.CommandLine;
using Solidbody.App.Terminal;

namespace Solidbody.App.Commands;

/// <summary>The arguments by which commands are given the two files.</summary>
internal static class SourceArguments
{
    public static Argument<string> Instrument() => new("INSTRUMENT") { Description = "The instrument file (TOML)." };
    public static Option<string> Shop() => new("--shop") { Description = "The shop file (TOML): machine, cutters, woods, hold-downs.", HelpName = "SHOP", Required = true };

    public static SourceFiles ReadFiles(string instrument, string shop) =>
        new(instrument, Files.ReadText(instrument), shop, Files.ReadText(shop), new DrawingsBeside(instrument));

    /// <summary>Both definitions; null when a file has mistakes, which are then on the screen.</summary>
    public static SourceDefinitions? Understand(SourceFiles files, Screen screen)
    {
        var read = MainJob.Read(files);
        if (read.IsGood) return read;
        FindingsView.Write(screen, read.Mistakes);
        screen.Line($"{read.Mistakes.Length} {(read.Mistakes.Length == 1 ? "mistake" : "mistakes")} in what was read; nothing else was done.");
        return null;
    }
}
