using System.Diagnostics;
using System.Globalization;

namespace Solidbody.App.Terminal;

/// <summary>Tells a person at the terminal which stage runs, how far it is, and how long each took.
/// On a terminal the running stage's line is rewritten in place; redirected, only finished stages are written.</summary>
public sealed class Stages(Screen screen)
{
    private readonly object gate = new();
    private readonly Stopwatch whole = Stopwatch.StartNew();
    private int width;

    public TimeSpan Elapsed => whole.Elapsed;

    /// <summary>Runs one stage and says when it is done.</summary>
    public T Run<T>(string name, Func<IProgress<string>, T> work)
    {
        ArgumentNullException.ThrowIfNull(work);
        var watch = Stopwatch.StartNew();
        try
        {
            Show($"  {name} …");
            var result = work(new Now(step => Show($"  {name}, {step} …")));
            Show("");
            screen.Line(string.Create(CultureInfo.InvariantCulture, $"  {name,-34} {watch.Elapsed.TotalSeconds,6:0.00} s"));
            return result;
        }
        finally
        {
            Show("");
        }
    }

    /// <summary>Puts a line in the place of the one shown before.</summary>
    private void Show(string line)
    {
        if (!screen.IsLive) return;
        lock (gate)
        {
            if (width > 0) screen.Output.Write('\r' + new string(' ', width) + '\r');
            var fitting = screen.Fitting(line);
            width = fitting.Length;
            screen.Output.Write(fitting);
            screen.Output.Flush();
        }
    }

    /// <summary>Progress told at once on the caller's thread, so that lines keep their order.</summary>
    private sealed class Now(Action<string> tell) : IProgress<string>
    {
        public void Report(string value) => tell(value);
    }
}
