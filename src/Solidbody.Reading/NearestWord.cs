namespace Solidbody.Reading;

/// <summary>The known word a misspelt one is nearest to.</summary>
public static class NearestWord
{
    /// <summary>Words longer than this are not compared: no key is that long, and the work grows with the square.</summary>
    const int Longest = 64;

    /// <summary>The nearest of the known words, the first of equals; null when none is near: more than a third of the letters differ.</summary>
    public static string? To(string word, IEnumerable<string> known)
    {
        if (word.Length > Longest) return null;
        var nearest = known.Select(k => (Word: k, Distance: Distance(word, k))).OrderBy(k => k.Distance).FirstOrDefault();
        return nearest.Word is not null && nearest.Distance <= Math.Max(1, Math.Max(word.Length, nearest.Word.Length) / 3) ? nearest.Word : null;
    }

    /// <summary>Edit distance: letters put in, left out, changed, or swapped with their neighbour, each counting one.</summary>
    /// <remarks>Optimal string alignment, three rows. F. J. Damerau, A technique for computer detection and correction of spelling errors, CACM 7 (1964) 171–176, from memory.</remarks>
    public static int Distance(string a, string b)
    {
        var (before, last, row) = (new int[b.Length + 1], new int[b.Length + 1], new int[b.Length + 1]);
        for (var j = 0; j <= b.Length; j++) last[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var change = last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                row[j] = Math.Min(change, Math.Min(last[j], row[j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) row[j] = Math.Min(row[j], before[j - 2] + 1);
            }
            (before, last, row) = (last, row, before);
        }
        return last[b.Length];
    }
}
