namespace Solidbody.Geometry.Arcs;

/// <summary>A loop without segments too short to matter, and without joints between segments of one line or one circle.</summary>
internal static class ArcCleaning
{
    /// <summary>Segments shorter than this are left out, mm.</summary>
    private const double Shortest = 1e-5;
    /// <summary>Neighbours whose joint lies this near to the one segment that replaces them become one, mm: rounding, so that nothing adds up.</summary>
    private const double Same = 1e-9;

    /// <summary>The loop; null when nothing is left of it. Ends move by at most <see cref="Shortest"/>.</summary>
    public static ArcLoop? Of(List<Segment> segments)
    {
        var kept = new List<Segment>(segments.Count);
        foreach (var s in segments)
        {
            if (s.From.DistanceTo(s.To) <= Shortest && s.Length <= 2 * Shortest) continue;
            if (kept.Count > 0 && Joined(kept[^1], s) is { } whole) kept[^1] = whole;
            else kept.Add(s);
        }
        if (kept.Count > 2 && Joined(kept[^1], kept[0]) is { } seam)
        {
            kept[0] = seam;
            kept.RemoveAt(kept.Count - 1);
        }
        if (kept.Count < 2) return null;
        for (var i = 0; i < kept.Count; i++)
        {
            var next = kept[(i + 1) % kept.Count];
            kept[i] = kept[i].Between(kept[i].From, next.From);
        }
        return new([.. kept]);
    }

    private static Segment? Joined(in Segment a, in Segment b)
    {
        if (a.IsArc != b.IsArc || a.To.DistanceTo(b.From) > Same) return null;
        if (!a.IsArc) return Segment.Line(a.From, b.To) is var line && line.DistanceTo(a.To) <= Same && (a.To - a.From).Dot(b.To - b.From) > 0 ? line : null;
        var sweep = a.Sweep + b.Sweep;
        if (a.Sweep * b.Sweep < 0 || Math.Abs(sweep) > Math.PI || a.Centre.DistanceTo(b.Centre) > Same || Math.Abs(a.Radius - b.Radius) > Same) return null;
        return a.Extended(b.To, sweep);
    }
}
