namespace Solidbody.Machining.Toolpaths;

/// <summary>Drops points of a profile that lie on the chord of their neighbours (Ramer 1972, Douglas and Peucker 1973).</summary>
internal static class LineThinning
{
    /// <param name="profile">Points (along, height), along ascending.</param>
    /// <param name="tolerance">Greatest height error, mm.</param>
    public static List<(double X, double Z)> Of(List<(double X, double Z)> profile, double tolerance)
    {
        if (profile.Count < 3) return profile;
        var keep = new bool[profile.Count];
        keep[0] = keep[^1] = true;
        var open = new Stack<(int, int)>([(0, profile.Count - 1)]);
        while (open.TryPop(out var span))
        {
            var (a, b) = span;
            var (worst, at) = (tolerance, -1);
            for (var i = a + 1; i < b; i++)
            {
                var off = Math.Abs(profile[i].Z - profile[a].Z - (profile[b].Z - profile[a].Z) * (profile[i].X - profile[a].X) / (profile[b].X - profile[a].X));
                if (off > worst) (worst, at) = (off, i);
            }
            if (at < 0) continue;
            keep[at] = true;
            open.Push((a, at));
            open.Push((at, b));
        }
        return [.. profile.Where((_, i) => keep[i])];
    }
}
