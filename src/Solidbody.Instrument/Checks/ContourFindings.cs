using Solidbody.Findings;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Checks;

/// <summary>What can be wrong with arm and belly contours.</summary>
public static class ContourFindings
{
    public static Finding TooThin(Point2 at, double left) =>
        new("CONTOUR-01", left > 0 ? Severity.Warns : Severity.Stops, $"body, contours, {Say.At(at)}", $"{Say.Mm(left)} of wood between front and back", Say.AtLeast(Limits.BetweenContours), Limits.OwnShapes, "flatten a contour's angle, or move its place outward.") { Title = "the contours leave little wood between them" };

    public static Finding AtFeature(string contour, string feature, double removed) =>
        new("CONTOUR-02", Severity.Stops, $"body, {contour} at {feature}", $"it takes {Say.Mm(removed)} off the face there", "nothing where something stands or opens", Limits.OwnShapes, $"move the {contour} away from {feature}, or shorten its blend.") { Title = "a contour reaches hardware or a room" };

    public static Finding TooTight(double radius) =>
        new("CONTOUR-04", Severity.Warns, "body, belly contour", $"its sides are hollowed to a radius of {Say.Mm(radius)}", Say.AtLeast(Limits.HollowRadius), Limits.OwnShapes, "lengthen window_blend, or flatten the angle.") { Title = "a contour's hollow is tighter than a ball-end" };

    public static Finding TakesNothing(string contour) =>
        new("CONTOUR-05", Severity.Warns, $"body, {contour}", "it takes no wood off the body", "a place at the body's edge", Limits.OwnFile, "move its place toward the middle, or turn its direction outward.") { Title = "a contour misses the body" };
}
