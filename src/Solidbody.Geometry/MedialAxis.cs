namespace Solidbody.Geometry;

/// <summary>The middles of the largest discs that fit into a region, and which of them are neighbours: the region's skeleton.</summary>
/// <remarks>
/// For a place p on an edge with inward normal n, the largest disc inside that touches p has the radius r = min over all other boundary points q with
/// n·(q − p) &gt; 0 of |q − p|²/(2 n·(q − p)); over a whole edge that minimum lies at an end, or where the disc touches the edge's line, in closed form.
/// Discs of neighbouring places are neighbours; so is the disc of the place nearest to where a disc touches the other side.
/// Source: H. Blum, A transformation for extracting new descriptors of shape, 1967; discs by touching points after
/// J. Ma, S. W. Bae, S. Choi, 3D medial axis point approximation using nearest neighbors and the normal field, The Visual Computer 28 (2012).
/// </remarks>
public sealed class MedialAxis
{
    /// <summary>A corner that turns by more than this, radians, gets places ever closer to it: its branch runs right into it.</summary>
    private const double SharpCorner = 0.2;
    /// <summary>Distance of the closest such place from its corner, mm.</summary>
    private const double Closest = 0.01;
    /// <summary>Chords that stand for a curve bound a disc by their own corners: edges that turn by less than the slant's arc cosine, and points seen
    /// lower than the slant's rest, may reach this far into it, mm. The radius is then measured.</summary>
    private const double ChordPlay = 4 * Tolerances.Flattening, Slant = 0.9, Low = 0.25;
    /// <summary>Two centres further apart than this many spacings are no neighbours across the room.</summary>
    private const double FarthestAcross = 3;

    private readonly List<Edge> edges = [];
    private readonly List<(int Edge, double Along)> places = [];
    private readonly List<(int First, int Count)> loops = [];
    private readonly List<int>[] neighbours;

    private readonly record struct Edge(Point2 A, Point2 B, Point2 Along, double Length, int FirstPlace, int Places)
    {
        public Point2 Inward => Along.Left;
    }

    private MedialAxis(Region region, double spacing)
    {
        foreach (var loop in region.Loops) Place(loop, spacing);
        Discs = new InnerDisc[places.Count];
        neighbours = new List<int>[places.Count];
        var across = new int[places.Count];
        for (var i = 0; i < places.Count; i++) (Discs[i], across[i]) = Largest(i, region);
        for (var i = 0; i < places.Count; i++) neighbours[i] = [];
        foreach (var (first, count) in loops)
            for (var k = 0; k < count; k++) Join(first + k, first + (k + 1) % count);
        for (var i = 0; i < places.Count; i++)
            if (across[i] >= 0 && Discs[i].Centre.DistanceTo(Discs[across[i]].Centre) <= FarthestAcross * spacing) Join(i, across[i]);
    }

    /// <summary>The discs, in the order of the places they touch, loop by loop.</summary>
    public InnerDisc[] Discs { get; }
    public IReadOnlyList<int> Neighbours(int disc) => neighbours[disc];

    /// <summary>The skeleton of one region.</summary>
    /// <param name="region">Connected.</param>
    /// <param name="spacing">Greatest distance between touching places, mm.</param>
    public static MedialAxis Of(Region region, double spacing)
    {
        ArgumentNullException.ThrowIfNull(region);
        if (!(spacing > 0)) throw new ArgumentOutOfRangeException(nameof(spacing), spacing, "Spacing must be positive, mm.");
        return new(region, spacing);
    }

    private void Join(int a, int b)
    {
        if (a == b || neighbours[a].Contains(b)) return;
        neighbours[a].Add(b);
        neighbours[b].Add(a);
    }

    private void Place(Loop loop, double spacing)
    {
        var points = loop.Points;
        var first = places.Count;
        for (var i = 0; i < points.Length; i++)
        {
            var (a, b) = (points[i], points[(i + 1) % points.Length]);
            var (length, along) = (a.DistanceTo(b), (b - a).Unit);
            var own = Stations(length, spacing, Turn(points, i) > SharpCorner, Turn(points, (i + 1) % points.Length) > SharpCorner);
            edges.Add(new(a, b, along, length, places.Count, own.Count));
            foreach (var station in own) places.Add((edges.Count - 1, station));
        }
        loops.Add((first, places.Count - first));
    }

    private static double Turn(System.Collections.Immutable.ImmutableArray<Point2> points, int i)
    {
        var (before, after) = (points[i] - points[(i + points.Length - 1) % points.Length], points[(i + 1) % points.Length] - points[i]);
        return Math.Atan2(before.Cross(after), before.Dot(after));
    }

    /// <summary>Even places, closing in by halves on sharp ends.</summary>
    private static List<double> Stations(double length, double spacing, bool sharpStart, bool sharpEnd)
    {
        var n = Math.Max(1, (int)Math.Ceiling(length / spacing));
        var half = length / n / 2;
        var stations = Enumerable.Range(0, n).Select(k => (2 * k + 1) * half).ToList();
        for (var near = half / 2; near >= Closest; near /= 2)
        {
            if (sharpStart) stations.Insert(0, near);
            if (sharpEnd) stations.Add(length - near);
        }
        return stations;
    }

    private (InnerDisc Disc, int Across) Largest(int place, Region region)
    {
        var (own, station) = places[place];
        var edge = edges[own];
        var (p, n) = (edge.A + station * edge.Along, edge.Inward);
        var (best, across) = (region.Bounds.Width + region.Bounds.Height, -1);
        for (var m = 0; m < edges.Count; m++)
        {
            if (m == own) continue;
            var (radius, along) = Touching(p, n, edges[m], best);
            if (radius < best) (best, across) = (radius, Nearest(edges[m], along));
        }
        var centre = p + best * n;
        return (new(centre, Math.Min(best, Math.Max(0, -region.SignedDistance(centre)))), across);
    }

    /// <summary>Radius of the smallest disc tangent at p that touches the edge, and where; +∞ when none below <paramref name="under"/> does.</summary>
    private static (double Radius, double Along) Touching(Point2 p, Point2 n, in Edge edge, double under)
    {
        var none = (double.PositiveInfinity, 0.0);
        var reach = 2 * under;
        if (Math.Min(edge.A.X, edge.B.X) > p.X + reach || Math.Max(edge.A.X, edge.B.X) < p.X - reach
            || Math.Min(edge.A.Y, edge.B.Y) > p.Y + reach || Math.Max(edge.A.Y, edge.B.Y) < p.Y - reach) return none;
        var best = none;
        var (toA, toB) = (edge.A - p, edge.B - p);
        Consider(toA, 0, edge.Length);
        Consider(toB, edge.Length, edge.Length);
        // The disc touches the edge's line where its middle p + r n is r away from it: h + r (n·m) = ± r, on the side p lies.
        var (h, turned) = (-toA.Dot(edge.Inward), n.Dot(edge.Inward));
        var divisor = h >= 0 ? 1 - turned : 1 + turned;
        if (divisor > 1e-9)
        {
            var radius = (Math.Abs(h) + (turned > Slant ? ChordPlay : 0)) / divisor;
            var along = (radius * n - toA).Dot(edge.Along);
            if (radius < best.Item1 && along > 0 && along < edge.Length) best = (radius, along);
        }
        return best;

        void Consider(Point2 to, double along, double length)
        {
            var ahead = n.Dot(to);
            var (apart, play) = (to.Dot(to), 0.0);
            if (ahead * ahead < Low * Low * apart) play = ChordPlay;
            if (ahead <= play + Tolerances.Geometry) return;
            var radius = (apart - play * play) / (2 * (ahead - play));
            if (radius < best.Item1) best = (radius, along);
        }
    }

    private int Nearest(in Edge edge, double along)
    {
        var best = edge.FirstPlace;
        for (var i = edge.FirstPlace; i < edge.FirstPlace + edge.Places; i++)
            if (Math.Abs(places[i].Along - along) < Math.Abs(places[best].Along - along)) best = i;
        return best;
    }
}
