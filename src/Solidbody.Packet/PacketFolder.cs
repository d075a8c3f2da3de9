using System.Security.Cryptography;
using System.Text;
using Solidbody.Programs;

namespace Solidbody.Packet;

/// <summary>Why a packet was not written, and what to do about it. Nothing was changed.</summary>
public sealed record PacketRefusal(string Wrong, string Remedy)
{
    public override string ToString() => $"{Wrong}; {Remedy}";
}

/// <summary>Writes a packet whole or not at all, and never over work that is not its own.</summary>
public static class PacketFolder
{
    /// <summary>The packet's index; every packet has one.</summary>
    public const string Index = "packet.json";
    /// <summary>SHA-256 of every other file, one a line, hash, two blanks, name: what an older packet is recognised by.</summary>
    public const string Sums = "files.sha256";

    /// <summary>Writes all files into a fresh folder beside the wanted one, then puts it in its place by renaming.</summary>
    /// <param name="folder">Where the packet shall stand. Missing, empty, or an older packet none of whose files was changed.</param>
    /// <param name="files">Contents by name inside the packet, forward slashes; with <see cref="Index"/>, without <see cref="Sums"/>.</param>
    /// <returns>Null when it stands; else why not, the folder being as it was.</returns>
    /// <exception cref="ArgumentException">The index is missing, or a name leaves the packet.</exception>
    public static PacketRefusal? Write(string folder, IReadOnlyDictionary<string, byte[]> files)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(files);
        if (!files.ContainsKey(Index)) throw new ArgumentException($"A packet needs its {Index}.", nameof(files));
        if (files.Keys.FirstOrDefault(n => n == Sums || !PacketPath.IsInside(n)) is { } name)
            throw new ArgumentException($"“{name}” cannot be a file of a packet: {PacketPath.Rule}.", nameof(files));

        var place = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));
        try
        {
            if (Occupied(place) is { } refusal) return refusal;
            var parent = Path.GetDirectoryName(place) ?? throw new ArgumentException($"“{folder}” is no folder a packet can stand in.", nameof(folder));
            Directory.CreateDirectory(parent);
            Replace(place, parent, files);
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new($"The packet could not be written to {folder}: {e.Message}", "free some room or choose another folder; what stood there is untouched");
        }
    }

    /// <summary>Why a packet may not be written to a folder; null when it may.</summary>
    /// <exception cref="IOException">What stands there cannot be read.</exception>
    public static PacketRefusal? Refusal(string folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        return Occupied(Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)));
    }

    private static PacketRefusal? Occupied(string place)
    {
        if (File.Exists(place)) return new($"{place} is a file", "choose another folder");
        if (!Directory.Exists(place) || !Directory.EnumerateFileSystemEntries(place).Any()) return null;
        if (!File.Exists(Path.Combine(place, Index)) || !File.Exists(Path.Combine(place, Sums)))
            return new($"{place} holds something that is not a packet", "choose an empty folder or another name");

        var sums = ReadSums(Path.Combine(place, Sums));
        foreach (var file in Directory.EnumerateFiles(place, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
        {
            var name = Path.GetRelativePath(place, file).Replace('\\', '/');
            if (name == Sums) continue;
            if (!sums.TryGetValue(name, out var sum)) return new($"{name} in {place} was not written by us", "move it elsewhere, or choose another folder");
            if (sum != Hash(File.ReadAllBytes(file))) return new($"{name} in {place} was changed after it was written", "keep a copy of it elsewhere, or choose another folder");
        }
        return null;
    }

    private static void Replace(string place, string parent, IReadOnlyDictionary<string, byte[]> files)
    {
        var making = Free(parent, $".{Path.GetFileName(place)}.making");
        try
        {
            Fill(making, files);
            if (!Directory.Exists(place))
            {
                Directory.Move(making, place);
                return;
            }
            var older = Free(parent, $".{Path.GetFileName(place)}.older");
            Directory.Move(place, older);
            try
            {
                Directory.Move(making, place);
            }
            catch
            {
                Directory.Move(older, place);
                throw;
            }
            Directory.Delete(older, recursive: true);
        }
        finally
        {
            if (Directory.Exists(making)) Directory.Delete(making, recursive: true);
        }
    }

    private static void Fill(string folder, IReadOnlyDictionary<string, byte[]> files)
    {
        Directory.CreateDirectory(folder);
        var sums = new StringBuilder();
        foreach (var (name, content) in files.OrderBy(f => f.Key, StringComparer.Ordinal))
        {
            var path = Path.Combine(folder, name.Replace('/', Path.DirectorySeparatorChar));
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllBytes(path, content);
            sums.Append(Hash(content)).Append("  ").Append(name).Append('\n');
        }
        File.WriteAllText(Path.Combine(folder, Sums), sums.ToString());
    }

    private static Dictionary<string, string> ReadSums(string file)
    {
        var sums = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var line in File.ReadLines(file))
            if (line.Split("  ", 2) is [var sum, var name]) sums[name] = sum;
        return sums;
    }

    /// <summary>The first of name, name1, name2, … that nothing bears yet.</summary>
    private static string Free(string parent, string name)
    {
        var path = Path.Combine(parent, name);
        for (var i = 1; Path.Exists(path); i++) path = Path.Combine(parent, name + i);
        return path;
    }

    private static string Hash(byte[] content) => Convert.ToHexStringLower(SHA256.HashData(content));
}
