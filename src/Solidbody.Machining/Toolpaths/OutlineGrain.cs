namespace Solidbody.Machining.Toolpaths;

/// <summary>A stretch of an outline that one way of cutting takes with the grain.</summary>
/// <param name="From">Station of a clockwise line; a stretch over the seam ends past the line's length.</param>
/// <param name="To">Above From.</param>
/// <param name="Climbs">Whether climbing, clockwise round the part, is the way with the grain.</param>
internal readonly record struct GrainStretch(double From, double To, bool Climbs)
{
    public double Length => To - From;
}

/// <summary>Which way round an outline cuts with the grain, for grain along x of the laid frame.</summary>
/// <remarks>
/// The cutter goes with the grain where the fibres ahead of it run out of the part: what splits ahead of an edge then splits into the waste. Where they run
/// into the part, a lifted fibre tears below the line (common practice, no source). With unit travel t, part on the right (climbing): fibre g = ±x with g·t > 0
/// runs into the part when g·(t.y, −t.x) > 0, that is t.x·t.y > 0. Going the other way turns the sign: every stretch but one along or square to the grain has one good way.
/// </remarks>
internal static class OutlineGrain
{
    /// <summary>Nearer to the grain than this, or to square across it, neither way tears, radians; common practice, no source.</summary>
    private const double Along = 3 * Math.PI / 180, Across = 80 * Math.PI / 180;
    /// <summary>Shorter stretches go with their neighbours, mm: each costs a way in and a way out.</summary>
    private const double Shortest = 15;

    /// <summary>Length of a clockwise line that a way of cutting takes against the grain, mm.</summary>
    public static double Against(PathLine clockwise, bool climbing) =>
        Chords(clockwise).Where(c => c.Way is { } way && way != climbing).Sum(c => c.Length);

    /// <summary>Stretches of a clockwise line in order, together one lap: as few as take every longer piece with the grain. One where the whole can be climbed.</summary>
    public static IReadOnlyList<GrainStretch> Stretches(PathLine clockwise)
    {
        var ring = new List<(double From, double Length, bool Climbs)>();
        var (station, known) = (0.0, Chords(clockwise).LastOrDefault(c => c.Way is not null).Way ?? true);
        foreach (var (length, way) in Chords(clockwise))
        {
            known = way ?? known;   // what tears neither way is taken as what came before
            if (ring.Count > 0 && ring[^1].Climbs == known) ring[^1] = ring[^1] with { Length = ring[^1].Length + length };
            else ring.Add((station, length, known));
            station += length;
        }
        if (ring.Count > 1 && ring[0].Climbs == ring[^1].Climbs)
        {
            ring[^1] = ring[^1] with { Length = ring[^1].Length + ring[0].Length };
            ring.RemoveAt(0);
        }
        while (ring.Count > 1 && ring.MinBy(r => r.Length) is { Length: < Shortest } shortest) Merge(ring, ring.IndexOf(shortest));
        return [.. ring.Select(r => new GrainStretch(r.From, r.From + r.Length, r.Climbs))];
    }

    /// <summary>Makes a stretch one with both its neighbours.</summary>
    private static void Merge(List<(double From, double Length, bool Climbs)> ring, int i)
    {
        var (before, after) = ((i - 1 + ring.Count) % ring.Count, (i + 1) % ring.Count);
        var whole = (ring[before].From, ring[before].Length + ring[i].Length + (after == before ? 0 : ring[after].Length), ring[before].Climbs);
        ring[before] = whole;
        foreach (var gone in new[] { i, after }.Where(k => k != before).OrderDescending()) ring.RemoveAt(gone);
    }

    /// <summary>Chords in order, each with the way that goes with the grain: true climbs, null where neither tears.</summary>
    private static IEnumerable<(double Length, bool? Way)> Chords(PathLine line)
    {
        foreach (var (length, along) in line.Steps())
        {
            var lean = Math.Atan2(Math.Abs(along.Y), Math.Abs(along.X));
            yield return (length, lean < Along || lean > Across ? null : along.X * along.Y < 0);
        }
    }
}
