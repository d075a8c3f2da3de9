using System.CommandLine;
using Solidbody.App.Terminal;
using Solidbody.App.Terminal.Tables;
using Solidbody.Instrument;
using Solidbody.Instrument.Files;

namespace Solidbody.App.Commands;

/// <summary><c>solidbody figures INSTRUMENT [--only NAME]</c>: what was worked out about how the instrument plays, holds and hangs, as tables.</summary>
public static class FiguresCommand
{
    public static Command Create(Screen screen)
    {
        var instrument = SourceArguments.Instrument();
        var only = new Option<string?>("--only") { Description = $"One table: {string.Join(", ", FigureTable.All.Select(t => t.Name))}.", HelpName = "NAME" };
        var command = new Command("figures", "Show tension, heights, intonation, walls, movement, mass, balance and wood as tables.") { instrument, only };
        command.SetAction(parse => Run(parse.GetRequiredValue(instrument), parse.GetValue(only), screen));
        return command;
    }

    private static int Run(string path, string? only, Screen screen)
    {
        var tables = FigureTable.All.Where(t => only is null || t.Name == only).ToArray();
        if (tables.Length == 0)
        {
            screen.Line($"There is no table {only}. Try one of {string.Join(", ", FigureTable.All.Select(t => t.Name))}.");
            return ExitCode.Mistaken;
        }
        var read = InstrumentFile.Read(Files.ReadText(path), path, new DrawingsBeside(path));
        if (read.Value is not { } definition)
        {
            FindingsView.Write(screen, read.Mistakes);
            screen.Line($"{read.Mistakes.Length} {(read.Mistakes.Length == 1 ? "mistake" : "mistakes")} in what was read; nothing else was done.");
            return ExitCode.Mistaken;
        }
        var design = Designer.Design(definition);
        if (design.Parts.IsEmpty)
        {
            FindingsView.Write(screen, design.Findings);
            screen.Line("The parts cannot be drawn; there are no figures.");
            return ExitCode.Stopped;
        }
        foreach (var table in tables) Write(screen, table, design);
        return ExitCode.Good;
    }

    private static void Write(Screen screen, FigureTable table, Design design)
    {
        if (table.Of(design, new FigureWords(design.Definition.Unit)) is { } rows)
        {
            screen.Line($"{table.Title} ({table.Name})");
            rows.Write(screen);
        }
        else
        {
            screen.Line($"{table.Title} ({table.Name}): {table.Missing}");
            screen.Line();
        }
    }
}
