using System.Runtime.CompilerServices;

namespace Solidbody.Packet.Tests;

/// <summary>Files of the repository, found from this file's own place.</summary>
internal static class Repository
{
    public static string ReadExample(string name) => File.ReadAllText(Path.Combine(Here(), "..", "..", "examples", name));

    private static string Here([CallerFilePath] string file = "") => Path.GetDirectoryName(file)!;
}
