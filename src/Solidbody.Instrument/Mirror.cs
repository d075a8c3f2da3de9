using Solidbody.Geometry;

namespace Solidbody.Instrument;

/// <summary>The left-handed instrument: everything mirrored, y → −y, in this one place. Bass and treble keep their meaning.</summary>
internal static class Mirror
{
    public static Part Of(Part p) => p with
    {
        Outline = p.Outline.Mirrored,
        Front = Of(p.Front),
        Back = Of(p.Back),
        Bounds = p.Bounds with { Y0 = -p.Bounds.Y1, Y1 = -p.Bounds.Y0 },
        Pockets = [.. p.Pockets.Select(k => k with { Region = k.Region.Mirrored, Floor = Of(k.Floor) })],
        Holes = [.. p.Holes.Select(h => h with { Centre = Of(h.Centre) })],
        Slots = [.. p.Slots.Select(s => s with { A = Of(s.A), B = Of(s.B) })],
        Flats = [.. p.Flats.Select(f => f with { Region = f.Region.Mirrored })],
        CarvedZones = [.. p.CarvedZones.Select(z => z with { Region = z.Region.Mirrored })],
        // Reversed, so that the wood stays on the path's left.
        Edges = [.. p.Edges.Select(e => e with { Path = [.. e.Path.Reverse().Select(Of)] })],
        Ledges = [.. p.Ledges.Select(l => l with { Inside = l.Inside.Mirrored })],
        HandBores = [.. p.HandBores.Select(b => b with { A = Of(b.A), B = Of(b.B) })],
        Measures = [.. p.Measures.Select(m => m with { Caliper = Of(m.Caliper) })],
        TabPlaces = [.. p.TabPlaces.Select(Of)],
    };

    public static Point2 Of(Point2 p) => new(p.X, -p.Y);
    private static PartPoint Of(PartPoint p) => p with { Y = -p.Y };

    private static IHeight Of(IHeight height) => height switch
    {
        LevelHeight or SlopedHeight => height,
        MirroredHeight m => m.Original,
        _ => new MirroredHeight(height),
    };

    private static Caliper Of(Caliper caliper) => caliper switch
    {
        Caliper.Thickness t => t with { At = Of(t.At) },
        Caliper.DepthFromTop t => t with { At = Of(t.At) },
        Caliper.DepthFromBottom t => t with { At = Of(t.At) },
        Caliper.Fall f => new Caliper.Fall(Of(f.High), Of(f.Low)),
        Caliper.Outside o => o with { Middle = Of(o.Middle), Along = Of(o.Along) },
        Caliper.Inside i => i with { Middle = Of(i.Middle), Along = Of(i.Along) },
        Caliper.InsideCentre c => c with { Origin = Of(c.Origin), Along = Of(c.Along) },
        Caliper.InsideEnd e => e with { Origin = Of(e.Origin), Along = Of(e.Along) },
        _ => throw new ArgumentException($"No mirror image is known for {caliper.GetType().Name}.", nameof(caliper)),
    };
}

/// <summary>The mirror image y → −y of a height.</summary>
public sealed record MirroredHeight(IHeight Original) : IHeight
{
    public double Z(double x, double y) => Original.Z(x, -y);
}
