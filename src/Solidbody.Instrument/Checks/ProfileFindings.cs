using System.Globalization;
using Solidbody.Findings;

namespace Solidbody.Instrument.Checks;

/// <summary>What can be wrong with the section of the neck's back.</summary>
public static class ProfileFindings
{
    public static Finding Hollow(int fret, double e) =>
        new("PROFILE-01", Severity.Warns, $"neck's section at fret {fret}", string.Create(CultureInfo.InvariantCulture, $"bends inward at {Math.Abs(e):0.00} of the half width, {(e < 0 ? "bass" : "treble")} side"), "convex all the way across", Limits.OwnShapes, "raise middle or shoulders, or bring the apex nearer to the middle.") { Title = "the neck's section is hollow" };

    public static Finding SteepEdge(int fret, double angle) =>
        new("PROFILE-02", Severity.Warns, $"neck's section at fret {fret}", string.Create(CultureInfo.InvariantCulture, $"{double.RadiansToDegrees(angle):0.0}° steep beside the board"), string.Create(CultureInfo.InvariantCulture, $"at most {double.RadiansToDegrees(Limits.SteepestEdge):0}°"), Limits.OwnShapes, "lower the edge or the shoulders, or take a thicker lip: passes leave ridges on a face this steep.") { Title = "the neck's section stands too steep at its edge" };
}
