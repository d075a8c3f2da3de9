namespace Solidbody.Drawings;

/// <summary>How much drawing is read: some ten times a careful outline, and so little that the worst file is refused at once.</summary>
public static class DrawingLimits
{
    /// <summary>Bytes of a file.</summary>
    public const int Bytes = 4 << 20;
    /// <summary>Elements of an SVG, groups of a DXF (a code and its value).</summary>
    public const int Elements = 50_000, Groups = 800_000;
    /// <summary>Elements inside one another; copies (<c>use</c>, INSERT) inside one another.</summary>
    public const int Nesting = 64, CopyNesting = 8;
    /// <summary>Shapes drawn, copies counted each time.</summary>
    public const int Shapes = 20_000;
    /// <summary>Points after curves became chords. In the worst drawing every pair has to be compared: of twenty thousand that is a second.</summary>
    public const int Points = 20_000;
    /// <summary>Furthest from the drawing's origin, mm: ten metres.</summary>
    public const double Reach = 10_000;
    /// <summary>Smallest loop, mm²: what is smaller is a speck, not a part.</summary>
    public const double LeastArea = 1;
    /// <summary>Mistakes told in one go.</summary>
    public const int Mistakes = 20;
    /// <summary>Degree of a spline.</summary>
    public const int Degree = 10;
}
