namespace Solidbody.Drawings;

/// <summary>A drawing as it lies on the disk.</summary>
/// <param name="Name">File name with its ending: <c>.svg</c> or <c>.dxf</c> says how it is read.</param>
/// <param name="Content">The bytes as they are.</param>
public sealed record DrawingFile(string Name, ReadOnlyMemory<byte> Content)
{
    public bool IsSvg => Name.EndsWith(".svg", StringComparison.OrdinalIgnoreCase);
    public bool IsDxf => Name.EndsWith(".dxf", StringComparison.OrdinalIgnoreCase);
}
