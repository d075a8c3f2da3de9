using System.CommandLine;
using Solidbody.App.Terminal;
using Solidbody.Instrument.Files;

namespace Solidbody.App.Commands;

/// <summary><c>solidbody new FILE</c>: a commented starter of the instrument file.</summary>
public static class NewCommand
{
    public static Command Create(Screen screen)
    {
        var file = new Argument<string>("FILE") { Description = "Where to write the starter; must not exist yet." };
        var inches = new Option<bool>("--inches") { Description = "Bare numbers in inches instead of millimetres." };
        var command = new Command("new", "Write a commented starter of the instrument file.") { file, inches };
        command.SetAction(parse =>
        {
            var path = parse.GetRequiredValue(file);
            Files.WriteNew(path, InstrumentFile.Starter(parse.GetValue(inches)));
            screen.Line($"{path} is written: every key with its default. Change what you like, then: solidbody check {path} --shop SHOP");
            return ExitCode.Good;
        });
        return command;
    }
}
