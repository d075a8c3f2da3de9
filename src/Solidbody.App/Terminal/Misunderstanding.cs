using System.CommandLine;

namespace Solidbody.App.Terminal;

/// <summary>A command line that cannot be understood: everything that is wrong with it in plain words, and how it should look.</summary>
public static class Misunderstanding
{
    public static int Explain(ParseResult parse, TextWriter errors)
    {
        ArgumentNullException.ThrowIfNull(parse);
        ArgumentNullException.ThrowIfNull(errors);
        var command = parse.CommandResult.Command;
        if (command is RootCommand)
        {
            errors.WriteLine(parse.UnmatchedTokens is [var first, ..] ? $"There is no command {first}." : "A command is missing.");
            errors.WriteLine($"Try one of {string.Join(", ", command.Subcommands.Select(s => s.Name))}; solidbody --help says what they do.");
            return ExitCode.Mistaken;
        }
        foreach (var argument in command.Arguments.Where(a => parse.GetResult(a) is not { Tokens.Count: > 0 }))
            errors.WriteLine($"{argument.Name} is missing. {argument.Description}");
        foreach (var option in command.Options)
        {
            var given = parse.GetResult(option) is { Implicit: false } result ? result : null;
            if (option.Required && given is null) errors.WriteLine($"{Usage(option)} is missing. {option.Description}");
            else if (given is { Tokens.Count: 0 } && option.HelpName is not null) errors.WriteLine($"{option.Name} needs its {option.HelpName}. {option.Description}");
            else if (given is { IdentifierTokenCount: > 1 }) errors.WriteLine($"{option.Name} is given {given.IdentifierTokenCount} times; give it once.");
        }
        foreach (var token in parse.UnmatchedTokens) errors.WriteLine($"{token} is one too many, or not known here.");
        var form = command.Arguments.Select(a => a.Name).Concat(command.Options.Where(o => o.Required).Select(Usage));
        errors.WriteLine($"Try: solidbody {command.Name} {string.Join(' ', form)}");
        return ExitCode.Mistaken;
    }

    private static string Usage(Option option) => $"{option.Name} {option.HelpName}";
}
