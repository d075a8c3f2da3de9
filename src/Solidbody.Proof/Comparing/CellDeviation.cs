using Solidbody.Geometry;

namespace Solidbody.Proof.Comparing;

/// <summary>How far one column of cut wood is from the part, face by face.</summary>
/// <param name="Front">Signed deviation, mm: + wood left, − cut too deep; NaN when not compared.</param>
/// <param name="Back">The same from the back.</param>
internal readonly record struct CellDeviation(double Front, double Back)
{
    public static CellDeviation None => new(double.NaN, double.NaN);
    public double On(Side face) => face == Side.Front ? Front : Back;
}
