using System.CommandLine;
using Solidbody.App.Terminal;
using Solidbody.Findings;
using Solidbody.Instrument;
using Solidbody.Packet;
using Solidbody.Programs;
using Spectre.Console;

namespace Solidbody.App.Commands;

/// <summary><c>solidbody prove DIR</c>: proves a packet again from the files as they now are, and leaves them as they are.</summary>
public static class ProveCommand
{
    public static Command Create()
    {
        var folder = new Argument<string>("DIR") { Description = "A packet's folder, with its packet.json." };
        var command = new Command("prove", "Prove a packet again from the files as they now are.") { folder };
        command.SetAction((parse, cancel) => Task.FromResult(Run(parse.GetRequiredValue(folder), cancel)));
        return command;
    }

    private static int Run(string folder, CancellationToken cancel)
    {
        var indexPath = Path.Combine(folder, PacketFolder.Index);
        var index = PacketFile.Read(Files.ReadText(indexPath), indexPath);
        if (!index.IsGood)
        {
            FindingsView.Write(AnsiConsole.Console, index.Mistakes);
            return ExitCode.Mistaken;
        }
        var sources = SourceArguments.ReadFiles(Path.Combine(folder, PacketNames.Instrument), Path.Combine(folder, PacketNames.Shop));
        if (SourceArguments.Understand(sources) is not { Instrument: { } instrument, Shop: { } shop }) return ExitCode.Mistaken;

        var stages = new Stages(Console.Out, !Console.IsOutputRedirected);
        var design = Designer.Design(instrument);
        var texts = stages.Run("Programs read", _ => ReadPrograms(folder, index.Good));
        var proof = stages.Run("Proved", p => MainJob.Prove(design, shop, index.Good.SetUps, texts, p, cancel));
        PacketSummary.WriteParts(AnsiConsole.Console, proof.Parts);
        FindingsView.Write(AnsiConsole.Console, proof.Findings);
        AnsiConsole.WriteLine(proof.Passes ? "Proved: the programs as they now are cut the parts." : "Not proved.");
        return proof.Findings.Any(f => f.Severity == Severity.Stops) ? ExitCode.Stopped : ExitCode.Good;
    }

    /// <summary>Texts of the programs that are there; a missing one is the proof's to say.</summary>
    private static Dictionary<string, string> ReadPrograms(string folder, PacketIndex index) =>
        index.SetUps.SelectMany(s => s.Programs).Select(p => p.File).Distinct()
            .Where(file => File.Exists(Path.Combine(folder, file)))
            .ToDictionary(file => file, file => File.ReadAllText(Path.Combine(folder, file)));
}
