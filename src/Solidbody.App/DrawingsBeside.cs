using Solidbody.Drawings;

namespace Solidbody.App;

/// <summary>Drawings in the folder of the file that names them; nothing outside it is opened.</summary>
/// <param name="instrumentPath">The instrument file.</param>
public sealed class DrawingsBeside(string instrumentPath) : IDrawings
{
    public FoundDrawing Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var path = Path.Combine(Path.GetDirectoryName(Path.GetFullPath(instrumentPath)) ?? "", Path.GetFileName(name));
        try
        {
            // A link could lead anywhere.
            if (new FileInfo(path).LinkTarget is not null) return new(null, $"{name} is a link to another file", "lay the drawing itself beside this file");
            return new(new(name, Files.ReadBytes(path, DrawingLimits.Bytes)));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new(null, e.Message.TrimEnd('.'), "lay the drawing beside this file, and check its name and size");
        }
    }
}
