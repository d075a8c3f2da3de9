using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Materials;

namespace Solidbody.Instrument.Balance;

/// <summary>Wood of one kind in a part: the whole of it, or one of those it is glued up of.</summary>
/// <param name="Name">The part's, or such as <c>body's top</c>.</param>
/// <param name="Part">The part it stays in, right-handed.</param>
/// <param name="Wood">Key.</param>
/// <param name="Grain">How its boards are sawn.</param>
/// <param name="Boards">Side by side.</param>
/// <param name="Box">Around it in the finished part.</param>
/// <param name="Volume">In the finished part.</param>
public sealed record PartWood(string Name, Part Part, string Wood, Grain Grain, int Boards, Box3 Box, PartVolume Volume)
{
    public const string Top = "body's top";

    /// <summary>Part by part, what lies below before what lies above.</summary>
    public static ImmutableArray<PartWood> Of(InstrumentDefinition d, ImmutableArray<Part> parts)
    {
        ArgumentNullException.ThrowIfNull(d);
        return [.. parts.SelectMany(p => p.Name == "body" && d.Body.Top is { } top ? Laminated(d.Body, top, p) : [Whole(d, p)])];
    }

    private static PartWood Whole(InstrumentDefinition d, Part part) =>
        new(part.Name, part, part.Wood, part.Name switch { "body" => d.Body.Grain, "neck" => d.Neck.Grain, _ => d.Fretboard.Grain }, part.Name == "body" ? d.Body.Pieces : 1, part.Bounds, PartVolume.Of(part));

    private static IEnumerable<PartWood> Laminated(BodyDefinition body, TopDefinition top, Part part)
    {
        var (below, above) = PartVolume.Split(part, top.GluePlane);
        yield return new(part.Name, part, part.Wood, body.Grain, body.Pieces, part.Bounds with { Z1 = top.GluePlane }, below);
        yield return new(Top, part, top.Wood, top.Grain, top.Pieces, part.Bounds with { Z0 = top.GluePlane }, above);
    }
}
