using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Shallow straight lines on a surface, to saw or mark by.</summary>
public static class Scribing
{
    /// <summary>Draws each line once at its depth below the surface.</summary>
    /// <param name="s">Settings; StepDown at least each depth.</param>
    /// <param name="slots">Lines; the surface must already be the wood's top along them.</param>
    /// <param name="surface">Closed form, laid frame.</param>
    /// <exception cref="ArgumentException">A line is deeper than one step-down.</exception>
    public static ImmutableArray<Motion> Path(CutSettings s, IReadOnlyList<SlotLine> slots, IHeight surface)
    {
        ArgumentNullException.ThrowIfNull(s);
        ArgumentNullException.ThrowIfNull(slots);
        var path = new PathBuilder(s);
        foreach (var (line, depth) in FretSlotting.InOrder(slots, surface))
        {
            if (depth > s.StepDown) throw new ArgumentException($"A scribed line {depth} mm deep needs more than one step-down of {s.StepDown} mm.", nameof(slots));
            path.EnterAbove(line.Start, line.Highest);
            path.Line(line.Start, line.StartHeight - depth);
            line.Run(path, 0, line.Length, depth, depth);
        }
        return path.Build();
    }
}
