using Solidbody.Geometry;

namespace Solidbody.Packet.Sheets;

/// <summary>Sets notes one under another in a column, as many as find room whole.</summary>
internal static class NoteColumn
{
    private const double BetweenNotes = 2.6;
    private const double Padding = 1.8;

    /// <summary>Draws every note of the list that still finds room whole, in order, and takes it off the list.</summary>
    /// <returns>Where the next one would begin.</returns>
    public static double Draw(Paper paper, List<Note> notes, double x, double y, double width, double bottom)
    {
        foreach (var note in notes.ToArray())
        {
            var pad = note.Boxed ? Padding : 0;
            var lines = note.Sentences.SelectMany(s => paper.Wrap(s, Lettering.Note, width - 2 * pad)).ToList();
            var head = Lettering.NoteHeading.LineHeight;
            var height = 2 * pad + head + lines.Count * Lettering.Note.LineHeight;
            if (y + height > bottom) continue;
            if (note.Boxed) paper.Rectangle(new Box2(x, y, x + width, y + height), new(0.35, 1.2, 0.8));
            paper.Text(new(x + pad, y + pad + Lettering.NoteHeading.CapHeight), note.Heading, Lettering.NoteHeading);
            for (var i = 0; i < lines.Count; i++)
                paper.Text(new(x + pad, y + pad + head + i * Lettering.Note.LineHeight + Lettering.Note.CapHeight), lines[i], Lettering.Note);
            y += height + BetweenNotes;
            notes.Remove(note);
        }
        return y;
    }
}
