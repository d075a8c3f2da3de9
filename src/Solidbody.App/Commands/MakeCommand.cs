using System.Collections.Immutable;
using System.CommandLine;
using Solidbody.App.Terminal;
using Solidbody.Findings;
using Solidbody.Packet;
using Spectre.Console;

namespace Solidbody.App.Commands;

/// <summary><c>solidbody make INSTRUMENT --shop SHOP --out DIR</c>: the main job.</summary>
public static class MakeCommand
{
    public static Command Create()
    {
        var (instrument, shop) = (SourceArguments.Instrument(), SourceArguments.Shop());
        var folder = new Option<string>("--out") { Description = "Folder of the packet: new, or an older packet of this tool that was not edited by hand.", Required = true };
        var command = new Command("make", "Make and prove the packet: programs, set-up sheets, pictures, packet.json.") { instrument, shop, folder };
        command.SetAction((parse, cancel) => Task.FromResult(
            Run(SourceArguments.ReadFiles(parse.GetRequiredValue(instrument), parse.GetRequiredValue(shop)), parse.GetRequiredValue(folder), cancel)));
        return command;
    }

    private static int Run(SourceFiles files, string folder, CancellationToken cancel)
    {
        if (SourceArguments.Understand(files) is not { Instrument: { } instrument, Shop: { } shop }) return ExitCode.Mistaken;
        var console = AnsiConsole.Console;
        console.WriteLine($"{instrument.Name}, in {shop.Name}");
        var stages = new Stages(Console.Out, !Console.IsOutputRedirected);

        var worked = stages.Run("Instrument worked out and planned", _ => MainJob.WorkOut(instrument, shop));
        if (Stops(worked.Findings)) return Refuse(console, worked.Findings);
        var made = stages.Run("Programs made", p => MainJob.MakePrograms(worked.Plan, shop, p, cancel));
        if (Stops(made.Findings)) return Refuse(console, [.. worked.Findings, .. made.Findings]);
        var proof = stages.Run("Proved from the programs' text", p => MainJob.Prove(worked.Design, shop, made.SetUps, made.Texts, p, cancel));
        ImmutableArray<Finding> findings = [.. worked.Findings, .. made.Findings, .. proof.Findings];
        if (Stops(findings))
        {
            PacketSummary.WriteParts(console, proof.Parts);
            return Refuse(console, findings);
        }
        var packet = stages.Run("Sheets and pictures", p => MainJob.Print(files, worked.Design, shop, made, proof, findings, p, cancel));
        if (stages.Run("Packet written", _ => PacketFolder.Write(folder, packet)) is { } refusal)
        {
            console.WriteLine($"{refusal.Wrong}. Try: {refusal.Remedy}.");
            return ExitCode.NotWritten;
        }

        PacketSummary.WriteSetUps(console, made.SetUps);
        PacketSummary.WriteParts(console, proof.Parts);
        FindingsView.Write(console, findings);
        console.WriteLine($"Proved; {FindingsView.Tally(findings)}. {stages.Elapsed.TotalSeconds:0.0} s. The packet is in {folder}.");
        return ExitCode.Good;
    }

    private static bool Stops(IEnumerable<Finding> findings) => findings.Any(f => f.Severity == Severity.Stops);

    private static int Refuse(IAnsiConsole console, IReadOnlyCollection<Finding> findings)
    {
        FindingsView.Write(console, findings);
        console.WriteLine($"Refused: {FindingsView.Tally(findings)}. Nothing was written.");
        return ExitCode.Stopped;
    }
}
