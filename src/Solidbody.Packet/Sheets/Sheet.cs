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
    private readonly CrossSection section = new(input);
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
        y = bed.Bottom + 2;
        var later = Blocks();
        var left = Room.X1 - section.Width - SheetFormat.Gap - Room.X0;
        var below = y + ProgramsHeight();
        var stepsOverleaf = Notes.Before(setUp) is { } steps && below + Block.Of(steps, paper, left).Height > leftBottom;
        later.AddRange(SideNotes(Notes.Beside(input, undrawn, stepsOverleaf)).Select(n => Later(n)));
        Programs();
        if (y + section.Height > FullBottom) NewPage();
        section.Draw(paper, new(Room.X1 - section.Width, FullBottom - section.Height));
        var skipped = stepsOverleaf ? 1 : 0;
        while (later.Count > skipped && Below(later[skipped](paper, left))) later.RemoveAt(skipped);
        if (later.Count > 0) Overleaf(later);
    }

    /// <summary>What is read apart from the drawing, in the order of the work.</summary>
    private List<Func<Paper, double, Block>> Blocks()
    {
        var blocks = new List<Func<Paper, double, Block>>();
        if (Notes.Before(setUp) is { } before) blocks.Add(Later(before));
        blocks.AddRange(CheckBlocks.Of(input));
        if (Notes.After(setUp) is { } after) blocks.Add(Later(after));
        return blocks;
    }

    private static Func<Paper, double, Block> Later(Note note) => (p, width) => Block.Of(note, p, width);

    /// <summary>Sets the notes beside the drawing, as many as find room.</summary>
    /// <returns>Those that did not.</returns>
    private List<Note> SideNotes(IEnumerable<Note> notes)
    {
        var x = bed.Labelled.X1 + SheetFormat.Gap;
        var at = bed.Box.Y0;
        var rest = new List<Note>();
        foreach (var note in notes)
        {
            var block = Block.Of(note, paper, Room.X1 - x);
            if (at + block.Height > bed.Bottom) { rest.Add(note); continue; }
            block.Draw(paper, new(x, at));
            at += block.Height + Block.Gap;
        }
        return rest;
    }

    /// <summary>Sets a block left of the section if it fits there whole.</summary>
    private bool Below(Block block)
    {
        if (y + block.Height > leftBottom) return false;
        block.Draw(paper, new(Room.X0, y));
        y += block.Height + Block.Gap;
        return true;
    }

    /// <summary>The rest in two columns, page after page; the right column ends above the title block.</summary>
    private void Overleaf(List<Func<Paper, double, Block>> blocks)
    {
        var width = (Room.Width - SheetFormat.Gap) / 2;
        var right = true;   // as if the last column were full
        double top = 0, bottom = 0;
        void NextColumn()
        {
            right = !right;
            if (!right) { NewPage(); top = y; }
            (y, bottom) = (top, right ? FullBottom : leftBottom);
        }
        NextColumn();
        foreach (var make in blocks)
        {
            var block = make(paper, width);
            if (y > top && y + (block.Whole ? block.Height : block.Head.Height + block.Rows[0].Height) > bottom) NextColumn();
            var begun = false;
            foreach (var row in block.Rows)
            {
                if (begun && y + row.Height > bottom)
                {
                    NextColumn();
                    begun = false;
                }
                var x = right ? Room.X1 - width : Room.X0;
                if (!begun)
                {
                    block.Head.Draw(paper, new(x, y));
                    y += block.Head.Height;
                    begun = true;
                }
                row.Draw(paper, new(x, y));
                y += row.Height;
            }
            y += 2 * Block.Gap;
        }
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
        return $"Set-up {setUp.Order} of {input.SetUps}{after}{before}; {Written.Minutes(setUp.Programs.Sum(e => e.Seconds))} min";
    }

    private static readonly Column[] ProgramColumns =
    [
        new("Program", 31, Strong: true), new("Cutter", 41), new("What it cuts", 43), new("Stick-out", 14, Align.Right, true),
        new("Turns/min", 15, Align.Right, true), new("mm/min", 12.5, Align.Right, true), new("min", 8, Align.Right, true),
    ];

    private static string[] Cells(ProgramEntry program) =>
    [
        Path.GetFileNameWithoutExtension(program.File), $"{program.Cutter.Name}, {CutterWords.Of(program.Cutter)}", Cuts(program), Written.Millimetres(program.Cutter.StickOut),
        Written.TurnsPerMinute(program.SpindleSpeed), Written.PerMinute(program.Feed), Written.Minutes(program.Seconds),
    ];

    /// <summary>What is cut, each thing once: the stages of one thing differ only after the comma.</summary>
    private static string Cuts(ProgramEntry program) =>
        string.Join(", ", program.Operations.Select(o => o.Name.Split(", ")[0]).Distinct());

    private double ProgramsHeight() =>
        Lettering.Heading.LineHeight + Table.HeadHeight + setUp.Programs.Sum(p => new Table(paper, Room.X0, ProgramColumns).HeightOf(Cells(p))) + SheetFormat.Gap;

    private void Programs()
    {
        var open = false;
        foreach (var program in setUp.Programs)
        {
            var table = new Table(paper, Room.X0, ProgramColumns);
            var cells = Cells(program);
            var needed = table.HeightOf(cells) + (open ? 0 : Lettering.Heading.LineHeight + Table.HeadHeight);
            if (y + needed > FullBottom)
            {
                NewPage();
                table = new Table(paper, Room.X0, ProgramColumns);
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

    private void Heading(string text)
    {
        paper.Text(new(Room.X0, y + Lettering.Heading.CapHeight), text, Lettering.Heading);
        y += Lettering.Heading.LineHeight;
    }
}
