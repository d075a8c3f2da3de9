using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Geometry.Arcs;
using Solidbody.Programs;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Cuts a part out of its blank along the outside of its outline. Climbing, with a spindle that turns clockwise, the part stays on the
/// cutter's right and the outline is followed clockwise.</summary>
public static class ProfileCutting
{
    /// <summary>Longest leg of a ramp beside a tab, mm.</summary>
    private const double LongestLeg = 30;
    /// <summary>A finishing pass comes to the wall from this far outside, and leaves it so far, mm: within what roughing cleared; common practice, no source.</summary>
    private const double LeadOff = 0.3;
    /// <summary>Length over which it does so, mm.</summary>
    private const double LeadLength = 5;
    /// <summary>In so many chords, so that it leaves a curved wall too: over one of 5 mm a wall of radius 12 mm would be cut by 0.17 mm.</summary>
    private const int LeadSteps = 8;
    /// <summary>A tab's ends rise and fall so steeply, radians: a foot without a sharp corner does not crack, and is soon trimmed; common practice, no source.</summary>
    private const double TabFlank = Math.PI / 4;
    /// <summary>No longer than this, mm: what stands beside a tab is trimmed with it.</summary>
    private const double LongestFlank = 4;
    /// <summary>What two ends of finishing passes overlap, mm.</summary>
    private const double Overlap = 1;

    /// <summary>Follows the outline, climbing, at the cutter's radius plus a leave, down in steps; enters by a ramp along the path; rises over tabs.</summary>
    /// <param name="s">The step-down bounds each lap.</param>
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
        foreach (var clockwise in Lines(outline, s.Cutter.Radius + leave)) LapOn(path, s, clockwise, outline, s.Cutter.Radius + leave, tabs, OutlineWay.Climb).Rough(top, bottom);
        return path.Build();
    }

    /// <summary>Takes off what roughing left on the outline: straight down where it has cleared, in to the wall on the waste side, once round, out again.</summary>
    /// <param name="s">The step-down is the flutes' reach: one lap where they span the depth.</param>
    /// <param name="way">Which way round; <see cref="OutlineWay.WithGrain"/> cuts stretch by stretch.</param>
    /// <remarks>Roughing must have left at least <c>LeadOff</c> and cut as deep; the other parameters are as there.</remarks>
    public static ImmutableArray<Motion> Finish(CutSettings s, Loop outline, double top, double bottom, IReadOnlyList<TabSpan> tabs, OutlineWay way)
    {
        ArgumentNullException.ThrowIfNull(s);
        ArgumentNullException.ThrowIfNull(outline);
        var path = new PathBuilder(s);
        foreach (var clockwise in Lines(outline, s.Cutter.Radius))
        {
            Lap On(OutlineWay own) => LapOn(path, s, clockwise, outline, s.Cutter.Radius, tabs, own);
            if (way != OutlineWay.WithGrain || OutlineGrain.Stretches(clockwise) is not { Count: > 1 } stretches)
            {
                On(way == OutlineWay.Conventional ? OutlineWay.Conventional : OutlineWay.Climb).FinishAllRound(top, bottom);
                continue;
            }
            var (climbing, conventional) = (On(OutlineWay.Climb), On(OutlineWay.Conventional));
            foreach (var stretch in stretches.OrderByDescending(t => t.Climbs))
                if (stretch.Climbs) climbing.Finish(stretch.From, stretch.To + Overlap, top, bottom);
                else conventional.Finish(clockwise.Length - stretch.To, clockwise.Length - stretch.From + Overlap, top, bottom);
        }
        return path.Build();
    }

    /// <summary>The cutter's lines round an outline, clockwise.</summary>
    internal static IEnumerable<PathLine> Lines(Loop outline, double offset) =>
        ArcOffsets.Of(ArcFit.Of(new Region(outline)), offset).SelectMany(r => r.Loops).Select(l => new PathLine(l.Reversed));

    private static Lap LapOn(PathBuilder path, CutSettings s, PathLine clockwise, Loop outline, double offset, IReadOnlyList<TabSpan> tabs, OutlineWay way)
    {
        var climbs = way == OutlineWay.Climb;
        var line = climbs ? clockwise : clockwise.Reversed;
        return new(path, s, line, TabsOnPath.Of(line, new PathLine(outline), offset, s.Cutter.Radius, tabs), climbs ? 1 : -1);
    }

    /// <summary>One closed path round the part, with its tabs; the waste lies on its left (1) or its right (−1).</summary>
    private sealed class Lap(PathBuilder path, CutSettings s, PathLine line, TabStretch[] tabs, int waste)
    {
        public void Rough(double top, double bottom)
        {
            var station = Start();
            path.EnterAbove(line.At(station), top);
            path.Line(path.At with { Z = top });
            var wood = top;
            foreach (var z in DepthLevels.Of(top, bottom, s.StepDown))
            {
                var ramp = (wood - z) / Math.Tan(s.RampAngle);
                Walk(station, station + ramp, wood, z, wood);
                station += ramp;
                Walk(station, station + line.Length, z, z, wood);
                station += line.Length;
                wood = z;
            }
        }

        public void FinishAllRound(double top, double bottom)
        {
            var start = Start();
            Finish(start, start + line.Length + Overlap, top, bottom);
        }

        /// <summary>From one station to another at full depth, or in as many passes as the flutes need.</summary>
        public void Finish(double from, double to, double top, double bottom)
        {
            var wood = top;
            foreach (var z in DepthLevels.Of(top, bottom, s.StepDown))
            {
                var low = TabsBetween(from - LeadLength, from).Select(t => t.Top).Append(z).Max();
                path.EnterAbove(Beside(from - LeadLength, LeadOff), wood);
                path.Line(path.At with { Z = low });
                for (var k = 1; k <= LeadSteps; k++) path.Line(Beside(from - LeadLength * (LeadSteps - k) / LeadSteps, LeadOff * (LeadSteps - k) / LeadSteps), low);
                path.Line(path.At with { Z = TabsBetween(from, from + Tolerances.Output).Select(t => t.Top).Append(z).Max() });
                Walk(from, to, z, z, wood);
                if (!TabsBetween(to, to + LeadLength).Any())
                    for (var k = 1; k <= LeadSteps; k++) path.Line(Beside(to + LeadLength * k / LeadSteps, LeadOff * k / LeadSteps), z);
                wood = z;
            }
        }

        /// <summary>A place beside the path, on the waste side.</summary>
        private Point2 Beside(double station, double by) => line.At(station) + waste * by * line.Direction(station).Left;

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
            var (begin, zBegin) = (a, za);
            double Z(double station) => zBegin + (zb - zBegin) * (station - begin) / (b - begin);
            foreach (var tab in TabsBetween(a, b))
            {
                var (from, to) = (Math.Max(tab.From, a), Math.Min(tab.To, b));
                if (Z(to) >= tab.Top) continue;
                var over = Math.Max(tab.Top, Z(from));
                var foot = Math.Max(a, from - Flank(over - Z(from)));
                if (foot > a) path.Follow(line, a, foot, Z(foot));
                if (from > a) path.Follow(line, foot, from, over);
                path.Line(path.At with { Z = over });
                path.Follow(line, from, to, over);
                a = to;
                if (to < tab.To) continue;
                var down = to + Flank(over - Z(to));
                if (s.Cutter.Plunges && down < b && !TabsBetween(to + Tolerances.Output, down).Any()) path.Follow(line, to, a = down, Z(down));
                else Sink(to, Math.Min(over, Math.Max(cleared, Z(to))), Z(to));
            }
            if (b > a) path.Follow(line, a, b, zb);
        }

        /// <summary>How long a tab's sloping end is; a tab that stands high over air below has steep ends, not long ones.</summary>
        private static double Flank(double rise) => Math.Min(rise / Math.Tan(TabFlank), LongestFlank);

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
