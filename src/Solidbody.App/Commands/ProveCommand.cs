using System.CommandLine;
using Solidbody.App.Terminal;
using Solidbody.Instrument;
using Solidbody.Packet;
using Solidbody.Programs;

namespace Solidbody.App.Commands;

/// <summary><c>solidbody prove DIR</c>: proves a packet again from the files as they now are, and leaves them as they are.</summary>
public static class ProveCommand
{
    public static Command Create(Screen screen)
    {
        var folder = new Argument<string>("DIR") { Description = "A packet's folder, with its packet.json." };
        var command = new Command("prove", "Prove a packet again from the files as they now are.") { folder };
        // On a thread of its own: Ctrl-C is only listened for once the command has been begun.
        command.SetAction((parse, cancel) => Task.Run(() => Run(parse.GetRequiredValue(folder), screen, cancel), cancel));
        return command;
    }

    private static int Run(string folder, Screen screen, CancellationToken cancel)
    {
        var indexPath = Path.Combine(folder, PacketFolder.Index);
        var index = PacketFile.Read(Files.ReadText(indexPath, Files.MostOfPacket), indexPath);
        if (!index.IsGood)
        {
            FindingsView.Write(screen, index.Mistakes);
            return ExitCode.Mistaken;
        }
        var sources = SourceArguments.ReadFiles(Path.Combine(folder, PacketNames.Instrument), Path.Combine(folder, PacketNames.Shop));
        if (SourceArguments.Understand(sources, screen) is not { Instrument: { } instrument, Shop: { } shop }) return ExitCode.Mistaken;

        screen.Line($"{index.Good.Instrument}, in {index.Good.Shop}");
        var stages = new Stages(screen);
        var design = Designer.Design(instrument);
        var texts = stages.Run("Programs read", _ => ReadPrograms(folder, index.Good));
        var proof = stages.Run("Proved from the programs' text", p => MainJob.Prove(design, shop, index.Good.SetUps, texts, p, cancel));
        PacketSummary.WriteParts(screen, proof.Parts);
        FindingsView.Write(screen, proof.Findings);
        screen.Line(proof.Passes ? "Proved: the programs as they now are cut the parts." : $"Not proved: {FindingsView.Tally(proof.Findings)}.");
        return proof.Passes ? ExitCode.Good : ExitCode.Stopped;
    }

    /// <summary>Texts of the programs that are there; a missing one is the proof's to say.</summary>
    private static Dictionary<string, string> ReadPrograms(string folder, PacketIndex index) =>
        index.SetUps.SelectMany(s => s.Programs).Select(p => p.File).Distinct()
            .Where(file => File.Exists(Path.Combine(folder, file)))
            .ToDictionary(file => file, file => Files.ReadText(Path.Combine(folder, file), Files.MostOfPacket));
}
