using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Instrument;

namespace Solidbody.Packet.Drawing;

/// <summary>What a line on a part's plan stands for, heaviest first.</summary>
internal enum LineRole { Outline, Feature, Fine }

/// <summary>One closed line of a part's plan, part frame.</summary>
internal sealed record PlanLine(LineRole Role, Loop Loop);

/// <summary>The lines of a part as seen square onto one of its faces: outline, and what is opened from that face or goes through.</summary>
internal static class PartLines
{
    /// <param name="part">The finished part.</param>
    /// <param name="seen">The face that looks at the reader.</param>
    /// <returns>Closed lines in the part frame, not yet turned over: fine ones first, the outline last, so that it is drawn on top.</returns>
    public static ImmutableArray<PlanLine> Seen(Part part, Side seen)
    {
        ArgumentNullException.ThrowIfNull(part);
        var lines = ImmutableArray.CreateBuilder<PlanLine>();
        if (seen == Side.Front)
            foreach (var slot in part.Slots)
                lines.AddRange(Inside(part, new Region(Strip(slot)), LineRole.Fine));
        foreach (var flat in part.Flats.Where(f => f.From == seen))
            lines.AddRange(Inside(part, flat.Region, LineRole.Fine));
        foreach (var zone in part.CarvedZones.Where(z => z.From == seen))
            lines.AddRange(Inside(part, zone.Region, LineRole.Fine));
        foreach (var pocket in part.Pockets.Where(p => p.Through || p.From == seen))
            lines.AddRange(Inside(part, pocket.Region, LineRole.Feature));
        foreach (var hole in part.Holes.Where(h => h.Through || h.From == seen))
            lines.Add(new(LineRole.Feature, Shapes.Circle(hole.Centre, hole.Diameter / 2)));
        lines.AddRange(part.Outline.Loops.Select(l => new PlanLine(LineRole.Outline, l)));
        return lines.ToImmutable();
    }

    private static Loop Strip(Slot slot) => Shapes.Capsule(slot.A, slot.B, slot.Width / 2);

    private static IEnumerable<PlanLine> Inside(Part part, Region region, LineRole role) =>
        Offsets.Intersection(region, part.Outline).SelectMany(r => r.Loops).Select(l => new PlanLine(role, l));
}
