using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Outlines;

namespace Solidbody.Instrument.Checks;

/// <summary>Whether a neck that goes through the body can be glued up and holds. Right-handed.</summary>
internal static class ThroughChecks
{
    /// <summary>A drill that crosses a glue line flatter than this wanders along it, radians; common practice, no source.</summary>
    private const double FlattestCrossing = Math.PI / 6;

    /// <summary>What must hold before core and wings can be told apart.</summary>
    public static IEnumerable<Finding> Foundations(InstrumentDefinition d, Region body)
    {
        if (d.Neck.Core is not { } core) yield break;
        foreach (var (side, width) in ((string, double)[])[("bass", core.Lines.Bass - body.Bounds.Y0), ("treble", body.Bounds.Y1 - core.Lines.Treble)])
            if (!(width >= Limits.Wing)) yield return ThroughFindings.NarrowWing(side, width);
    }

    public static IEnumerable<Finding> Of(InstrumentDefinition d, Part body, Part neck, CoreFigures? figures)
    {
        if (d.Neck.Core is not { } core || figures is null) return [];
        return [.. OnLines(core, body), .. Wider(d, core, body), .. Board(core, figures), .. Channels(d, body, neck), .. Glue(figures), .. Depth(d)];
    }

    private static IEnumerable<Finding> OnLines(CoreDefinition core, Part body)
    {
        foreach (var (line, y) in ((string, double)[])[("bass", core.Lines.Bass), ("treble", core.Lines.Treble)])
        {
            foreach (var hole in body.Holes.Where(IsScrew))
                if (Math.Abs(hole.Centre.Y - y) - hole.Diameter / 2 is var wood && !(wood >= Limits.ScrewToJoint)) yield return ThroughFindings.OnGlueLine(hole.Name, line, wood);
            foreach (var bore in body.HandBores.Where(b => b.Before is null && !CrossesSteeply(b, y)))
                if (ToLine(bore, y) - bore.Diameter / 2 is var wood && !(wood >= Limits.ScrewToJoint)) yield return ThroughFindings.OnGlueLine(bore.Name, line, wood);
        }
    }

    /// <summary>Shafts and strings pass freely: they pull at no glue line.</summary>
    private static bool IsScrew(Hole hole) => hole.Name.Contains("screw", StringComparison.Ordinal) || hole.Name.Contains("stud", StringComparison.Ordinal);

    private static double ToLine(HandBore bore, double y) => Crosses(bore, y) ? 0 : Math.Min(Math.Abs(bore.A.Y - y), Math.Abs(bore.B.Y - y));
    private static bool Crosses(HandBore bore, double y) => (bore.A.Y - y) * (bore.B.Y - y) < 0;
    private static bool CrossesSteeply(HandBore bore, double y) => bore.ForWires && Crosses(bore, y) && Math.Atan2(Math.Abs(bore.B.Y - bore.A.Y), Math.Abs(bore.B.X - bore.A.X)) >= FlattestCrossing;

    private static IEnumerable<Finding> Wider(InstrumentDefinition d, CoreDefinition core, Part body)
    {
        var rooms = body.Pockets.Where(r => d.Body.Pickups.Any(p => p.Name == r.Name)).Select(r => (r.Name, Half: Math.Max(r.Region.Bounds.Y1, -r.Region.Bounds.Y0)));
        var screws = body.Holes.Where(h => h.Name.StartsWith("bridge screw", StringComparison.Ordinal)).Select(h => Math.Abs(h.Centre.Y) + h.Diameter / 2 + Limits.ScrewToJoint).DefaultIfEmpty(0).Max();
        (string Name, double Half)[] wider = [.. rooms.Append(("the bridge's screws", screws)).Where(t => t.Item2 > core.Width / 2)];
        if (wider.Length > 0) yield return ThroughFindings.WiderThanCore(string.Join(", ", wider.Select(w => w.Name)), core.Width, 2 * wider.Max(w => w.Half));
    }

    private static IEnumerable<Finding> Board(CoreDefinition core, CoreFigures figures)
    {
        if (core.Board is { } board && figures.Blank is var blank && !(blank.Length <= board.Length && blank.Width <= board.Width && blank.Thickness <= board.Thickness)) yield return ThroughFindings.BoardTooSmall(blank, board);
    }

    /// <summary>Rod and bars lie in the same wood as the body's rooms: seen in the plan, where they share a height.</summary>
    private static IEnumerable<Finding> Channels(InstrumentDefinition d, Part body, Part neck)
    {
        var (seat, heel) = (NeckSeat.Of(d), d.Neck.Heel.Thickness);
        foreach (var channel in neck.Pockets.Where(p => p.Name.EndsWith("channel", StringComparison.Ordinal)))
        {
            var end = channel.Region.Bounds.X1;
            var floor = seat.Z(end, heel + channel.Floor.Z(end, 0));
            var plan = channel.Region.Map(p => new(seat.X(p.X, heel), p.Y));
            foreach (var room in body.Pockets.Where(r => r.From == Side.Front ? floor < Limits.BetweenRooms : r.Floor.Z(end, 0) > floor - Limits.BetweenRooms))
            {
                var wood = Math.Min(Segments.Gap(plan.Loops[0], room.Region), Segments.Gap(room.Region.Loops[0], plan));
                if (!(wood >= Limits.BetweenRooms)) yield return ThroughFindings.RoomAtChannel(room.Name, channel.Name, wood);
            }
        }
    }

    private static IEnumerable<Finding> Glue(CoreFigures figures)
    {
        foreach (var (wing, area) in ((string, double)[])[("bass wing", figures.Bass.Glue), ("treble wing", figures.Treble.Glue)])
            if (!(area >= Limits.TenonGlue)) yield return ThroughFindings.LittleGlue(wing, area);
    }

    private static IEnumerable<Finding> Depth(InstrumentDefinition d)
    {
        var below = -d.Body.Thickness - NeckSeat.Of(d).Z(NeckJoint.Of(d).ShoulderX, 0);
        if (!(below <= 0)) yield return ThroughFindings.BelowBack(below);
    }
}
