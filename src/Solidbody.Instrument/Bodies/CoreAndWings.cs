using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Instrument.Balance;
using Solidbody.Instrument.Necks;

namespace Solidbody.Instrument.Bodies;

/// <summary>What a through-neck instrument is glued up from, each piece as it is in the finished instrument. Right-handed; lengths mm.</summary>
/// <param name="Neck">The neck, less what of it lies inside the body; in its own frame.</param>
/// <param name="Core">The body between the glue lines: one piece with the neck, and of its wood.</param>
/// <param name="Bass">A wing.</param>
/// <param name="Treble">The other.</param>
internal sealed record CoreAndWings(Part Neck, Part Core, Part Bass, Part Treble)
{
    /// <summary>Steps along the neck and along a glue line, mm.</summary>
    private const double Step = 1;

    /// <returns>Null unless the neck goes through.</returns>
    public static CoreAndWings? Of(InstrumentDefinition d, Part body, Part neck)
    {
        if (d.Neck.Core is not { } core) return null;
        var ((bass, treble), box) = (core.Lines, body.Bounds);
        var seat = NeckSeat.Of(d);
        return new(
            neck with { Back = new OverBody(neck.Back, body.Outline, seat, d.Neck.Heel.Thickness) },
            Between(body, "core", bass, treble) with { Wood = d.Neck.Wood },
            Between(body, "bass wing", box.Y0, bass),
            Between(body, "treble wing", treble, box.Y1));
    }

    /// <summary>The body between two lines along it.</summary>
    private static Part Between(Part body, string name, double from, double to)
    {
        var box = body.Bounds;
        var strip = new Region(Shapes.Rectangle(new((box.X0 + box.X1) / 2, (from + to) / 2), box.Length + 2 * Step, to - from));
        var plan = new Region(Offsets.Intersection(body.Outline, strip).SelectMany(r => r.Loops));
        var cut = plan.Bounds;
        return body with { Name = name, Outline = plan, Bounds = box with { X0 = cut.X0, Y0 = cut.Y0, X1 = cut.X1, Y1 = cut.Y1 }, Measures = [], TabPlaces = [] };
    }

    /// <summary>The instrument's wood, none of it counted twice.</summary>
    public ImmutableArray<PartWood> Woods(InstrumentDefinition d, ImmutableArray<Part> parts, ScarfJoint? scarf)
    {
        var (body, neck) = (parts[0], parts[1]);
        // The core's wood is told in the neck's frame, to which it belongs.
        var core = PartVolume.Of(Core).Raised(-WoodWeights.DatumAboveBody(d, neck.Name));
        PartWood Wing(Part wing) => new(wing.Name, body, wing.Wood, d.Body.Grain, 1, wing.Bounds, PartVolume.Of(wing));
        return
        [
            Wing(Bass), Wing(Treble),
            new("neck and core", neck, neck.Wood, d.Neck.Grain, 1, Blank(d, scarf), PartVolume.Together(PartVolume.Of(Neck), core)),
            .. PartWood.Of(d, [.. parts.Skip(2)]),
        ];
    }

    /// <summary>The box neck and core come out of, in the body's frame: headstock to tail, or from a scarf joint on; the headstock's or the core's width; from the deepest back to the highest face.</summary>
    public Box3 Blank(InstrumentDefinition d, ScarfJoint? scarf)
    {
        var (seat, heel, tail) = (NeckSeat.Of(d), d.Neck.Heel.Thickness, Core.Bounds);
        var from = scarf is null ? Neck.Bounds.X0 : tail.X1 - scarf.ShaftPiece;
        var box = tail;
        foreach (var p in Neck.Outline.Loops[0].Points.Concat(Middle(from)).Where(p => p.X >= from))
            foreach (var h in (double[])[heel + Neck.Front.Z(p.X, p.Y), heel + Neck.Back.Z(p.X, p.Y)])
            {
                var (x, z) = (seat.X(p.X, h), seat.Z(p.X, h));
                box = new(Math.Min(box.X0, x), Math.Min(box.Y0, p.Y), Math.Min(box.Z0, z), Math.Max(box.X1, x), Math.Max(box.Y1, p.Y), Math.Max(box.Z1, z));
            }
        return box;
    }

    /// <summary>Along the neck's middle, where it is deepest or nearly so.</summary>
    private IEnumerable<Point2> Middle(double from)
    {
        for (var x = from; x <= Neck.Bounds.X1; x += Step) yield return new(x, 0);
    }

    public CoreFigures Figures(InstrumentDefinition d, Part body, ScarfJoint? scarf)
    {
        var (bass, treble) = d.Neck.Core!.Lines;
        return new(Blank(d, scarf), new(Bass.Bounds, GlueFace(body, bass)), new(Treble.Bounds, GlueFace(body, treble)));
    }

    /// <summary>Glue face between core and wing, mm²: the body's height along the glue line, less what rooms and holes take of it.</summary>
    private static double GlueFace(Part body, double line)
    {
        var (shape, area) = (new PartShape(body), 0.0);
        for (var x = body.Bounds.X0 + Step / 2; x < body.Bounds.X1; x += Step)
            if (shape.At(new(x, line)) is { IsEmpty: false } column) area += Step * (column.Top - column.Bottom);
        return area;
    }

    /// <summary>The neck's back, and inside the body the body's front: what lies below it is the body's.</summary>
    private sealed record OverBody(IHeight Back, Region Body, NeckSeat Seat, double Heel) : IHeight
    {
        public double Z(double x, double y)
        {
            var front = Seat.FrontAt(x);
            return Body.Contains(new(Seat.X(x, front), y)) ? Math.Max(Back.Z(x, y), front - Heel) : Back.Z(x, y);
        }
    }
}
