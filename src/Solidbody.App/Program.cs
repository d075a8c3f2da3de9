using Solidbody.App;
using Solidbody.App.Terminal;

return await CommandLine.Run(args, Screen.OfConsole(), Console.Error);
