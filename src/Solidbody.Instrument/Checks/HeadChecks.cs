using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument.Necks;
using Solidbody.Instrument.Outlines;

namespace Solidbody.Instrument.Checks;

internal static class HeadChecks
{
    public static IEnumerable<Finding> Of(InstrumentDefinition d, Part neck, HeadstockOutline headstock)
    {
        var (h, strings, posts) = (d.Headstock, Strings.Of(d), headstock.Posts);
        var isBass = h.PostRadius > Limits.BassPostRadius;
        for (var i = 0; i < posts.Length; i++)
        {
            var at = HeadFace.Of(d).Plan(posts[i]);
            if (-neck.Outline.SignedDistance(at) is var edge && !(edge >= Limits.PostToEdge)) yield return HeadFindings.PostAtEdge(i + 1, at, edge);
        }
        var apart = TunerPosts.OppositeRule(h);
        foreach (var a in posts[..h.TunersBass])
            foreach (var b in posts[h.TunersBass..])
                if (!(a.DistanceTo(b) >= apart)) yield return HeadFindings.OppositePosts(new(-strings.HeadFrom - a.X, a.Y), a.DistanceTo(b), apart);
        foreach (var (s, p, gap) in StringGaps(h, strings, posts))
            if (!(gap >= Limits.StringToPost)) yield return HeadFindings.StringAtPost(s + 1, p + 1, gap);
        var pitch = isBass ? Limits.TunerPitchBass : Limits.TunerPitch;
        if (!(h.TunerPitch >= pitch) && Math.Max(h.TunersBass, h.TunersTreble) > 1) yield return HeadFindings.CrowdedTuners(h.TunerPitch, pitch);
    }

    /// <summary>From every string's straight run to every other string's post, mm.</summary>
    internal static IEnumerable<(int String, int Post, double Gap)> StringGaps(HeadstockDefinition h, Strings strings, ImmutableArray<Point2> posts)
    {
        for (var s = 0; s < posts.Length; s++)
            for (var p = 0; p < posts.Length; p++)
            {
                if (p == s) continue;
                // A string touches its own post's inner side.
                var inner = posts[s] - (s < h.TunersBass ? -1 : 1) * new Point2(0, h.PostRadius);
                yield return (s, p, Segments.Distance(posts[p], strings.Leave(s), inner) - h.PostRadius);
            }
    }
}
