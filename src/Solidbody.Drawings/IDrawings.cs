namespace Solidbody.Drawings;

/// <summary>Where the drawings lie that an instrument file names.</summary>
public interface IDrawings
{
    /// <param name="name">A plain file name: no folder, no drive.</param>
    FoundDrawing Find(string name);
}

/// <summary>A drawing, or why there is none.</summary>
/// <param name="Wrong">One clause; empty when there is a file.</param>
/// <param name="Remedy">What to do.</param>
public sealed record FoundDrawing(DrawingFile? File, string Wrong = "", string Remedy = "");
