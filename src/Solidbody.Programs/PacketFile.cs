using Solidbody.Findings;
using Solidbody.Programs.Json;

namespace Solidbody.Programs;

/// <summary>The packet's index as text: <c>packet.json</c>, described key by key in <c>docs/packet.md</c> and <c>docs/packet.schema.json</c>.</summary>
public static class PacketFile
{
    /// <summary>The only version of the format there is.</summary>
    public const int FormatVersion = 1;

    /// <summary>Deterministic text: two blanks of indent, LF, keys in the order of the documentation.</summary>
    /// <remarks>Lengths are rounded to 1e-6 mm, the placement's factors to 1e-12, minutes to 1e-4, speeds and angles to 1e-6 of their unit.</remarks>
    /// <exception cref="ArgumentException">A number is not finite, a file name leaves the packet's folder, or the version is another one.</exception>
    public static string Write(PacketIndex index)
    {
        ArgumentNullException.ThrowIfNull(index);
        return IndexWriter.Write(index);
    }

    /// <summary>The index, or every mistake of shape, type, range and name in it, with line and column.</summary>
    public static Result<PacketIndex> Read(string text, string fileName)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(fileName);
        var mistakes = new MistakeList(fileName);
        if (JsonTree.Parse(text, mistakes) is not { } tree) return new(null, mistakes.ToImmutable());
        var index = new IndexReader(mistakes).Read(tree);
        return mistakes.Count > 0 ? new(null, mistakes.ToImmutable()) : new(index, []);
    }
}
