using System.Text.RegularExpressions;

namespace Solidbody.App.Tests;

public partial class FindingPagesTests
{
    [GeneratedRegex("\"([A-Z]+-[0-9]{2})\"")]
    private static partial Regex Code();

    private static IEnumerable<(string Code, string File)> CodesInSource() =>
        from file in Directory.EnumerateFiles(Path.Combine(Repository.Root, "src"), "*Findings.cs", SearchOption.AllDirectories)
        where !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)
        from Match match in Code().Matches(File.ReadAllText(file))
        select (match.Groups[1].Value, Path.GetFileName(file));

    [Fact]
    public void Every_finding_has_its_page_in_the_documentation()
    {
        var pages = Directory.EnumerateFiles(Path.Combine(Repository.Root, "docs", "checks"), "*.md").Select(Path.GetFileNameWithoutExtension).ToHashSet();
        var codes = CodesInSource().Select(c => c.Code).Distinct().ToList();
        Assert.NotEmpty(codes);
        Assert.Empty(codes.Except(pages));
    }

    [Fact]
    public void A_code_belongs_to_one_feature() =>
        Assert.Empty(CodesInSource().GroupBy(c => c.Code).Where(g => g.Select(c => c.File).Distinct().Count() > 1).Select(g => g.Key));
}
