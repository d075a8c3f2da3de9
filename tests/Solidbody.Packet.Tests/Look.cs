namespace Solidbody.Packet.Tests;

/// <summary>Writes what a test made into the folder that SOLIDBODY_LOOK names, to be looked at; without it, nothing.</summary>
internal static class Look
{
    public static void At(string name, byte[] bytes)
    {
        if (Environment.GetEnvironmentVariable("SOLIDBODY_LOOK") is not { Length: > 0 } folder) return;
        Directory.CreateDirectory(folder);
        File.WriteAllBytes(Path.Combine(folder, name), bytes);
    }
}
