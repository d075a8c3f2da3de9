using System.CommandLine;
using Solidbody.App.Terminal;

namespace Solidbody.App.Commands;

/// <summary><c>solidbody check INSTRUMENT --shop SHOP</c>: what does not fit, without making programs.</summary>
public static class CheckCommand
{
    public static Command Create(Screen screen)
    {
        var (instrument, shop) = (SourceArguments.Instrument(), SourceArguments.Shop());
        var command = new Command("check", "Say what does not fit, without making programs.") { instrument, shop };
        command.SetAction(parse => Run(SourceArguments.ReadFiles(parse.GetRequiredValue(instrument), parse.GetRequiredValue(shop)), screen));
        return command;
    }

    private static int Run(SourceFiles files, Screen screen)
    {
        if (SourceArguments.Understand(files, screen) is not { Instrument: { } instrument, Shop: { } shop }) return ExitCode.Mistaken;
        var findings = MainJob.WorkOut(instrument, shop).Findings;
        FindingsView.Write(screen, findings);
        screen.Line($"{instrument.Name}, in {shop.Name}: {FindingsView.Tally(findings)}.");
        return findings.Any(f => f.KeepsProgramsBack) ? ExitCode.Stopped : ExitCode.Good;
    }
}
