namespace Solidbody.Programs;

/// <summary>Names of files inside a packet's folder.</summary>
public static class PacketPath
{
    public const string Rule = "a name inside the packet's folder, with forward slashes and without . or .. as a step";

    /// <summary>Whether a name stays inside the folder on every system: relative, forward slashes, no empty, <c>.</c> or <c>..</c> step, no drive, no control character.</summary>
    public static bool IsInside(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        foreach (var c in path)
            if (char.IsControl(c) || char.IsSurrogate(c) || c is '\\' or ':' or '*' or '?' or '"' or '<' or '>' or '|') return false;
        foreach (var step in path.Split('/'))
            if (step.Length == 0 || step.Trim() != step || step.EndsWith('.')) return false; // "." and ".." end in a point too
        return true;
    }
}
