using Solidbody.Geometry;

namespace Solidbody.Packet.Sheets;

/// <summary>The sheet's own measures, mm: A4 upright (ISO 216), frame 20 mm at the filing edge and 10 mm else (ISO 5457).</summary>
internal static class SheetFormat
{
    public const double Width = 210;
    public const double Height = 297;
    public static Box2 Frame { get; } = new(20, 10, 200, 287);
    /// <summary>What is written on: the frame less its inner margin.</summary>
    public static Box2 Room { get; } = new(24, 14, 196, 284);
    /// <summary>Room for the bed with its axes; the side notes stand to its right.</summary>
    public static Box2 Bed { get; } = new(21.5, 29, 158, 165);
    /// <summary>Narrowest column of side notes.</summary>
    public const double SideNotes = 34;
    public static Box2 TitleBlock { get; } = new(138, 243, 200, 287);
    /// <summary>Between columns.</summary>
    public const double Gap = 4;
    /// <summary>Length of the line that checks the print.</summary>
    public const double CheckLine = 50;

    /// <summary>The scales a drawing may have, one to so many, largest first (ISO 5455: 1:1, 1:2, 1:5, 1:10, 1:20).</summary>
    public static IReadOnlyList<int> Scales { get; } = [1, 2, 5, 10, 20, 50];

    /// <summary>The largest standard scale at which so much fits into so much room.</summary>
    public static int ScaleFor(double width, double height, double roomWidth, double roomHeight) =>
        Scales.FirstOrDefault(s => width / s <= roomWidth && height / s <= roomHeight, Scales[^1]);
}
