using System.CommandLine;
using Solidbody.App.Commands;
using Solidbody.App.Terminal;

var root = new RootCommand("Solidbody: from one instrument file and one shop file to proved programs for a small CNC router.")
{
    MakeCommand.Create(),
    CheckCommand.Create(),
    ProveCommand.Create(),
    NewCommand.Create(),
};
return await Faults.Guard(() => root.Parse(args).InvokeAsync(new InvocationConfiguration { EnableDefaultExceptionHandler = false }));
