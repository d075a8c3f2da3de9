using System.Collections.Immutable;
using System.Globalization;
using Solidbody.Findings;
using Solidbody.Machining.Toolpaths;

namespace Solidbody.Machining.Planning;

/// <summary>Where an outline's finishing pass runs against the grain.</summary>
internal static class GrainFindings
{
    /// <summary>Less than this is nothing to speak of, mm.</summary>
    private const double Worth = 30;
    /// <summary>Most places named.</summary>
    private const int Named = 6;

    /// <summary>The finding for one way all round; none where the pass is divided, or nearly all of it goes with the grain.</summary>
    /// <param name="laid">The part as it lies when the outline is cut.</param>
    /// <param name="way">Of the finishing pass.</param>
    public static IEnumerable<Finding> Of(LaidPart laid, OutlineWay way)
    {
        if (way == OutlineWay.WithGrain) yield break;
        var climbs = way == OutlineWay.Climb;
        foreach (var loop in laid.Outline.Loops.Where(l => l.SignedArea > 0))
        {
            var line = new PathLine(loop.Reversed);
            var against = OutlineGrain.Against(line, climbs);
            var stretches = OutlineGrain.Stretches(line);
            if (against < Worth || stretches.Count < 2) continue;
            var places = stretches.Where(s => s.Climbs != climbs).OrderByDescending(s => s.Length).Take(Named).Select(s => Where(laid, line, s)).ToImmutableArray();
            yield return new("GRAIN-01", Severity.Notes, $"{laid.Part.Name}, outline, finish",
                Say($"{against:0} of {line.Length:0} mm against the grain: {string.Join("; ", places)}"), "none, where chips must not tear",
                "fibres run into the part ahead of the cutter; common practice, no source",
                Say($"write direction = \"with-grain\" under [outline] in the shop file: {stretches.Count} stretches, each its own way; or take a lighter pass there"))
            { Title = "The outline's finishing pass runs against the grain in places" };
        }
    }

    private static string Where(LaidPart laid, PathLine line, GrainStretch stretch)
    {
        var (a, b) = (laid.Point(line.At(stretch.From)), laid.Point(line.At(stretch.To)));
        return Say($"x {a.X:0}, y {a.Y:0} to x {b.X:0}, y {b.Y:0}");
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
