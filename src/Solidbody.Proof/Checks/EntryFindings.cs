using System.Globalization;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Programs;
using Solidbody.Proof.Cutting;

namespace Solidbody.Proof.Checks;

/// <summary>Whether a text does what the packet's index tells the person at the machine, and what the machine can do.</summary>
internal static class EntryFindings
{
    /// <summary>Speeds and feeds are written to whole turns and to the millimetre a minute; a half of either by rounding, and one more of doubt.</summary>
    private const double PerMinute = 1.5;

    /// <summary>What a coordinate of the text may lie outside the stated room, mm: its own rounding and the index's.</summary>
    private const double Room = 2 * Tolerances.Output;

    public static IEnumerable<Finding> Of(CutProgram program, ProofSettings settings)
    {
        var (entry, motions) = (program.Entry, program.Motions);
        var file = entry.File;
        if (motions.IsEmpty) yield break;

        var other = motions.FirstOrDefault(m => m.SpindleSpeed > 0 && Math.Abs(m.SpindleSpeed - entry.SpindleSpeed) * 60 > PerMinute);
        if (other.Line > 0) yield return ProofFindings.OtherThanTold(file, other.Line, "spindle speed", Turns(other.SpindleSpeed), Turns(entry.SpindleSpeed));
        var faster = motions.FirstOrDefault(m => (m.Feed - entry.Feed) * 60 > PerMinute);
        if (faster.Line > 0) yield return ProofFindings.OtherThanTold(file, faster.Line, "feed", Feed(faster.Feed), $"at most {Feed(entry.Feed)}");
        var farthest = motions.MaxBy(m => Outside(entry.Bounds, m));
        var by = Outside(entry.Bounds, farthest);
        if (by > Room) yield return ProofFindings.OtherThanTold(file, farthest.Line, "room", $"{by.ToString("0.00#", CultureInfo.InvariantCulture)} mm outside it", "inside the stated room");

        foreach (var finding in Machine(program, settings)) yield return finding;
        foreach (var finding in Rack(program, settings)) yield return finding;
    }

    private static IEnumerable<Finding> Machine(CutProgram program, ProofSettings settings)
    {
        var file = program.Entry.File;
        var spin = program.Motions.FirstOrDefault(m => m.SpindleSpeed > 0
            && (m.SpindleSpeed * 60 < settings.SpindleSpeedLeast * 60 - PerMinute || m.SpindleSpeed * 60 > settings.SpindleSpeedMost * 60 + PerMinute));
        if (spin.Line > 0)
            yield return ProofFindings.PastTheMachine(file, spin.Line, Turns(spin.SpindleSpeed), $"{Turns(settings.SpindleSpeedLeast)} to {Turns(settings.SpindleSpeedMost)}");
        var across = program.Motions.FirstOrDefault(m => m.Feed > 0 && (Across(m) - settings.FeedMostXY) * 60 > PerMinute);
        if (across.Line > 0) yield return ProofFindings.PastTheMachine(file, across.Line, $"{Feed(Across(across))} in the plan", $"at most {Feed(settings.FeedMostXY)}");
        var upright = program.Motions.FirstOrDefault(m => m.Feed > 0 && (Upright(m) - settings.FeedMostZ) * 60 > PerMinute);
        if (upright.Line > 0) yield return ProofFindings.PastTheMachine(file, upright.Line, $"{Feed(Upright(upright))} along Z", $"at most {Feed(settings.FeedMostZ)}");
    }

    /// <summary>The cutter must be the rack's own, fetched from its own place.</summary>
    private static IEnumerable<Finding> Rack(CutProgram program, ProofSettings settings)
    {
        if (settings.Rack.IsEmpty) yield break;
        var cutter = program.Entry.Cutter;
        var place = settings.Rack.IndexOf(cutter);
        if (place < 0) yield return ProofFindings.NotInRack(program.Entry.File, cutter.Name, settings.Rack.Any(c => c.Name == cutter.Name));
        int? due = settings.ToolChanger && place >= 0 ? place + 1 : null;
        if (place >= 0 && program.Tool != due) yield return ProofFindings.OtherTool(program.Entry.File, program.Tool, due);
    }

    /// <summary>Feed along Z and in the plan, mm/s; what rounding the ends of a short move adds to its slope is not counted.</summary>
    private static double Upright(in Motion m) => m.Length > 0 ? m.Feed * Math.Max(0, Climb(m) - Room) / m.Length : 0;
    private static double Across(in Motion m) => m.Length > 0 ? m.Feed * Math.Max(0, Math.Sqrt(Math.Max(0, m.Length * m.Length - Climb(m) * Climb(m))) - Room) / m.Length : 0;
    private static double Climb(in Motion m) => Math.Abs(m.To.Z - m.From.Z);

    /// <summary>How far the ends of a motion lie outside a box.</summary>
    private static double Outside(Box3 box, Motion m) => Math.Max(Outside(box, m.From), Outside(box, m.To));
    private static double Outside(Box3 box, WorkPoint p) => new[] { box.X0 - p.X, p.X - box.X1, box.Y0 - p.Y, p.Y - box.Y1, box.Z0 - p.Z, p.Z - box.Z1 }.Max();

    private static string Turns(double perSecond) => string.Create(CultureInfo.InvariantCulture, $"{perSecond * 60:0} turns a minute");
    private static string Feed(double perSecond) => string.Create(CultureInfo.InvariantCulture, $"{perSecond * 60:0} mm/min");
}
