using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Packet.Drawing;
using Solidbody.Programs;

namespace Solidbody.Packet.Sheets;

/// <summary>The tables to measure and write down: before the first cut, and afterwards.</summary>
internal static class CheckBlocks
{
    private const double NominalColumn = 25, Between = 2, IsColumn = 15;
    private const string Outside = "If a figure is outside, stop: work the programs out and prove them again with the measured figure.";

    /// <summary>When a measure is taken, as its words begin; the table's heading says it once.</summary>
    private static readonly ImmutableArray<(string Words, string Heading)> Times =
        [("before: ", "Measure before cutting, write down"), ("after: ", "Measure afterwards, write down"), ("", "Measure and write down")];

    /// <summary>The set-up's tables, each made for the width it gets.</summary>
    public static IEnumerable<Func<Paper, double, Block>> Of(SheetInput input)
    {
        foreach (var time in input.SetUp.Checks.GroupBy(c => Times.First(t => c.What.StartsWith(t.Words, StringComparison.Ordinal))))
        {
            ImmutableArray<SheetCheck> checks = [.. time.Select(c => c with { What = Sentence(c.What[time.Key.Words.Length..]) })];
            yield return (paper, width) => Of(paper, width, time.Key.Heading, checks, input.LeftHanded);
        }
    }

    private static Block Of(Paper paper, double width, string heading, ImmutableArray<SheetCheck> checks, bool leftHanded)
    {
        var columns = new Column[] { new("", width - Table.TickColumn - NominalColumn - Between - IsColumn), new("Should be, mm", NominalColumn, Align.Right, true), new("", Between), new("Is", IsColumn) };
        var measuring = new Table(paper, 0, columns);
        var rows = checks.Select(check =>
        {
            string[] cells = [check.What, check.Nominal is { } n ? $"{Written.Millimetres(n, 2)} ±{Written.Millimetres(check.Tolerance, 2)}" : ""];
            return new Piece(measuring.HeightOf(cells), (p, at) => new Table(p, at.X, columns).Row(at.Y, cells, check.Nominal is null ? 0 : 1));
        }).ToList();
        string[] remarks = checks.Any(c => c.Nominal < 0) ? [Signs(leftHanded), Outside] : [Outside];
        var words = remarks.SelectMany(r => paper.Wrap(r, Lettering.Small, width)).ToList();
        var foot = new Piece(1.6 + words.Count * Lettering.Small.LineHeight, (p, at) =>
        {
            for (var i = 0; i < words.Count; i++)
                p.Text(new(at.X, at.Y + 1.6 + Lettering.Small.CapHeight + i * Lettering.Small.LineHeight), words[i], Lettering.Small);
        });
        var head = new Piece(Lettering.Heading.LineHeight + Table.HeadHeight, (p, at) =>
        {
            p.Text(at + new Point2(0, Lettering.Heading.CapHeight), heading, Lettering.Heading);
            new Table(p, at.X, columns).Head(at.Y + Lettering.Heading.LineHeight);
        });
        // The remarks go with the last row: alone in a new column they would stand under an empty heading.
        var last = rows[^1];
        rows[^1] = new(last.Height + foot.Height, (p, at) =>
        {
            last.Draw(p, at);
            foot.Draw(p, at with { Y = at.Y + last.Height });
        });
        return new(head, [.. rows], Whole: false);
    }

    /// <summary>The part frame's x runs from the nut to the bridge; its y to the treble side of a right-handed instrument, and is mirrored on a left-handed one.</summary>
    private static string Signs(bool leftHanded) => $"With a minus: from the nut toward the headstock, from the centre line toward the {(leftHanded ? "treble" : "bass")} side.";

    private static string Sentence(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
}
