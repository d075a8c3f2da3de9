using PdfSharp.Fonts;

namespace Solidbody.Packet.Fonts;

/// <summary>The faces on paper. Each carries its own font file, so nothing depends on the fonts of the machine that prints.</summary>
internal enum Face { Text, Strong, Heavy, Title, Signs }

/// <summary>Gives the PDF writer our own font files and no others.</summary>
internal sealed class SheetFonts : IFontResolver
{
    /// <summary>What Overpass lacks and the signs' font has.</summary>
    public const string Signs = "⌀∅∠✓";

    private static readonly Lock Gate = new();
    private static bool set;

    /// <summary>Hands the resolver to the library, once a process.</summary>
    public static void Use()
    {
        lock (Gate)
        {
            if (set) return;
            GlobalFontSettings.FontResolver ??= new SheetFonts();
            set = true;
        }
    }

    public static string FileOf(Face face) => face switch
    {
        Face.Text => "SheetText-Regular.ttf",
        Face.Strong => "SheetText-SemiBold.ttf",
        Face.Heavy => "SheetText-Bold.ttf",
        Face.Title => "SheetTitle-Bold.ttf",
        Face.Signs => "SheetSigns-Regular.ttf",
        _ => throw new ArgumentOutOfRangeException(nameof(face), face, "No such face."),
    };

    /// <summary>A family is asked for by its file's name, so that weights need no style flags.</summary>
    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) => new(familyName);

    public byte[] GetFont(string faceName)
    {
        using var stream = typeof(SheetFonts).Assembly.GetManifestResourceStream(faceName)
            ?? throw new ArgumentException($"The font {faceName} is not among the embedded ones.", nameof(faceName));
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
