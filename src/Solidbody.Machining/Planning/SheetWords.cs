using System.Collections.Immutable;
using System.Globalization;
using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Instrument.Bodies;
using Solidbody.Materials;
using Solidbody.Programs;
using Solidbody.Shop;

namespace Solidbody.Machining.Planning;

/// <summary>What the set-up sheet tells the person at the machine, in the order of the work.</summary>
internal sealed class SheetWords(Part part, InstrumentDefinition definition, ShopDefinition shop, LaidPart laid, Blank blank, Placement placement, Point2 zeroOnBed, ImmutableArray<Side> sides)
{
    /// <summary>± on a planed blank, a cutter's measured diameter, wood left after the flip; all common practice, no source.</summary>
    private const double BlankTolerance = 0.4, CutterTolerance = 0.02, FlipTolerance = 0.15;

    private bool TurnsOver => sides.Length > 1;
    private bool First => laid.Up == sides[0];
    private bool Last => laid.Up == sides[^1];

    public string Title => $"{char.ToUpperInvariant(part.Name[0])}{part.Name[1..]}, {(laid.Up == Side.Front ? "front" : "back")} up";

    public string Zero => TurnsOver
        ? $"X0 Y0 is the middle of dowel 1, at the {Low} end on the centre line; Z0 is the spoilboard's face"
        : $"X0 Y0 is the marked cross on the centre line at the {Low} end of the blank; Z0 is the spoilboard's face";

    /// <summary>The end of the first mark: the least x.</summary>
    private string Low => part.Name == "body" ? "neck" : part.Name == "neck" ? "headstock" : "nut";
    private string High => part.Name == "body" ? "tail" : part.Name == "neck" ? "heel" : "body";

    public string HoldDown(int screws) => screws == 0
        ? "Double-sided tape over the whole underside, on a spoilboard faced flat"
        : Say($"{screws} screws through the waste where the drawing shows them, heads at most {shop.HoldDowns.ScrewHeadHeight:0.#} mm high{(TurnsOver && !First ? "; two dowels carry the place" : "")}");

    public ImmutableArray<string> Before => [.. BeforeLines()];

    private IEnumerable<string> BeforeLines()
    {
        var b = blank.Box;
        var second = placement.ToWork(new(blank.Second.X, blank.Second.Y, 0));
        if (First)
        {
            if (part.Name == "body")
                foreach (var line in BodyGlueUps()) yield return line;
            yield return Say($"Plane the blank to {b.Thickness:0.0} mm{Kept} and cut it to {b.Length:0} × {b.Width:0} mm, grain along the length.");
            yield return Say($"Draw the centre line on both faces, {-b.Y0:0.0} mm from either long edge.");
            yield return Say($"Mark a cross on it {blank.First.X - b.X0:0.0} mm from the {Low} end and another {blank.Second.X - blank.First.X:0.0} mm further on.");
            yield return Say($"Lay the blank {(laid.Up == Side.Front ? "front" : "back")} up{Turned}: the first cross at X0 Y0, {zeroOnBed.X:0} mm from the bed's left edge and {zeroOnBed.Y:0} mm from its near edge; the second at X{second.X:0.0} Y{second.Y:0.0}.");
        }
        else
        {
            yield return "Brush the spoilboard clean and press two dowels into its holes.";
            yield return Say($"Turn the blank over about its long centre line, so that the {Low} end stays where it was, and press it onto the dowels.");
            yield return "The zero stays as it is: do not set X0 Y0 again.";
        }
        yield return laid.Top > 0 && !TurnsOver ? "Tape the whole underside down and press it flat." : "Drive the screws through the waste where the drawing shows them.";
        yield return "Touch each cutter off on the spoilboard, beside the blank: that is Z0.";
    }

    /// <summary>The glue plane must stay where it is drawn: what is planed comes off the back.</summary>
    private string Kept => part.Name == "body" && definition.Body.Top is { } top ? Say($", off its back only, so that the top stays {top.Thickness:0.0} mm thick,") : "";

    private IEnumerable<string> BodyGlueUps()
    {
        var body = definition.Body;
        foreach (var bore in part.HandBores.Where(h => h.Before == GlueUp.Halves))
            yield return Say($"Groove the {bore.Name} into the mating edge, {bore.Diameter:0.#} mm wide, before the glue-up: {bore.How}.");
        if (body.Pieces > 1) yield return "Joint and glue the two halves on the centre line; leave them in the clamps for 24 hours.";
        if (body.Top is not { } top) yield break;
        if (top.Pieces > 1) yield return Say($"Joint and glue the two halves of the {top.Wood} top, opened like a book; leave them in the clamps for 24 hours.");
        yield return Say($"Plane the {body.Wood} to {body.Thickness - top.Thickness:0.0} mm or a little more, its front flat, and the top to {top.Thickness:0.0} mm.");
        foreach (var bore in part.HandBores.Where(h => h.Before == GlueUp.Top))
            yield return Say($"Groove the {bore.Name} into the face under the top, {bore.Diameter:0.#} mm wide and deep, from x {bore.A.X:0} y {bore.A.Y:0} to x {bore.B.X:0} y {bore.B.Y:0} of the drawing.");
        yield return "Glue the top on, its joint over the centre line, flat between two boards with clamps all round and in the middle; leave it for 24 hours.";
    }

    private string Turned => Math.Abs(placement.Turn) < 1e-9 ? "" : Say($", its {Low}-to-{High} direction turned {placement.Turn * 180 / Math.PI:0.##}° from X");

    public ImmutableArray<string> After(bool frees, bool skin) => [.. AfterLines(frees, skin)];

    private IEnumerable<string> AfterLines(bool frees, bool skin)
    {
        foreach (var pocket in part.Pockets.Where(p => p.From == laid.Up && p.Floor is SlopedHeight { Slope: not 0 }))
            yield return Say($"Measure the {pocket.Name}'s depth at both ends before the blank is moved, from a straightedge over the front: the floor slopes, and the difference of the two depths is the neck angle.");
        if (!frees) { yield return "Take out the screws; leave the spoilboard where it is, its dowel holes are the register of the next set-up."; yield break; }
        yield return skin
            ? "Take the blank up, cut the skin under the outline with a knife or a fine saw, outside the line, and sand it flush."
            : "Take the blank up, saw or break the tabs and trim them flush.";
        foreach (var bore in part.HandBores.Where(h => h.Before is null))
            yield return Say($"Bore the {bore.Name}, {bore.Diameter:0.#} mm: {bore.How}.");
        foreach (var bore in part.HandBores.Where(_ => part.Name == "neck"))
            yield return Say($"Bore the {bore.Name}, {bore.Diameter:0.#} mm: {bore.How}.");
        if (part.Name == "neck") yield return "Sand the carved back along the grain until the ridges are gone.";
        if (part.Name == "fretboard") yield return "Sand the playing face along with a block of its radius; glue the board to the neck with a caul, 24 hours in clamps.";
        if (part.Name == "body")
            foreach (var strip in BodyBinding.Of(definition, part.Outline))
                yield return Say($"Glue the {strip.Name} into its ledge, {BindingStrip.Of(strip.Definition.Kind).Name} {strip.Definition.Thickness:0.##} × {strip.Definition.Height:0.##} mm, {strip.Bought:0} mm bought for {strip.Round:0} mm round: from one wall of the neck pocket's mouth to the other, taped down from the tightest bend outward; after 24 hours scrape it flush.");
        if (part.Name == "body") yield return "Sand 120 to 320.";
    }

    public ImmutableArray<SheetCheck> Checks(IEnumerable<Cutter> cutters) =>
    [
        .. First ? [new SheetCheck("before: blank thickness at three places", Round(blank.Box.Thickness), BlankTolerance)] : Array.Empty<SheetCheck>(),
        .. !First ? [new SheetCheck("before: blank thickness on the dowels, left and right of the centre line", Round(blank.Box.Thickness), FlipTolerance)] : Array.Empty<SheetCheck>(),
        .. cutters.Select(c => new SheetCheck(Say($"before: diameter of {c.Name}"), c.Diameter, CutterTolerance)),
        .. TakenHere().Select(m => new SheetCheck("after: " + m.Name, Round(m.Expected), m.Tolerance)),
    ];

    /// <summary>Rooms and holes are measured as soon as they are there, everything else when the part is done; of a row of equal ones
    /// the first and the last tell whether the row stands right, and fret 12 is half the scale.</summary>
    private IEnumerable<Measure> TakenHere() =>
        from rows in part.Measures.Where(IsThereNow).GroupBy(m => Unnumbered(m.Name))
        from measure in rows
        where measure == rows.First() || (!measure.Name.StartsWith("diameter", StringComparison.Ordinal) && (measure == rows.Last() || measure.Name.StartsWith("fret 12 ", StringComparison.Ordinal)))
        select measure;

    private bool IsThereNow(Measure measure)
    {
        var features = part.Pockets.Select(p => (p.Name, p.From)).Concat(part.Holes.Select(h => (h.Name, h.From))).Concat(part.Ledges.Select(l => (l.Name, l.From)))
            .Where(f => measure.Name.Contains(f.Name, StringComparison.Ordinal)).ToList();
        if (features.Count == 0) return Last;
        var side = features.MaxBy(f => f.Name.Length).From;
        return laid.Up == side || (Last && !sides.Contains(side));
    }

    private static string Unnumbered(string name) => string.Concat(name.Where(c => !char.IsAsciiDigit(c)));

    private static double Round(double mm) => Math.Round(mm, 2);
    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
