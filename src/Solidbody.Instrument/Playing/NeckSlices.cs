using Solidbody.Instrument.Beams;
using Solidbody.Instrument.Fretboards;
using Solidbody.Instrument.Necks;
using Solidbody.Materials;

namespace Solidbody.Instrument.Playing;

/// <summary>The neck cut square across: wood of the back, less rod channel and bar channels, bars, and the radiused board, glued into one. Heights from the glue plane, mm.</summary>
/// <param name="X">mm from the nut.</param>
/// <param name="Slack">The rod lies loose and carries nothing: it is not glued.</param>
/// <param name="Tight">The rod is under load: one that pulls is a tie, held at both ends; one of two bars bends with the neck as a pair, but takes no push or pull from it.</param>
/// <param name="AtSlot">At a fret slot, rod slack: the board counts up to the slot's floor.</param>
/// <param name="Back">Depth of the back on its deepest line.</param>
/// <param name="SlotFloor">Height of the slots' floor on the centre line.</param>
public sealed record NeckSlice(double X, CompositeSection Slack, CompositeSection Tight, CompositeSection AtSlot, double Back, double SlotFloor);

/// <summary>Cuts the neck into slices.</summary>
/// <remarks>How slots count: a fret's tang does not fill its slot for sure, so over a slot the board counts to its floor only. The stress dips under the slot as if at 45°, which lames
/// one slot depth of the board's length beside the slot's own width (our assumption): that share of each gap is bent with the stiffness at a slot, the rest with the whole.</remarks>
internal sealed class NeckSlices(InstrumentDefinition d, NeckBack back, double neckModulus, double boardModulus)
{
    /// <summary>Slots that are only scribed by the router are sawn to this depth by hand, mm; common practice, no source.</summary>
    private const double SawnByHand = 2.2;

    private readonly RadiusedFace face = FretboardMaker.Face(d);
    private readonly double slot = Math.Min(d.Fretboard.Thickness, d.Fretboard.FretCut == FretCut.Slots ? d.Fretboard.SlotDepth : Math.Max(SawnByHand, d.Fretboard.SlotDepth));

    public NeckSlice At(double x)
    {
        var (rod, half) = (d.Neck.Rod, FretboardMaker.HalfWidth(d, x));
        var hasRod = x >= rod.Start && x <= rod.End;
        var neck = AreaMoments.Between(half, y => (-back.Depth(x, y), 0));
        if (hasRod) neck -= AreaMoments.Rectangle(rod.Width, -rod.Depth, 0);
        var bars = default(Member);
        if (d.Neck.Bars is { Count: > 0 } b && x >= b.Start && x <= b.End)
        {
            neck -= AreaMoments.Rectangle(b.Count * b.Width, -b.Depth, 0);
            bars = new(b.Modulus, AreaMoments.Rectangle(b.Count * b.Width, -b.Depth, -b.Below));
        }
        var wood = new Member(neckModulus, neck);
        var board = new Member(boardModulus, AreaMoments.Between(half, y => (0, face.Z(x, y))));
        var cutBoard = new Member(boardModulus, AreaMoments.Between(half, y => (0, face.Z(x, y) - slot)));

        var share = SlotShare(x);
        CompositeSection Smeared(Member more)
        {
            var (whole, cut) = (CompositeSection.Of(wood, bars, board, more), CompositeSection.Of(wood, bars, cutBoard, more));
            return whole with { BendingStiffness = 1 / ((1 - share) / whole.BendingStiffness + share / cut.BendingStiffness) };
        }
        var slack = Smeared(default);
        var tight = !hasRod ? slack : rod.Kind == RodKind.SingleAction ? Smeared(new(NeckIron.Steel, AreaMoments.Round(rod.Diameter, RodLevel)))
            : slack with { BendingStiffness = slack.BendingStiffness + PairStiffness };
        return new(x, slack, tight, CompositeSection.Of(wood, bars, cutBoard), Deepest(x), face.Thickness - slot);
    }

    /// <summary>Neck wood alone, as the part is cut: behind the nut, where the adjuster's room weakens it.</summary>
    /// <param name="x">Negative.</param>
    public NeckSlice BehindNut(PartShape neck, double x)
    {
        var (wood, back, front) = (default(AreaMoments), 0.0, double.NegativeInfinity);
        var (from, to) = (neck.Part.Bounds.Y0, neck.Part.Bounds.Y1);
        var width = (to - from) / Columns;
        for (var k = 0; k < Columns; k++)
        {
            var column = neck.At(new(x, from + (k + 0.5) * width));
            if (column.IsEmpty) continue;
            wood += AreaMoments.Rectangle(width, column.Bottom, column.Top);
            (back, front) = (Math.Min(back, column.Bottom), Math.Max(front, column.Top));
        }
        var section = CompositeSection.Of(new Member(neckModulus, wood));
        return new(x, section, section, section, -back, front);
    }

    /// <summary>Across the widest headstock they stand half a millimetre apart.</summary>
    private const int Columns = 200;

    /// <summary>Middle of a pulling rod, on its channel's floor.</summary>
    public double RodLevel => d.Neck.Rod.Diameter / 2 - d.Neck.Rod.Depth;

    /// <summary>Between the middles of a rod's two bars: one on the channel's floor, one under the board.</summary>
    public double PairSpacing => d.Neck.Rod.Depth - d.Neck.Rod.Diameter;

    private double PairStiffness
    {
        get
        {
            var bar = AreaMoments.Round(d.Neck.Rod.Diameter, PairSpacing / 2);
            return 2 * NeckIron.Steel * bar.Second;
        }
    }

    /// <summary>Share of the board's length lamed by slots: (slot width + slot depth) over the gap between frets there, (L − x) ln 2 / 12.</summary>
    private double SlotShare(double x) => Math.Min(1, (d.Fretboard.SlotWidth + slot) / ((d.Scale - x) * Math.Log(2) / 12));

    private double Deepest(double x) => Math.Max(back.Depth(x, back.ApexY(x)), back.Depth(x, 0));
}
