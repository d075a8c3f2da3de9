using System.Collections.Immutable;
using Solidbody.Drawings;
using Solidbody.Findings;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>Drawings that an instrument file names: found beside it, read, their mistakes kept for its own.</summary>
sealed class DrawingDesk(IDrawings? shelf)
{
    readonly List<Mistake> _mistakes = [];

    /// <summary>What is wrong in the drawings themselves.</summary>
    public ImmutableArray<Mistake> Mistakes => [.. _mistakes];

    /// <summary>The drawing of a name, with one loop; null when it is refused.</summary>
    public (DrawingFile File, Drawing Drawing)? Open(TableReader outline, string name, DrawingWish wish)
    {
        if (!IsPlain(name))
        {
            outline.Refuse(DrawingSection.Key, $"\"{name}\" is not a drawing's name", "a file name without folders, of letters, digits, blanks, - _ and points, ending in .svg or .dxf", "lay the drawing beside this file, and give its name");
            return null;
        }
        var found = shelf?.Find(name) ?? new FoundDrawing(null, $"there is no {name} to be read here", "give the drawing together with this file");
        if (found.File is not { } file)
        {
            outline.Refuse(DrawingSection.Key, found.Wrong, "an SVG or DXF in the same folder as this file", found.Remedy);
            return null;
        }
        var read = DrawingReader.ReadOutline(file, wish);
        if (read.IsGood) return (file, read.Good);
        _mistakes.AddRange(read.Mistakes);
        outline.Refuse(DrawingSection.Key, $"{name} cannot be used as an outline: {(read.Mistakes.Length == 1 ? "one mistake" : $"{read.Mistakes.Length} mistakes")}", "a drawing of one closed line", "see what is told about the drawing itself");
        return null;
    }

    /// <summary>Nothing that could leave the folder, or be taken for something else in a packet.</summary>
    static bool IsPlain(string name) =>
        (name.EndsWith(".svg", StringComparison.OrdinalIgnoreCase) || name.EndsWith(".dxf", StringComparison.OrdinalIgnoreCase))
        && name.Length > 4 && name[0] != '.' && name.All(c => char.IsAsciiLetterOrDigit(c) || c is ' ' or '-' or '_' or '.');
}
