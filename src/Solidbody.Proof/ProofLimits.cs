using Solidbody.Geometry;

namespace Solidbody.Proof;

/// <summary>What a proof lets pass, mm, each with its reason.</summary>
internal static class ProofLimits
{
    /// <summary>Deepest cut into the finished part.</summary>
    public const double Gouge = Tolerances.Gouge;
    /// <summary>Most wood left on flat floors and upright walls, and on carved faces above their stated ridges: what one pass of sanding takes (common practice, no source).</summary>
    public const double Leftover = 0.05;
    /// <summary>Wood a rapid may touch: rounding of the program's text and chords of its arcs, no more.</summary>
    public const double Rapid = 0.01;
    /// <summary>Wood a shank, a collet or an edge may touch, for the same reason.</summary>
    public const double Touch = 0.02;
    /// <summary>How far outside the outline wood counts as left on the part rather than as waste.</summary>
    public const double OutlineBand = 1.5;
    /// <summary>How far off its stated place or width a dowel's hole may be.</summary>
    public const double Dowel = 0.1;
    /// <summary>Longest tab that may excuse wood (common practice, no source: 6 to 12 mm hold an instrument's part).</summary>
    public const double TabLength = 20;
    /// <summary>How far off the outline a tab's middle may be said to lie.</summary>
    public const double TabOff = 0.5;
    /// <summary>Of the outline, what tabs may take together.</summary>
    public const double TabsOfOutline = 0.1;
    /// <summary>Of the blank's thickness, what a tab may take.</summary>
    public const double TabOfThickness = 0.5;
    /// <summary>Thickest skin under an outline that may excuse wood: more is no skin but a part half cut out (common practice, no source). Where the other side shapes its edge, or has a ledge there, the skin stands above it.</summary>
    public const double Skin = 2, SkinOverEdge = 12;
    /// <summary>What a coordinate may lie outside the travel by rounding.</summary>
    public const double Travel = Tolerances.Output;
    /// <summary>Source named where the limit is the tool's own.</summary>
    public const string OwnTolerance = "stated tolerance of this tool, docs/checks";
}
