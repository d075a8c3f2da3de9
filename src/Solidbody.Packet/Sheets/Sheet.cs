using PdfSharp.Pdf;
using Solidbody.Geometry;
using Solidbody.Packet.Drawing;
using Solidbody.Programs;

namespace Solidbody.Packet.Sheets;

/// <summary>One set-up's sheet while it is laid out: what is left to set, and how much room the page still has.</summary>
internal sealed class Sheet(PdfDocument document, SheetInput input) : IDisposable
{
    private readonly SetUp setUp = input.SetUp;
    private readonly BedDrawing bed = new(input, SheetFormat.Bed);
    private readonly CrossSection section = new(input.SetUp, input.Part);
    private Paper paper = null!;
    private int pages;
    private double y;          // where the page goes on
    private double leftBottom; // how far down the left column is free

    private static Box2 Room => SheetFormat.Room;
    private static double FullBottom => SheetFormat.TitleBlock.Y0 - 3;

    public void Dispose() => paper?.Dispose();

    public void Draw()
    {
        NewPage();
        var undrawn = bed.Draw(paper);
        var notes = Notes.Of(input, undrawn);
        var side = bed.Box.X1 + 5;
        NoteColumn.Draw(paper, notes, side, bed.Box.Y0, Room.X1 - side, bed.Bottom);
        y = bed.Bottom + 2;
        Programs();
        SectionAndChecks();
        MoreNotes(notes);
    }

    private void NewPage()
    {
        paper?.Dispose();
        var page = document.AddPage();
        page.Width = PdfSharp.Drawing.XUnit.FromMillimeter(SheetFormat.Width);
        page.Height = PdfSharp.Drawing.XUnit.FromMillimeter(SheetFormat.Height);
        paper = new Paper(page);
        pages++;
        var scales = string.Join(", ", new[] { bed.Scale, section.Scale }.Distinct().Select(s => $"1:{s}"));
        var number = $"{input.Sheet} of {input.Sheets}" + (pages > 1 ? $", page {pages}" : "");
        leftBottom = PageFrame.Draw(paper, input, scales, number);
        paper.Text(new(Room.X0, Room.Y0 + Lettering.Title.CapHeight + 1), setUp.Title + (pages > 1 ? ", continued" : ""), Lettering.Title);
        paper.Text(new(Room.X0, Room.Y0 + 11), Order(), Lettering.Lead);
        y = Room.Y0 + 15;
    }

    private string Order()
    {
        var after = input.Previous is { } p ? $", after “{p}”" : "";
        var before = input.Next is { } n ? $", before “{n}”" : "";
        return $"Set-up {setUp.Order} of {input.SetUps}{after}{before}; {Figures.Minutes(setUp.Programs.Sum(e => e.Seconds))} min";
    }

    private void Programs()
    {
        var columns = new Column[]
        {
            new("Program", 16), new("Name", 32, Strong: true), new("Cutter", 50), new("Stick-out", 16.5, Align.Right, true),
            new("Turns/min", 18, Align.Right, true), new("Feed mm/min", 21.5, Align.Right, true), new("min", 10.5, Align.Right, true),
        };
        var open = false;
        foreach (var program in setUp.Programs)
        {
            var table = new Table(paper, Room.X0, columns);
            string[] cells =
            [
                Number(program.File), program.Name, CutterWords.Of(program.Cutter), Figures.Millimetres(program.Cutter.StickOut),
                Figures.TurnsPerMinute(program.SpindleSpeed), Figures.PerMinute(program.Feed), Figures.Minutes(program.Seconds),
            ];
            var needed = table.HeightOf(cells) + (open ? 0 : Lettering.Heading.LineHeight + Table.HeadHeight);
            if (y + needed > FullBottom)
            {
                NewPage();
                table = new Table(paper, Room.X0, columns);
                open = false;
            }
            if (!open)
            {
                Heading("Run in this order, one program a cutter; measure the cutter’s stick-out before each");
                y = table.Head(y);
                open = true;
            }
            y = table.Row(y, cells);
        }
        y += SheetFormat.Gap;
    }

    /// <summary>The number a program's file name begins with; the whole name without folder where it has none.</summary>
    private static string Number(string file)
    {
        var name = Path.GetFileNameWithoutExtension(file);
        var digits = new string([.. name.TakeWhile(char.IsAsciiDigit)]);
        return digits.Length > 0 ? digits : name;
    }

    /// <summary>The section stands above the title block, the checks to its left; both go on where there is room.</summary>
    private void SectionAndChecks()
    {
        if (y + section.Height > FullBottom) NewPage();
        var top = y;
        var left = Room.X1 - section.Width;
        section.Draw(paper, new(left, FullBottom - section.Height));
        var width = Math.Min(left, SheetFormat.TitleBlock.X0) - SheetFormat.Gap - Room.X0;
        var columns = new Column[] { new("", width - Table.TickColumn - 47), new("Should be, mm", 23, Align.Right, true), new("", 3), new("Is", 21) };
        y = top;
        var open = false;
        foreach (var check in setUp.Checks)
        {
            var table = new Table(paper, Room.X0, columns);
            string[] cells = [check.What, check.Nominal is { } n ? $"{Figures.Millimetres(n)} ±{Figures.Size(check.Tolerance)}" : ""];
            var needed = table.HeightOf(cells) + (open ? 0 : Lettering.Heading.LineHeight + Table.HeadHeight);
            if (y + needed > leftBottom)
            {
                NewPage();
                table = new Table(paper, Room.X0, columns);
                open = false;
            }
            if (!open)
            {
                Heading("Measure and write down");
                y = table.Head(y);
                open = true;
            }
            y = table.Row(y, cells, check.Nominal is null ? 0 : 1);
        }
        if (setUp.Checks.IsEmpty) return;
        const string outside = "If a figure is outside, stop: work the programs out and prove them again with the measured figure.";
        var lines = paper.Wrap(outside, Lettering.Small, width);
        if (y + lines.Count * Lettering.Small.LineHeight + 2 > leftBottom) return;
        y += 1.6 + Lettering.Small.CapHeight;
        foreach (var line in lines)
        {
            paper.Text(new(Room.X0, y), line, Lettering.Small);
            y += Lettering.Small.LineHeight;
        }
    }

    private void MoreNotes(List<Note> notes)
    {
        while (notes.Count > 0)
        {
            var before = notes.Count;
            y = NoteColumn.Draw(paper, notes, Room.X0, y + 2, SheetFormat.TitleBlock.X0 - SheetFormat.Gap - Room.X0, leftBottom);
            if (notes.Count == 0) return;
            if (notes.Count == before && y <= Room.Y0 + 20) notes.RemoveAt(0);
            NewPage();
        }
    }

    private void Heading(string text)
    {
        paper.Text(new(Room.X0, y + Lettering.Heading.CapHeight), text, Lettering.Heading);
        y += Lettering.Heading.LineHeight;
    }
}
