namespace Solidbody.Packet.Sheets;

/// <summary>What every page of a sheet has alike: frame, centring marks, title block, cautions, the line that checks the print.</summary>
internal static class PageFrame
{
    private const double CentringMark = 5;

    /// <summary>Draws it.</summary>
    /// <returns>How far down the column left of the title block is free.</returns>
    public static double Draw(Paper paper, SheetInput input, string scales, string page)
    {
        var frame = SheetFormat.Frame;
        paper.Rectangle(frame, Stroke.Outline);
        var (middleX, middleY) = (SheetFormat.Width / 2, SheetFormat.Height / 2);
        paper.Line(new(middleX, frame.Y0 - CentringMark), new(middleX, frame.Y0), Stroke.Frame);
        paper.Line(new(middleX, frame.Y1), new(middleX, frame.Y1 + CentringMark), Stroke.Frame);
        paper.Line(new(frame.X0 - CentringMark, middleY), new(frame.X0, middleY), Stroke.Frame);
        paper.Line(new(frame.X1, middleY), new(frame.X1 + CentringMark, middleY), Stroke.Frame);
        TitleBlock.Draw(paper, input, scales, page);
        return CautionsAndCheck(paper);
    }

    private static double CautionsAndCheck(Paper paper)
    {
        var (x, width) = (SheetFormat.Room.X0, SheetFormat.TitleBlock.X0 - SheetFormat.Gap - SheetFormat.Room.X0);
        var lines = paper.Wrap(Cautions.Text, Lettering.Small, width);
        var height = (lines.Count + 1) * Lettering.Small.LineHeight;
        var top = SheetFormat.Room.Y1 + 0.6 - height;
        var baseline = top + Lettering.Small.CapHeight;
        foreach (var line in lines)
        {
            paper.Text(new(x, baseline), line, Lettering.Small);
            baseline += Lettering.Small.LineHeight;
        }
        const string before = "This sheet ";
        paper.Text(new(x, baseline), before + Cautions.Defers + ".", Lettering.SmallStrong with { Size = Fitting(paper, before + Cautions.Defers + ".", width) });

        var check = top - 6.2;
        paper.Line(new(x, check), new(x + SheetFormat.CheckLine, check), Stroke.Thin);
        for (var i = 0; i <= 5; i++)
        {
            var half = i is 0 or 5 ? 1.6 : 1.0;
            paper.Line(new(x + 10 * i, check - half), new(x + 10 * i, check + half), Stroke.Thin);
        }
        paper.Text(new(x + SheetFormat.CheckLine + 2.5, check + Lettering.Small.CapHeight / 2), "50 mm long? If not, print at 100 %.", Lettering.Small);
        return check - 4;
    }

    /// <summary>The strong small size, or a little less where the line would not fit; never under the least size.</summary>
    private static double Fitting(Paper paper, string text, double width)
    {
        var size = Lettering.SmallStrong.Size;
        return Math.Max(Lettering.LeastSize, Math.Min(size, size * width / paper.Width(text, Lettering.SmallStrong)));
    }
}
