using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Solidbody.App.Terminal;
using Solidbody.Findings;
using Solidbody.Packet;

namespace Solidbody.App.Commands;

/// <summary><c>solidbody make INSTRUMENT --shop SHOP --out DIR</c>: the main job.</summary>
public static class MakeCommand
{
    public static Command Create(Screen screen)
    {
        var (instrument, shop) = (SourceArguments.Instrument(), SourceArguments.Shop());
        var folder = new Option<string>("--out") { Description = "Folder of the packet: new, or an older packet of this tool that was not edited by hand.", HelpName = "DIR", Required = true };
        var command = new Command("make", "Make and prove the packet: programs, set-up sheets, pictures, packet.json.") { instrument, shop, folder };
        // On a thread of its own: Ctrl-C is only listened for once the command has been begun.
        command.SetAction((parse, cancel) => Task.Run(
            () => Run(SourceArguments.ReadFiles(parse.GetRequiredValue(instrument), parse.GetRequiredValue(shop)), parse.GetRequiredValue(folder), screen, cancel), cancel));
        return command;
    }

    private static int Run(SourceFiles files, string folder, Screen screen, CancellationToken cancel)
    {
        if (SourceArguments.Understand(files, screen) is not { Instrument: { } instrument, Shop: { } shop }) return ExitCode.Mistaken;
        if (PacketFolder.Refusal(folder) is { } beforehand) return Refuse(screen, beforehand);
        screen.Line($"{instrument.Name}, in {shop.Name}");
        var stages = new Stages(screen);

        var worked = stages.Run("Instrument worked out and planned", _ => MainJob.WorkOut(instrument, shop));
        if (Stops(worked.Findings)) return Refuse(screen, worked.Findings);
        var made = stages.Run("Programs made", p => MainJob.MakePrograms(worked.Plan, shop, p, cancel));
        if (Stops(made.Findings)) return Refuse(screen, [.. worked.Findings, .. made.Findings]);
        var proof = stages.Run("Proved from the programs' text", p => MainJob.Prove(worked.Design, shop, made.SetUps, made.Texts, p, cancel));
        ImmutableArray<Finding> findings = [.. worked.Findings, .. made.Findings, .. proof.Findings];
        if (Stops(findings))
        {
            PacketSummary.WriteParts(screen, proof.Parts);
            return Refuse(screen, findings);
        }
        var packet = stages.Run("Sheets and pictures", p => MainJob.Print(files, worked.Design, shop, made, proof, findings, p, cancel));
        if (stages.Run("Packet written", _ => PacketFolder.Write(folder, packet)) is { } refusal) return Refuse(screen, refusal);

        PacketSummary.WriteSetUps(screen, made.SetUps);
        PacketSummary.WriteParts(screen, proof.Parts);
        FindingsView.Write(screen, findings);
        screen.Line(string.Create(CultureInfo.InvariantCulture,
            $"Proved; {FindingsView.Tally(findings)}. {stages.Elapsed.TotalSeconds:0.0} s. The packet is in {folder}."));
        return ExitCode.Good;
    }

    private static bool Stops(IEnumerable<Finding> findings) => findings.Any(f => f.KeepsProgramsBack);

    private static int Refuse(Screen screen, PacketRefusal refusal)
    {
        screen.Line($"{refusal.Wrong}. Try: {refusal.Remedy}. Nothing was written.");
        return ExitCode.NotWritten;
    }

    private static int Refuse(Screen screen, IReadOnlyCollection<Finding> findings)
    {
        FindingsView.Write(screen, findings);
        screen.Line($"Refused: {FindingsView.Tally(findings)}. Nothing was written.");
        return ExitCode.Stopped;
    }
}
