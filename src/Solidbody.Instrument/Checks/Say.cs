using System.Globalization;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Checks;

/// <summary>Figures as findings say them.</summary>
internal static class Say
{
    public static string Mm(double v) => v.ToString("0.00", CultureInfo.InvariantCulture) + " mm";
    /// <summary>Already in degrees.</summary>
    public static string Degrees(double v) => v.ToString("0.0", CultureInfo.InvariantCulture) + "°";
    public static string Cents(double v) => v.ToString("0.00", CultureInfo.InvariantCulture) + " cents";
    public static string At(Point2 p) => string.Create(CultureInfo.InvariantCulture, $"x {p.X:0.0}, y {p.Y:0.0}");
    public static string At(PartPoint p) => string.Create(CultureInfo.InvariantCulture, $"x {p.X:0.0}, y {p.Y:0.0}, z {p.Z:0.0}");
    public static string AtLeast(double v) => "at least " + Mm(v);
    public static string AtMost(double v) => "at most " + Mm(v);
    public static string Newtons(double v) => v.ToString("0.0", CultureInfo.InvariantCulture) + " N";
}
