namespace Solidbody.App.Terminal;

/// <summary>A small table in columns as wide as their widest cell: the first to the left, the others to the right, a rule under the head.</summary>
public sealed class TextTable(params string[] heads)
{
    private const string Gap = "   ";
    private readonly List<string[]> rows = [];

    /// <exception cref="ArgumentException">There are not as many cells as heads.</exception>
    public void Add(params string[] cells)
    {
        ArgumentNullException.ThrowIfNull(cells);
        if (cells.Length != heads.Length) throw new ArgumentException($"{cells.Length} cells do not fit {heads.Length} columns.", nameof(cells));
        rows.Add(cells);
    }

    public void Write(Screen screen)
    {
        ArgumentNullException.ThrowIfNull(screen);
        var widths = heads.Select((head, i) => rows.Select(r => r[i].Length).Append(head.Length).Max()).ToArray();
        void Row(string[] cells) =>
            screen.Output.WriteLine("  " + string.Join(Gap, cells.Select((c, i) => i == 0 ? c.PadRight(widths[i]) : c.PadLeft(widths[i]))).TrimEnd());
        screen.Line();
        Row(heads);
        Row([.. widths.Select(w => new string('-', w))]);
        foreach (var row in rows) Row(row);
        screen.Line();
    }
}
