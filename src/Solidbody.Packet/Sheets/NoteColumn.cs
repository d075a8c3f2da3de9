using Solidbody.Geometry;

namespace Solidbody.Packet.Sheets;

/// <summary>Sets notes one under another in a column, as many as find room whole.</summary>
internal static class NoteColumn
{
    private const double BetweenNotes = 3.2;
    private const double Padding = 1.8;

    /// <summary>Draws notes from the list's front and takes them off it.</summary>
    /// <returns>Where the next one would begin.</returns>
    public static double Draw(Paper paper, List<Note> notes, double x, double y, double width, double bottom)
    {
        while (notes.Count > 0)
        {
            var note = notes[0];
            var pad = note.Boxed ? Padding : 0;
            var lines = note.Sentences.SelectMany(s => paper.Wrap(s, Lettering.Body, width - 2 * pad)).ToList();
            var head = Lettering.Heading.LineHeight;
            var height = 2 * pad + head + lines.Count * Lettering.Body.LineHeight;
            if (y + height > bottom) break;
            if (note.Boxed) paper.Rectangle(new Box2(x, y, x + width, y + height), new(0.35, 1.2, 0.8));
            paper.Text(new(x + pad, y + pad + Lettering.Heading.CapHeight), note.Heading, Lettering.Heading);
            for (var i = 0; i < lines.Count; i++)
                paper.Text(new(x + pad, y + pad + head + i * Lettering.Body.LineHeight + Lettering.Body.CapHeight), lines[i], Lettering.Body);
            y += height + BetweenNotes;
            notes.RemoveAt(0);
        }
        return y;
    }
}
