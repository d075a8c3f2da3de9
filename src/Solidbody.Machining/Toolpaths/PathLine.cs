using Solidbody.Geometry;
using Solidbody.Geometry.Arcs;

namespace Solidbody.Machining.Toolpaths;

/// <summary>A line of straights and arcs in the plan, walked by its length: station 0 at the first point. Closed lines go round without end, both ways.</summary>
internal sealed class PathLine
{
    private readonly Segment[] segments;
    private readonly double[] marks;    // station of each joint, both ends among them
    private Point2[]? points;

    private PathLine(IEnumerable<Segment> segments, bool closed)
    {
        Closed = closed;
        this.segments = [.. segments];
        marks = new double[this.segments.Length + 1];
        for (var i = 0; i < this.segments.Length; i++) marks[i + 1] = marks[i] + this.segments[i].Length;
    }

    public PathLine(ArcLoop loop) : this(loop.Segments, true) { }

    public PathLine(Loop loop) : this(ArcLoop.Of(loop)) { }

    /// <summary>A line of chords.</summary>
    public PathLine(IReadOnlyList<Point2> through, bool closed) : this(through.Zip(through.Skip(1).Concat(closed ? [through[0]] : []), Segment.Line), closed) { }

    public bool Closed { get; }
    /// <summary>The same way back; the closed line's station 0 stays where it is.</summary>
    public PathLine Reversed => new(Enumerable.Reverse(segments).Select(s => s.Reversed), Closed);
    public double Length => marks[^1];

    /// <summary>Points along the line, no arc further than <see cref="Tolerances.Flattening"/> from the chords between them; the first again at the end of a closed one.</summary>
    public ReadOnlySpan<Point2> Points => points ??= [.. segments.SelectMany(s => s.Chords()).Prepend(segments[0].From)];

    /// <summary>The line in steps, each within <see cref="Tolerances.Flattening"/> of its chord: its length along the line, and the chord.</summary>
    public IEnumerable<(double Length, Point2 Chord)> Steps()
    {
        foreach (var s in segments)
        {
            var (from, ends) = (s.From, s.Chords().ToArray());
            foreach (var end in ends)
            {
                yield return (s.Length / ends.Length, end - from);
                from = end;
            }
        }
    }

    public Point2 At(double station)
    {
        var (i, share) = Locate(station);
        return segments[i].At(share);
    }

    /// <summary>Direction of travel, length 1.</summary>
    public Point2 Direction(double station)
    {
        var (i, share) = Locate(station);
        return segments[i].Direction(share);
    }

    /// <summary>Station of the point of the line nearest to p; the first of equals.</summary>
    public double Nearest(Point2 p)
    {
        var (best, at) = (double.PositiveInfinity, 0);
        for (var i = 0; i < segments.Length; i++)
            if (segments[i].DistanceTo(p) is var d && d < best) (best, at) = (d, i);
        return marks[at] + segments[at].Nearest(p) * segments[at].Length;
    }

    public double DistanceTo(Point2 p) => segments.Min(s => s.DistanceTo(p));

    /// <summary>Station at the middle of the longest straight, or of the longest arc where all are arcs: a calm place to start.</summary>
    public double MiddleOfLongestChord()
    {
        var best = 0;
        for (var i = 1; i < segments.Length; i++)
            if ((!segments[i].IsArc, segments[i].Length).CompareTo((!segments[best].IsArc, segments[best].Length)) > 0) best = i;
        return (marks[best] + marks[best + 1]) / 2;
    }

    /// <summary>Stations of the joints met on the way, then the end itself; up or down, over the seam of a closed line.</summary>
    public IEnumerable<double> Stations(double from, double to)
    {
        var up = to >= from;
        var (low, high) = up ? (from, to) : (to, from);
        var laps = Closed ? (First: (int)Math.Floor(low / Length), Last: (int)Math.Floor(high / Length)) : (First: 0, Last: 0);
        for (var lap = up ? laps.First : laps.Last; up ? lap <= laps.Last : lap >= laps.First; lap += up ? 1 : -1)
            for (var k = 0; k < marks.Length; k++)
            {
                var station = lap * Length + marks[up ? k : marks.Length - 1 - k];
                if (station > low + Tolerances.Geometry && station < high - Tolerances.Geometry) yield return station;
            }
        yield return to;
    }

    /// <summary>The segment on which two neighbouring stations lie, running from the first to the second.</summary>
    public Segment Under(double from, double to)
    {
        var segment = segments[Locate((from + to) / 2).Segment];
        return to >= from ? segment : segment.Reversed;
    }

    private (int Segment, double Share) Locate(double station)
    {
        if (Closed) station -= Math.Floor(station / Length) * Length;
        station = Math.Clamp(station, 0, Length);
        var i = Array.BinarySearch(marks, station);
        if (i < 0) i = ~i - 1;
        i = Math.Clamp(i, 0, segments.Length - 1);
        var span = marks[i + 1] - marks[i];
        return (i, span > 0 ? (station - marks[i]) / span : 0);
    }
}
