using System.Diagnostics;
using System.Globalization;

namespace Solidbody.App.Terminal;

/// <summary>Tells a person at the terminal which stage runs, how far it is, and how long each took.
/// On a terminal the running stage's line is rewritten in place; redirected, only finished stages are written.</summary>
public sealed class Stages(TextWriter output, bool live)
{
    private readonly object gate = new();
    private readonly Stopwatch whole = Stopwatch.StartNew();
    private int width;

    /// <summary>Runs one stage and says when it is done.</summary>
    public T Run<T>(string name, Func<IProgress<string>, T> work)
    {
        ArgumentNullException.ThrowIfNull(work);
        var watch = Stopwatch.StartNew();
        Show(name, "");
        var result = work(new Now(step => Show(name, step)));
        lock (gate)
        {
            Wipe();
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {name,-34} {watch.Elapsed.TotalSeconds,6:0.00} s"));
        }
        return result;
    }

    public TimeSpan Elapsed => whole.Elapsed;

    private void Show(string name, string step)
    {
        if (!live) return;
        lock (gate)
        {
            Wipe();
            var line = step.Length == 0 ? $"  {name} …" : $"  {name}, {step} …";
            width = line.Length;
            output.Write(line);
            output.Flush();
        }
    }

    private void Wipe()
    {
        if (width == 0) return;
        output.Write('\r' + new string(' ', width) + '\r');
        width = 0;
    }

    /// <summary>Progress told at once on the caller's thread, so that lines keep their order.</summary>
    private sealed class Now(Action<string> tell) : IProgress<string>
    {
        public void Report(string value) => tell(value);
    }
}
