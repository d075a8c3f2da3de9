namespace Solidbody.App.Terminal;

/// <summary>The rim of the program: whatever goes wrong, a person gets a sentence, never a stack trace.</summary>
public static class Faults
{
    public static async Task<int> Guard(TextWriter errors, Func<Task<int>> run)
    {
        ArgumentNullException.ThrowIfNull(errors);
        ArgumentNullException.ThrowIfNull(run);
        try
        {
            return await run();
        }
        catch (OperationCanceledException)
        {
            await errors.WriteLineAsync("Stopped. Nothing was written.");
            return ExitCode.Cancelled;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            await errors.WriteLineAsync($"{e.Message} Nothing was written.");
            return ExitCode.NotWritten;
        }
#pragma warning disable CA1031 // This is the rim: a fault of ours becomes a sentence here, and nowhere else.
        catch (Exception e)
#pragma warning restore CA1031
        {
            await errors.WriteLineAsync($"A fault of Solidbody's own, not of your files: {e.GetType().Name}: {e.Message}");
            await errors.WriteLineAsync("Nothing was written. Please report it with the two files that led to it.");
            return ExitCode.Fault;
        }
    }
}
