namespace Solidbody.Instrument;

/// <summary>Ranges of the measures that may be left free, mm and degrees: what the file may say is what a solution may be.</summary>
internal static class FreeRange
{
    public static readonly (double Least, double Most) Depth = (8, 30), Heel = (14, 30), Shim = (0, 6), Base = (0, 30), Above = (0, 15), AngleDegrees = (-1, 6);
}
