using System.Collections.Immutable;
using Solidbody.Geometry;

namespace Solidbody.Packet.Sheets;

/// <summary>Something that is set in one go: how high it is, and how it is drawn from its upper left corner.</summary>
internal sealed record Piece(double Height, Action<Paper, Point2> Draw);

/// <summary>A heading with rows under it, set for one width. Rows are never broken; a whole block is not parted where it can be helped.</summary>
internal sealed record Block(Piece Head, ImmutableArray<Piece> Rows, bool Whole)
{
    private const double Padding = 1.8;
    private const double NumberRoom = 5;
    private static readonly Stroke NoteFrame = new(0.35, 1.2, 0.8);

    /// <summary>Between blocks.</summary>
    public const double Gap = 2.6;

    public double Height => Head.Height + Rows.Sum(r => r.Height);

    public void Draw(Paper paper, Point2 at)
    {
        Head.Draw(paper, at);
        var y = at.Y + Head.Height;
        foreach (var row in Rows)
        {
            row.Draw(paper, at with { Y = y });
            y += row.Height;
        }
    }

    /// <summary>A note's sentences, numbered where they are steps.</summary>
    public static Block Of(Note note, Paper paper, double width)
    {
        var pad = note.Boxed ? Padding : 0;
        var indent = note.Steps ? NumberRoom : 0;
        var rows = note.Sentences.Select((s, i) =>
        {
            var lines = paper.Wrap(s, Lettering.Note, width - 2 * pad - indent);
            return new Piece(lines.Count * Lettering.Note.LineHeight + (note.Steps ? 0.7 : 0), (p, at) =>
            {
                var baseline = at.Y + Lettering.Note.CapHeight;
                if (note.Steps) p.Text(new(at.X + indent - 1.6, baseline), Drawing.Written.Whole(i + 1), Lettering.Note, Align.Right);
                foreach (var line in lines)
                {
                    p.Text(new(at.X + pad + indent, baseline), line, Lettering.Note);
                    baseline += Lettering.Note.LineHeight;
                }
            });
        }).ToImmutableArray();
        var headHeight = Lettering.NoteHeading.LineHeight;
        if (!note.Boxed) return new(new(headHeight, (p, at) => Heading(p, at, note.Heading)), rows, Whole: true);
        var whole = headHeight + rows.Sum(r => r.Height) + 2 * pad;
        return new(new(headHeight + pad, (p, at) =>
        {
            p.Rectangle(new(at.X, at.Y, at.X + width, at.Y + whole), NoteFrame);
            Heading(p, at + new Point2(pad, pad), note.Heading);
        }), [.. rows, new(pad, (_, _) => { })], Whole: true);
    }

    private static void Heading(Paper paper, Point2 at, string text) => paper.Text(at + new Point2(0, Lettering.NoteHeading.CapHeight), text, Lettering.NoteHeading);
}
