namespace Solidbody.Geometry.Arcs;

/// <summary>A stretch of raw offset between two meetings, or a whole loop of it.</summary>
internal sealed class OffsetRun(List<Segment> segments, bool closed)
{
    public List<Segment> Segments { get; } = segments;
    /// <summary>A whole loop that nothing meets.</summary>
    public bool Closed { get; } = closed;
    public Point2 From => Segments[0].From;
    public Point2 To => Segments[^1].To;
    public double Length { get; } = segments.Sum(s => s.Length);
    /// <summary>Whether the run certainly belongs to the offset; one that may lie a hair too near to the source serves only to close a loop.</summary>
    public bool Certain { get; set; }
    public bool Used { get; set; }

    /// <summary>The middle of its longest segment.</summary>
    public Point2 Middle => Segments.MaxBy(s => s.Length).At(0.5);

    /// <summary>The point a distance along it from its start, or from its end when negative.</summary>
    public Point2 At(double distance)
    {
        if (distance < 0) distance += Length;
        foreach (var s in Segments)
        {
            if (distance <= s.Length && s.Length > 0) return s.At(distance / s.Length);
            distance -= s.Length;
        }
        return To;
    }
}
