namespace Solidbody.Packet.Sheets;

/// <summary>The block lower right: what this is, whose shop, which units, proved or not.</summary>
internal static class TitleBlock
{
    private const double TallRow = 9.4;
    private const double Row = 8.4;
    private const double Padding = 1.5;

    public static void Draw(Paper paper, SheetInput input, string scales, string page)
    {
        var block = SheetFormat.TitleBlock;
        paper.Rectangle(block, Stroke.Outline);
        var y = block.Y0;
        y = Fields(paper, y, TallRow, (1, "Instrument", input.Instrument));
        y = Fields(paper, y, TallRow, (1, "Part and set-up", input.SetUp.Title));
        y = Fields(paper, y, Row, (0.34, "Scale", scales), (0.26, "Units", "mm"), (0.40, "Sheet", page));
        y = Fields(paper, y, Row, (0.74, "Shop", input.Shop), (0.26, "Size", "A4"));
        Fields(paper, y, block.Y1 - y, (0.74, "Proof, by content", input.Proof), (0.26, "Change", input.Change));
    }

    private static double Fields(Paper paper, double y, double height, params ReadOnlySpan<(double Share, string Name, string Value)> fields)
    {
        var block = SheetFormat.TitleBlock;
        var x = block.X0;
        foreach (var (share, name, value) in fields)
        {
            var width = share * block.Width;
            var style = fields.Length == 1 ? Lettering.FieldName : Lettering.FieldValue;
            paper.Text(new(x + Padding, y + 0.9 + Lettering.Field.CapHeight), name, Lettering.Field);
            paper.Text(new(x + Padding, y + height - 1.3), Shortened(paper, value, style, width - 2 * Padding), style);
            x += width;
            if (x < block.X1 - 0.1) paper.Line(new(x, y), new(x, y + height), Stroke.Fine);
        }
        if (y + height < block.Y1 - 0.1) paper.Line(new(block.X0, y + height), new(block.X1, y + height), Stroke.Fine);
        return y + height;
    }

    private static string Shortened(Paper paper, string text, Lettering style, double width)
    {
        if (paper.Width(text, style) <= width) return text;
        var keep = text.Length;
        while (keep > 1 && paper.Width(text[..keep] + "…", style) > width) keep--;
        return text[..keep].TrimEnd() + "…";
    }
}
