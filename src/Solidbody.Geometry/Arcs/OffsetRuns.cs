using static Solidbody.Geometry.Arcs.SegmentCrossings;

namespace Solidbody.Geometry.Arcs;

/// <summary>The raw offset cut where it meets itself: runs between meetings, each wholly in the true offset or wholly out of it.</summary>
internal sealed class OffsetRuns
{
    /// <summary>A meeting this near to the end of a segment is its end, mm.</summary>
    private const double AtEnd = 1e-6;

    /// <summary>A stretch of one raw segment.</summary>
    private readonly record struct Piece(int Raw, double From, double To);

    private readonly RawOffset raw;
    private readonly Dictionary<int, List<(double Share, Point2 At)>> cuts = [];
    private readonly bool[] metAtStart, metAtEnd;
    private readonly bool[] walked;

    public OffsetRuns(RawOffset raw)
    {
        this.raw = raw;
        var count = raw.Segments.Count;
        (metAtStart, metAtEnd, walked) = (new bool[count], new bool[count], new bool[count]);
        FindMeetings();
        foreach (var list in cuts.Values) list.Sort((a, b) => a.Share.CompareTo(b.Share));
    }

    private void FindMeetings()
    {
        var segments = System.Runtime.InteropServices.CollectionsMarshal.AsSpan(raw.Segments);
        var tree = new BoxTree(segments);
        var (near, met) = (new List<int>(), new List<Meeting>());
        for (var i = 0; i < segments.Length; i++)
        {
            near.Clear();
            tree.After(i, Touch, near);
            foreach (var k in near)
            {
                // Neighbours that go on from one another are tangent there and meet nowhere else.
                if (raw.Next[i] == k || raw.Previous[i] == k) continue;
                met.Clear();
                Find(segments[i], segments[k], met);
                foreach (var m in met)
                {
                    Cut(i, m.OnFirst, m.At);
                    Cut(k, m.OnSecond, m.At);
                }
            }
        }
    }

    private void Cut(int index, double share, Point2 at)
    {
        var length = raw.Segments[index].Length;
        if (share * length <= AtEnd) metAtStart[index] = true;
        else if ((1 - share) * length <= AtEnd) metAtEnd[index] = true;
        else if (cuts.TryGetValue(index, out var list)) list.Add((share, at));
        else cuts.Add(index, [(share, at)]);
    }

    /// <summary>The runs that do not end in nothing: closed ones met nowhere, and open ones from meeting to meeting.</summary>
    public IEnumerable<OffsetRun> Runs()
    {
        for (var i = 0; i < raw.Segments.Count; i++)
        {
            if (StartsRun(i) && From(i, 0, raw.Segments[i].From) is { } first) yield return first;
            if (!cuts.TryGetValue(i, out var list)) continue;
            var last = 0.0;
            foreach (var (share, at) in list)
            {
                if ((share - last) * raw.Segments[i].Length <= AtEnd) continue;
                last = share;
                if (From(i, share, at) is { } run) yield return run;
            }
        }
        for (var i = 0; i < raw.Segments.Count; i++)
            if (!walked[i] && Round(i) is { } closed) yield return closed;
    }

    private bool StartsRun(int i) => raw.Previous[i] == RawOffset.None ? metAtStart[i] : metAtStart[i] || metAtEnd[raw.Previous[i]];

    /// <summary>The run that begins on a segment at a share of its way; null when it ends in nothing.</summary>
    private OffsetRun? From(int i, double share, Point2 at)
    {
        var pieces = new List<Segment>();
        while (true)
        {
            if (share == 0) walked[i] = true;
            var segment = raw.Segments[i];
            if (NextCut(i, share) is var (end, there))
            {
                pieces.Add(segment.Part(share, end).Between(share == 0 ? segment.From : at, there));
                return new(pieces, false);
            }
            pieces.Add(share == 0 ? segment : segment.Part(share, 1).Between(at, segment.To));
            var next = raw.Next[i];
            if (metAtEnd[i] || (next != RawOffset.None && metAtStart[next])) return new(pieces, false);
            if (next == RawOffset.None) return null;
            (i, share) = (next, 0);
        }
    }

    private (double Share, Point2 At)? NextCut(int i, double after)
    {
        if (!cuts.TryGetValue(i, out var list)) return null;
        foreach (var cut in list)
            if ((cut.Share - after) * raw.Segments[i].Length > AtEnd) return cut;
        return null;
    }

    /// <summary>A loop that nothing meets; null when it is not a loop.</summary>
    private OffsetRun? Round(int first)
    {
        var pieces = new List<Segment>();
        for (var i = first; ;)
        {
            walked[i] = true;
            pieces.Add(raw.Segments[i]);
            i = raw.Next[i];
            if (i == first) return new(pieces, true);
            if (i == RawOffset.None || walked[i]) return null;
        }
    }
}
