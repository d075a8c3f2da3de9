using System.CommandLine;
using Solidbody.App.Terminal;
using Solidbody.Findings;
using Spectre.Console;

namespace Solidbody.App.Commands;

/// <summary><c>solidbody check INSTRUMENT --shop SHOP</c>: what does not fit, without making programs.</summary>
public static class CheckCommand
{
    public static Command Create()
    {
        var (instrument, shop) = (SourceArguments.Instrument(), SourceArguments.Shop());
        var command = new Command("check", "Say what does not fit, without making programs.") { instrument, shop };
        command.SetAction(parse => Run(SourceArguments.ReadFiles(parse.GetRequiredValue(instrument), parse.GetRequiredValue(shop))));
        return command;
    }

    private static int Run(SourceFiles files)
    {
        if (SourceArguments.Understand(files) is not { Instrument: { } instrument, Shop: { } shop }) return ExitCode.Mistaken;
        var findings = MainJob.WorkOut(instrument, shop).Findings;
        FindingsView.Write(AnsiConsole.Console, findings);
        AnsiConsole.WriteLine($"{instrument.Name} in {shop.Name}: {FindingsView.Tally(findings)}.");
        return findings.Any(f => f.Severity == Severity.Stops) ? ExitCode.Stopped : ExitCode.Good;
    }
}
