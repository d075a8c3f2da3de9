namespace Solidbody.App.Tests;

/// <summary>Where the checkout lies that these tests were built from.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "Solidbody.slnx"))) return folder.FullName;
        throw new DirectoryNotFoundException("No Solidbody.slnx above the tests.");
    }
}
