using System.Reflection;

namespace Solidbody.App.Tests;

public class ArchitectureTests
{
    /// <summary>Who may use whom: the right column of the table in docs/architecture.md.</summary>
    private static readonly Dictionary<string, string[]> Allowed = new()
    {
        ["Findings"] = [],
        ["Geometry"] = [],
        ["Reading"] = ["Findings", "Geometry"],
        ["Drawings"] = ["Findings", "Geometry"],
        ["Materials"] = ["Geometry"],
        ["Instrument"] = ["Findings", "Geometry", "Materials", "Reading", "Drawings"],
        ["Shop"] = ["Findings", "Geometry", "Materials", "Reading"],
        ["Programs"] = ["Findings", "Geometry"],
        ["Machining"] = ["Findings", "Geometry", "Materials", "Instrument", "Shop", "Programs"],
        ["Proof"] = ["Findings", "Geometry", "Materials", "Instrument", "Shop", "Programs"],
        ["Packet"] = ["Findings", "Geometry", "Materials", "Instrument", "Shop", "Programs", "Machining", "Proof", "Drawings"],
    };

    public static TheoryData<string> Rooms => [.. Allowed.Keys];

    [Theory, MemberData(nameof(Rooms))]
    public void Rooms_use_only_the_rooms_they_may(string room)
    {
        var used = Assembly.Load($"Solidbody.{room}").GetReferencedAssemblies()
            .Select(a => a.Name!).Where(n => n.StartsWith("Solidbody.", StringComparison.Ordinal)).Select(n => n["Solidbody.".Length..]);
        Assert.Empty(used.Except(Allowed[room]));
    }

    [Theory]
    [InlineData("Findings")]
    [InlineData("Drawings")]
    [InlineData("Instrument")]
    [InlineData("Shop")]
    [InlineData("Programs")]
    [InlineData("Machining")]
    [InlineData("Proof")]
    public void Rooms_of_the_trade_use_no_library_but_the_runtime(string room) =>
        Assert.All(Assembly.Load($"Solidbody.{room}").GetReferencedAssemblies(), a =>
            Assert.True(a.Name!.StartsWith("System", StringComparison.Ordinal) || a.Name.StartsWith("Solidbody.", StringComparison.Ordinal), a.Name));

    [Fact]
    public void The_table_in_the_documentation_names_every_room()
    {
        var page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "architecture.md"));
        Assert.All(Allowed.Keys.Append("App"), room => Assert.Contains($"| `{room}` |", page, StringComparison.Ordinal));
    }
}
