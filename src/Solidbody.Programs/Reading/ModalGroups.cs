namespace Solidbody.Programs.Reading;

/// <summary>Groups of G and M words of which a block holds at most one (NISTIR 6556, table 4, from memory).</summary>
internal enum ModalGroup
{
    None,
    NonModal, Motion, Plane, Distance, FeedMode, Units, RadiusCompensation, LengthOffset, ReturnMode, CoordinateSystem, PathControl,
    Stopping, ToolChange, Spindle, Coolant, Overrides,
}

/// <summary>Which group a G or M word belongs to, and which words this subset takes.</summary>
internal static class ModalGroups
{
    public const int Count = (int)ModalGroup.Overrides + 1;
    public const string SupportedG = "G0 G1 G2 G3 G4 G17 G20 G21 G40 G43 G49 G54 G80 G81 G82 G83 G90 G91 G94 G98 G99";
    public const string SupportedM = "M0 M1 M2 M3 M5 M6 M7 M8 M9 M30";

    /// <param name="tenths">The number of the G word in tenths: 10 for G1, 591 for G59.1.</param>
    public static ModalGroup OfG(int tenths) => tenths switch
    {
        40 or 100 or 280 or 300 or 530 or 920 or 921 or 922 or 923 => ModalGroup.NonModal,
        0 or 10 or 20 or 30 or 382 or >= 800 and <= 890 when tenths % 10 == 0 || tenths == 382 => ModalGroup.Motion,
        170 or 180 or 190 => ModalGroup.Plane,
        900 or 910 => ModalGroup.Distance,
        930 or 940 => ModalGroup.FeedMode,
        200 or 210 => ModalGroup.Units,
        400 or 410 or 420 => ModalGroup.RadiusCompensation,
        430 or 490 => ModalGroup.LengthOffset,
        980 or 990 => ModalGroup.ReturnMode,
        540 or 550 or 560 or 570 or 580 or 590 or 591 or 592 or 593 => ModalGroup.CoordinateSystem,
        610 or 611 or 640 => ModalGroup.PathControl,
        _ => ModalGroup.None,
    };

    public static bool TakesG(int tenths) => tenths is 0 or 10 or 20 or 30 or 40 or 170 or 200 or 210 or 400 or 430 or 490 or 540 or 800 or 810 or 820 or 830 or 900 or 910 or 940 or 980 or 990;

    public static ModalGroup OfM(int number) => number switch
    {
        0 or 1 or 2 or 30 or 60 => ModalGroup.Stopping,
        6 => ModalGroup.ToolChange,
        3 or 4 or 5 => ModalGroup.Spindle,
        7 or 8 or 9 => ModalGroup.Coolant,
        48 or 49 => ModalGroup.Overrides,
        _ => ModalGroup.None,
    };

    public static bool TakesM(int number) => number is 0 or 1 or 2 or 3 or 5 or 6 or 7 or 8 or 9 or 30;

    /// <summary>Why a word that the full language has is not taken here.</summary>
    public static string WhyNot(ModalGroup group, int number) => group switch
    {
        ModalGroup.Plane => "arcs are cut in the XY plane only",
        ModalGroup.FeedMode => "feeds are given a minute only",
        ModalGroup.RadiusCompensation => "the cutter's radius is already in the path; a controller that adds it again cuts beside the line",
        ModalGroup.CoordinateSystem => "a set-up has one zero, G54",
        ModalGroup.Motion => "of cycles only drilling is taken, G81 to G83, and nothing is probed",
        ModalGroup.Spindle => "the cutters here cut turning clockwise",
        ModalGroup.Stopping => "there is no pallet to change",
        ModalGroup.NonModal when number is 28 or 30 or 53 => "it moves in coordinates the set-up does not know",
        ModalGroup.NonModal => "it would move the zero while the program runs",
        ModalGroup.Overrides or ModalGroup.PathControl => "many small controllers lack it",
        _ => "it is not a word of this language",
    };
}
