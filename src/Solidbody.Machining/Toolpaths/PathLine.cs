using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>A line of chords in the plan, walked by its length: station 0 at the first point. Closed lines go round without end, both ways.</summary>
internal sealed class PathLine
{
    private readonly Point2[] points;   // closed: the first point again at the end
    private readonly double[] marks;    // station of each point

    public PathLine(IReadOnlyList<Point2> through, bool closed)
    {
        Closed = closed;
        points = closed ? [.. through, through[0]] : [.. through];
        marks = new double[points.Length];
        for (var i = 1; i < points.Length; i++) marks[i] = marks[i - 1] + points[i].DistanceTo(points[i - 1]);
    }

    public PathLine(Loop loop) : this(loop.Points, true) { }

    public bool Closed { get; }
    /// <summary>The same way back; the closed line's station 0 stays where it is.</summary>
    public PathLine Reversed => new([.. Closed ? points[1..].Reverse() : points.Reverse()], Closed);
    public double Length => marks[^1];
    public ReadOnlySpan<Point2> Points => points;

    public Point2 At(double station)
    {
        var (i, t) = Locate(station);
        return points[i] + t * (points[i + 1] - points[i]);
    }

    /// <summary>Direction of travel, length 1.</summary>
    public Point2 Direction(double station)
    {
        var (i, _) = Locate(station);
        return (points[i + 1] - points[i]).Unit;
    }

    /// <summary>Station of the point of the line nearest to p; the first of equals.</summary>
    public double Nearest(Point2 p)
    {
        var (best, station) = (double.PositiveInfinity, 0.0);
        for (var i = 0; i + 1 < points.Length; i++)
        {
            var edge = points[i + 1] - points[i];
            var t = Math.Clamp((p - points[i]).Dot(edge) / Math.Max(edge.Dot(edge), double.Epsilon), 0, 1);
            var d = p.DistanceTo(points[i] + t * edge);
            if (d < best) (best, station) = (d, marks[i] + t * (marks[i + 1] - marks[i]));
        }
        return station;
    }

    public double DistanceTo(Point2 p) => At(Nearest(p)).DistanceTo(p);

    /// <summary>Station at the middle of the longest chord: a calm place to start.</summary>
    public double MiddleOfLongestChord()
    {
        var best = 0;
        for (var i = 1; i + 1 < points.Length; i++)
            if (marks[i + 1] - marks[i] > marks[best + 1] - marks[best]) best = i;
        return (marks[best] + marks[best + 1]) / 2;
    }

    /// <summary>Stations of the corners met on the way, then the end itself; up or down, over the seam of a closed line.</summary>
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

    private (int Chord, double T) Locate(double station)
    {
        if (Closed) station -= Math.Floor(station / Length) * Length;
        station = Math.Clamp(station, 0, Length);
        var i = Array.BinarySearch(marks, station);
        if (i < 0) i = ~i - 1;
        i = Math.Clamp(i, 0, points.Length - 2);
        var span = marks[i + 1] - marks[i];
        return (i, span > 0 ? (station - marks[i]) / span : 0);
    }
}
