namespace Solidbody.Proof.Comparing;

/// <summary>How far one column of cut wood is from the part, face by face.</summary>
/// <param name="Front">Signed deviation, mm: + wood left, − cut too deep; NaN when not compared.</param>
/// <param name="Back">The same from the back.</param>
internal readonly record struct CellDeviation(double Front, double Back)
{
    public static CellDeviation None => new(double.NaN, double.NaN);

    /// <summary>The faces that are at least so far off; 0 for the others.</summary>
    public CellDeviation AtLeast(double far) => new(Math.Abs(Front) >= far ? Front : 0, Math.Abs(Back) >= far ? Back : 0);
    /// <summary>These, and another's where these are 0.</summary>
    public CellDeviation Or(CellDeviation other) => new(Front != 0 ? Front : other.Front, Back != 0 ? Back : other.Back);
}
