namespace Solidbody.App.Tests.Commands;

/// <summary>A folder of a test's own, gone after it.</summary>
internal sealed class Scratch : IDisposable
{
    public string Root { get; } = Directory.CreateTempSubdirectory("solidbody-").FullName;

    public string Path(string name) => System.IO.Path.Combine(Root, name);

    public string Write(string name, string text)
    {
        File.WriteAllText(Path(name), text);
        return Path(name);
    }

    /// <summary>Name and content of everything in it, to see that nothing was touched.</summary>
    public IReadOnlyList<string> Everything() =>
        [.. Directory.EnumerateFileSystemEntries(Root, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
            .Select(path => File.Exists(path) ? $"{path} {Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(path)))}" : path)];

    /// <summary>A copy of a folder under another name.</summary>
    public string Copy(string folder, string name)
    {
        foreach (var file in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories))
        {
            var to = System.IO.Path.Combine(Path(name), System.IO.Path.GetRelativePath(folder, file));
            Directory.CreateDirectory(System.IO.Path.GetDirectoryName(to)!);
            File.Copy(file, to);
        }
        return Path(name);
    }

    public void Dispose() => Directory.Delete(Root, recursive: true);
}
