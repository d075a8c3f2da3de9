namespace Solidbody.App.Terminal;

/// <summary>Where a person reads: on a terminal paragraphs break between words and hang under their first line; redirected, every paragraph is one line.</summary>
/// <param name="output">Where the text goes.</param>
/// <param name="width">Columns of the terminal; null when it is none, and nothing is broken, coloured or rewritten.</param>
public sealed class Screen(TextWriter output, int? width = null)
{
    /// <summary>Narrower than this a hanging indent would leave no room for words.</summary>
    private const int NarrowestHang = 40;

    private readonly bool colours = width is not null && Environment.GetEnvironmentVariable("NO_COLOR") is null or "";

    public TextWriter Output { get; } = output;

    /// <summary>Whether a line may be rewritten in place.</summary>
    public bool IsLive => width is not null;

    /// <summary>The process's own standard output.</summary>
    public static Screen OfConsole() => new(Console.Out, Console.IsOutputRedirected ? null : Width());

    public void Line(string text = "") => Paragraph("", text);

    /// <summary>A label and what belongs to it; broken lines hang under the text.</summary>
    public void Paragraph(string label, string text, ConsoleColor? labelColour = null)
    {
        ArgumentNullException.ThrowIfNull(label);
        ArgumentNullException.ThrowIfNull(text);
        if (labelColour is { } colour && colours)
        {
            Console.ForegroundColor = colour;
            Output.Write(label);
            Console.ResetColor();
        }
        else
        {
            Output.Write(label);
        }
        var hang = width is { } columns && columns - label.Length < NarrowestHang ? 0 : label.Length;
        Output.WriteLine(string.Join(Environment.NewLine + new string(' ', hang), Broken(text, width - label.Length)));
    }

    /// <summary>Text cut to fit on one line of the terminal.</summary>
    public string Fitting(string line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return width is { } columns && line.Length >= columns ? line[..(columns - 1)] : line;
    }

    /// <summary>The text in lines of at most so many characters, broken between words; a longer word stands alone.</summary>
    internal static IEnumerable<string> Broken(string text, int? most)
    {
        var rest = text;
        while (most is { } columns && rest.Length > Math.Max(1, columns))
        {
            var cut = rest.LastIndexOf(' ', Math.Max(1, columns));
            if (cut <= 0) cut = rest.IndexOf(' ', StringComparison.Ordinal);
            if (cut <= 0) break;
            yield return rest[..cut];
            rest = rest[(cut + 1)..];
        }
        yield return rest;
    }

    private static int? Width()
    {
        try
        {
            return Console.WindowWidth > 0 ? Console.WindowWidth : null;
        }
        catch (Exception e) when (e is IOException or PlatformNotSupportedException)
        {
            return null;
        }
    }
}
