using Solidbody.Packet.Fonts;

namespace Solidbody.Packet.Sheets;

/// <summary>A face at a size: how a piece of text is set. Sizes in millimetres.</summary>
internal readonly record struct Lettering(Face Face, double Size)
{
    private const double Point = 25.4 / 72;

    /// <summary>Smallest letters on any sheet: the field names of the title block.</summary>
    public const double LeastSize = 7 * Point;

    public static Lettering Title { get; } = new(Face.Title, 17 * Point);
    public static Lettering Lead { get; } = new(Face.Text, 9.5 * Point);
    public static Lettering Heading { get; } = new(Face.Heavy, 10 * Point);
    public static Lettering Body { get; } = new(Face.Text, 9 * Point);
    public static Lettering BodyStrong { get; } = new(Face.Strong, 9 * Point);
    public static Lettering Note { get; } = new(Face.Text, 8.5 * Point);
    public static Lettering NoteHeading { get; } = new(Face.Heavy, 9 * Point);
    public static Lettering Small { get; } = new(Face.Text, 8 * Point);
    public static Lettering SmallStrong { get; } = new(Face.Strong, 8 * Point);
    public static Lettering Drawing { get; } = new(Face.Text, 3.1);
    public static Lettering DrawingHeavy { get; } = new(Face.Heavy, 3.1);
    public static Lettering Field { get; } = new(Face.Text, LeastSize);
    public static Lettering FieldValue { get; } = new(Face.Strong, 8.5 * Point);
    public static Lettering FieldName { get; } = new(Face.Strong, 10.5 * Point);

    /// <summary>Height of capitals; text is placed by it.</summary>
    public double CapHeight => 0.70 * Size;
    /// <summary>From one baseline to the next.</summary>
    public double LineHeight => 1.28 * Size;
}
