using System.CommandLine;
using System.Globalization;
using Solidbody.App.Terminal;
using Solidbody.Findings;
using Solidbody.Proof;
using Solidbody.Proof.Metering;

namespace Solidbody.App.Commands;

/// <summary><c>solidbody minutes INSTRUMENT --shop SHOP</c>: how long every operation takes, beside what no path could do better, and what of it cuts air.</summary>
public static class MinutesCommand
{
    public static Command Create(Screen screen)
    {
        var (instrument, shop) = (SourceArguments.Instrument(), SourceArguments.Shop());
        var command = new Command("minutes", "Show the machine time of every operation, its lower bound, and how much of it cuts air.") { instrument, shop };
        command.SetAction((parse, cancel) => Task.Run(
            () => Run(SourceArguments.ReadFiles(parse.GetRequiredValue(instrument), parse.GetRequiredValue(shop)), screen, cancel), cancel));
        return command;
    }

    private static int Run(SourceFiles files, Screen screen, CancellationToken cancel)
    {
        if (SourceArguments.Understand(files, screen) is not { Instrument: { } instrument, Shop: { } shop }) return ExitCode.Mistaken;
        var stages = new Stages(screen);
        var worked = stages.Run("Instrument worked out and planned", _ => MainJob.WorkOut(instrument, shop));
        var made = stages.Run("Programs made", p => MainJob.MakePrograms(worked.Plan, shop, p, cancel));
        var cuts = stages.Run("Wood measured as the text cuts it", _ => WoodMeter.Measure(made.SetUps, made.Texts, ProofSettings.For(shop), cancel));
        var figures = cuts.SelectMany(c => OperationFigures.Of(c, shop.Machine)).ToList();
        Table(figures).Write(screen);
        var (planned, bound) = (figures.Sum(f => f.Operation.Seconds), figures.Sum(f => f.Operation.BoundSeconds));
        var (feed, air) = (figures.Sum(f => f.FeedSeconds), figures.Sum(f => f.AirSeconds));
        screen.Line(string.Create(CultureInfo.InvariantCulture,
            $"{instrument.Name}, in {shop.Name}: {planned / 60:0.0} minutes; no path could do better than {bound / 60:0.0} ({100 * bound / planned:0} %); {100 * air / feed:0.0} % of the time at feed cuts air."));
        if (worked.Findings.Any(f => f.Severity == Severity.Stops)) screen.Line("Findings stop the packet: solidbody check names them.");
        return ExitCode.Good;
    }

    private static TextTable Table(IEnumerable<OperationFigures> figures)
    {
        var table = new TextTable("Operation", "Cutter", "Minutes", "At best", "Of that, %", "Rapids", "Air, %", "In wood, °", "Wood, cm³");
        foreach (var f in figures)
            table.Add($"{f.Program.Name[..2]} {f.Operation.Name}", f.Program.Cutter.Name, Figure(f.Operation.Seconds / 60, 2), Figure(f.Operation.BoundSeconds / 60, 2),
                Figure(100 * f.Operation.BoundSeconds / f.Operation.Seconds, 0), Figure(f.RapidSeconds / 60, 2), Figure(100 * f.AirSeconds / Math.Max(f.FeedSeconds, double.Epsilon), 1),
                f.Engagement > 0 ? Figure(f.Engagement * 180 / Math.PI, 0) : "", Figure(f.Volume / 1000, 1));
        return table;
    }

    private static string Figure(double value, int decimals) => value.ToString($"F{decimals}", CultureInfo.InvariantCulture);
}
