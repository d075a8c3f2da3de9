namespace Solidbody.Instrument.Tests.Files;

/// <summary>Files of the repository that the tests read.</summary>
static class Repository
{
    public static string Root { get; } = Find(AppContext.BaseDirectory);

    public static string ReadExample(string file) => File.ReadAllText(Path.Combine(Root, "examples", file));

    static string Find(string folder) => File.Exists(Path.Combine(folder, "Solidbody.slnx")) ? folder : Find(Path.GetDirectoryName(folder)!);
}
