using System.CommandLine;
using System.CommandLine.Invocation;
using Solidbody.App.Commands;
using Solidbody.App.Terminal;

namespace Solidbody.App;

/// <summary>The command line: from words to a command, to what a person reads and what a script is told.</summary>
public static class CommandLine
{
    /// <summary>A command that is stopped has this long to take away what it began.</summary>
    private static readonly TimeSpan TimeToStop = TimeSpan.FromSeconds(30);

    /// <param name="args">What was typed after the tool's name.</param>
    /// <param name="screen">Where results are told.</param>
    /// <param name="errors">Where it is told that nothing came of it.</param>
    /// <param name="cancel">Stops the command; so does Ctrl-C.</param>
    /// <returns>One of <see cref="ExitCode"/>; never an exception.</returns>
    public static Task<int> Run(IReadOnlyList<string> args, Screen screen, TextWriter errors, CancellationToken cancel = default) => Faults.Guard(errors, async () =>
    {
        ArgumentNullException.ThrowIfNull(screen);
        var root = new RootCommand("Solidbody: from one instrument file and one shop file to proved programs for a small CNC router.")
        {
            MakeCommand.Create(screen),
            CheckCommand.Create(screen),
            FiguresCommand.Create(screen),
            MinutesCommand.Create(screen),
            ProveCommand.Create(screen),
            NewCommand.Create(screen),
        };
        var parse = root.Parse(args);
        if (parse.Action is ParseErrorAction) return Misunderstanding.Explain(parse, errors);
        return await parse.InvokeAsync(
            new InvocationConfiguration { EnableDefaultExceptionHandler = false, Output = screen.Output, Error = errors, ProcessTerminationTimeout = TimeToStop }, cancel);
    });
}
