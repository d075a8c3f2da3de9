namespace Solidbody.App.Terminal;

/// <summary>What a command's end says to a script.</summary>
public static class ExitCode
{
    public const int Good = 0;
    /// <summary>A finding stops the work.</summary>
    public const int Stopped = 1;
    /// <summary>A file or the command line has a mistake in it.</summary>
    public const int Mistaken = 2;
    /// <summary>A file could not be read or written.</summary>
    public const int NotWritten = 3;
    /// <summary>The person stopped it.</summary>
    public const int Cancelled = 4;
    /// <summary>A fault of this tool.</summary>
    public const int Fault = 70;
}
