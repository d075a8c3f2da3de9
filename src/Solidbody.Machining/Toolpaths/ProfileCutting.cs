using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Cuts a part out of its blank along the outside of its outline. Climb: with a spindle that turns clockwise the part stays on the
/// cutter's right, so the outline is followed clockwise.</summary>
public static class ProfileCutting
{
    /// <summary>Longest leg of a ramp beside a tab, mm.</summary>
    private const double LongestLeg = 30;
    /// <summary>The last lap leaves the wall by this much, within what roughing cleared, mm; common practice, no source.</summary>
    private const double LeadOff = 0.3;
    /// <summary>Length over which it does so, mm.</summary>
    private const double LeadLength = 5;
    /// <summary>In so many chords, so that it leaves a curved wall too: over one of 5 mm a wall of radius 12 mm would be cut by 0.17 mm.</summary>
    private const int LeadSteps = 8;

    /// <summary>Follows the outline at the cutter's radius plus a leave, down in steps; enters by a ramp along the path; rises over tabs.</summary>
    /// <param name="s">A finishing pass has StepDown of the whole depth.</param>
    /// <param name="outline">The part's outline, laid frame.</param>
    /// <param name="top">Height of the wood.</param>
    /// <param name="bottom">Lowest height of the tip (a little below 0 to part the wood).</param>
    /// <param name="leave">Wood left on the outline for a later pass, mm; ≥ 0.</param>
    /// <param name="tabs">Tabs that stay: at least their length of wood up to their top.</param>
    /// <remarks>Beside a tab the tip goes down into uncut wood on a zigzag ramp (straight down for a cutter that may plunge), so the wood is gone right up to the tab.
    /// Inside corners tighter than the cutter stay uncut; every loop of the offset is cut.</remarks>
    public static ImmutableArray<Motion> Path(CutSettings s, Loop outline, double top, double bottom, double leave, IReadOnlyList<TabSpan> tabs)
    {
        ArgumentNullException.ThrowIfNull(s);
        ArgumentNullException.ThrowIfNull(outline);
        var path = new PathBuilder(s);
        var offset = s.Cutter.Radius + leave;
        var edge = new PathLine(outline);
        foreach (var loop in Offsets.Of(new Region(outline), offset).SelectMany(r => r.Loops))
        {
            var line = new PathLine(loop.Reversed);
            new Lap(path, s, line, TabsOnPath.Of(line, edge, offset, s.Cutter.Radius, tabs)).Cut(top, bottom);
        }
        return path.Build();
    }

    /// <summary>One closed path round the part, with its tabs.</summary>
    private sealed class Lap(PathBuilder path, CutSettings s, PathLine line, TabStretch[] tabs)
    {
        public void Cut(double top, double bottom)
        {
            var station = Start();
            path.EnterAbove(line.At(station), top);
            path.Line(path.At with { Z = top });
            var wood = top;
            var levels = DepthLevels.Of(top, bottom, s.StepDown);
            foreach (var z in levels)
            {
                var ramp = (wood - z) / Math.Tan(s.RampAngle);
                Walk(station, station + ramp, wood, z, wood);
                station += ramp;
                Walk(station, station + line.Length, z, z, wood);
                station += line.Length;
                wood = z;
            }
            // Only a finishing pass, at full depth, marks the wall where it ends; a roughing lap would slot the waste beside it.
            if (levels.Length == 1 && !TabsBetween(station - LeadLength, station + LeadLength).Any())
                for (var k = 1; k <= LeadSteps; k++)
                    if (station + LeadLength * k / LeadSteps is var at) path.Line(line.At(at) + LeadOff * k / LeadSteps * line.Direction(at).Left, wood);
        }

        /// <summary>The middle of the longest stretch between tabs, or of the longest chord.</summary>
        private double Start()
        {
            if (tabs.Length == 0) return line.MiddleOfLongestChord();
            var gaps = tabs.Select((t, i) => (t.To, Next: i + 1 < tabs.Length ? tabs[i + 1].From : tabs[0].From + line.Length));
            var widest = gaps.MaxBy(g => g.Next - g.To);
            return (widest.To + widest.Next) / 2;
        }

        /// <summary>From a to b, the height running evenly from za to zb, above the tabs; <paramref name="cleared"/> is the level the whole path was cut to before.</summary>
        private void Walk(double a, double b, double za, double zb, double cleared)
        {
            double Z(double station) => za + (zb - za) * (station - a) / (b - a);
            foreach (var tab in TabsBetween(a, b))
            {
                var (from, to) = (Math.Max(tab.From, a), Math.Min(tab.To, b));
                if (Z(to) >= tab.Top) continue;
                if (from > a) path.Follow(line, a, from, Z(from));
                var over = Math.Max(tab.Top, Z(from));
                path.Line(path.At with { Z = over });
                path.Follow(line, from, to, over);
                if (to < tab.To) { a = to; continue; }
                (za, a) = (Z(to), to);
                Sink(to, Math.Min(over, Math.Max(cleared, za)), za);
            }
            if (b > a) path.Follow(line, a, b, zb);
        }

        /// <summary>Down beside a tab: through the room already cut at once, into wood on a zigzag ramp.</summary>
        private void Sink(double station, double cleared, double z)
        {
            path.Line(path.At with { Z = cleared });
            var ramp = (cleared - z) / Math.Tan(s.RampAngle);
            if (!s.Cutter.Plunges && ramp > Tolerances.Geometry)
            {
                var next = TabsBetween(station, station + line.Length).First().From;
                var trips = (int)Math.Ceiling(ramp / (2 * Math.Min(LongestLeg, Math.Max((next - station) * 0.9, 1))));
                var leg = ramp / (2 * trips);
                for (var i = 0; i < 2 * trips; i++)
                    path.Follow(line, station + (i % 2 == 0 ? 0 : leg), station + (i % 2 == 0 ? leg : 0), cleared + (z - cleared) * (i + 1) / (2 * trips));
            }
            path.Line(path.At with { Z = z });
        }

        /// <summary>Tabs met between two stations, on whichever lap, in order.</summary>
        private IEnumerable<TabStretch> TabsBetween(double a, double b)
        {
            for (var lap = (int)Math.Floor(a / line.Length) - 1; lap <= (int)Math.Floor(b / line.Length); lap++)
                foreach (var tab in tabs)
                {
                    var moved = tab with { From = tab.From + lap * line.Length, To = tab.To + lap * line.Length };
                    if (moved.To > a + Tolerances.Geometry && moved.From < b - Tolerances.Geometry) yield return moved;
                }
        }
    }
}
