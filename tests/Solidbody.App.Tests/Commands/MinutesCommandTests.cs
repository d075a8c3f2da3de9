using System.Globalization;
using Solidbody.App.Terminal;
using Solidbody.App.Tests.WholeJob;

namespace Solidbody.App.Tests.Commands;

public sealed class MinutesCommandTests
{
    [Fact] // A body alone, cut in simulation: every row's bound is no more than its time, and the line below adds the rows up.
    public async Task Every_operation_stands_beside_its_bound()
    {
        var said = (await Terminal.Type("minutes", Job.ExamplePath("school-bought-neck.toml"), "--shop", Job.ExamplePath("school-shop.toml"))).Ends(ExitCode.Good);
        var rows = said.Output.Split('\n').SkipWhile(l => !l.StartsWith("  ---", StringComparison.Ordinal)).Skip(1).TakeWhile(l => l.Trim().Length > 0)
            .Select(l => l.Split("   ", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)).ToList();
        Assert.Contains(rows, r => r[0].EndsWith("outline, finish", StringComparison.Ordinal));
        double Number(string[] row, int i) => double.Parse(row[i], CultureInfo.InvariantCulture);
        Assert.All(rows, r => Assert.InRange(Number(r, 3), 0, Number(r, 2) + 0.005));
        Assert.All(rows, r => Assert.InRange(Number(r, 6), 0, 100));
        Assert.Contains(rows, r => r[0].EndsWith("outline, rough", StringComparison.Ordinal) && r[7] == "180");   // a slot
        var last = said.Output.Split('\n').Single(l => l.Contains("no path could do better", StringComparison.Ordinal));
        var minutes = double.Parse(last.Split(": ")[1].Split(' ')[0], CultureInfo.InvariantCulture);
        Assert.Equal(rows.Sum(r => Number(r, 2)), minutes, 0.3);
    }

    [Fact]
    public async Task Mistakes_in_the_files_are_told()
    {
        using var scratch = new Scratch();
        var file = scratch.Write("bad.toml", "scale = 1\n");
        (await Terminal.Type("minutes", file, "--shop", Job.ExamplePath("school-shop.toml"))).Ends(ExitCode.Mistaken);
    }
}
