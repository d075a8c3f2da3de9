namespace Solidbody.Reading;

/// <summary>Words in a row, as a sentence says them.</summary>
static class Listing
{
    /// <summary><c>mm, in or "</c></summary>
    public static string Or(IEnumerable<string> words)
    {
        var all = words.ToArray();
        return all.Length < 2 ? string.Concat(all) : $"{string.Join(", ", all[..^1])} or {all[^1]}";
    }

    public static string Keys(IEnumerable<string> keys) => string.Join(", ", keys);
}
