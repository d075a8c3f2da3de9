using Solidbody.Geometry;

namespace Solidbody.Instrument;

/// <summary>One measure a maker would take on the cut part, with what the instrument file says it should be.</summary>
/// <param name="Name">For people: <c>neck thickness at fret 1</c>.</param>
/// <param name="Expected">From the file's own figures, mm.</param>
/// <param name="Tolerance">± mm.</param>
/// <param name="Caliper">How it is taken.</param>
public sealed record Measure(string Name, double Expected, double Tolerance, Caliper Caliper);

/// <summary>A way of taking a measure on wood, part frame, mm.</summary>
public abstract record Caliper
{
    /// <summary>Wood between bottom and top at a point.</summary>
    public sealed record Thickness(Point2 At) : Caliper;
    /// <summary>Height of the top surface at a point above a level: negative for a depth. Reports |top − Level|.</summary>
    public sealed record DepthFromTop(Point2 At, double Level) : Caliper;
    /// <summary>Height of the bottom surface at a point from a level. Reports |bottom − Level|.</summary>
    public sealed record DepthFromBottom(Point2 At, double Level) : Caliper;
    /// <summary>How much lower the top surface lies at one point than at another: the difference of two depths.</summary>
    public sealed record Fall(Point2 High, Point2 Low) : Caliper;
    /// <summary>Length of the run of wood through <paramref name="Middle"/> along <paramref name="Along"/> (unit), at height Z.</summary>
    public sealed record Outside(Point2 Middle, Point2 Along, double Z, double Search) : Caliper;
    /// <summary>Length of the run without wood through the middle, at height Z.</summary>
    public sealed record Inside(Point2 Middle, Point2 Along, double Z, double Search) : Caliper;
    /// <summary>Where the middle of the run without wood lies along the line: signed distance of that middle from <paramref name="Origin"/> along <paramref name="Along"/>.
    /// The search starts at Origin + At·Along and goes <paramref name="Search"/> to both sides.</summary>
    public sealed record InsideCentre(Point2 Origin, Point2 Along, double At, double Z, double Search) : Caliper;
    /// <summary>Where the run without wood ends, going along the line: signed distance of that wall from <paramref name="Origin"/>. The room may be open behind.
    /// The search starts at Origin + At·Along and goes <paramref name="Search"/> onward.</summary>
    public sealed record InsideEnd(Point2 Origin, Point2 Along, double At, double Z, double Search) : Caliper;
}
