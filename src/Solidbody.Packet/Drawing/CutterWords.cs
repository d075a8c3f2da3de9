using Solidbody.Geometry;

namespace Solidbody.Packet.Drawing;

/// <summary>A cutter as a person picks it from the rack.</summary>
internal static class CutterWords
{
    /// <summary>Such as <c>up-spiral ⌀12, 3 flutes</c>.</summary>
    public static string Of(Cutter cutter)
    {
        var diameter = $"⌀{Written.Size(cutter.Diameter)}";
        return cutter.Kind switch
        {
            CutterKind.Drill => $"drill {diameter}",
            CutterKind.UpSpiral => $"up-spiral {diameter}, {Flutes(cutter)}",
            CutterKind.DownSpiral => $"down-spiral {diameter}, {Flutes(cutter)}",
            CutterKind.Straight => $"straight {diameter}, {Flutes(cutter)}",
            CutterKind.BallEnd => $"ball-end {diameter}, {Flutes(cutter)}",
            CutterKind.TaperedBallEnd => $"tapered ball-end {diameter}, tip R{Written.Size(cutter.TipRadius)}",
            CutterKind.Roundover => $"roundover R{Written.Size(cutter.EdgeRadius)}, {Flutes(cutter)}",
            _ => throw new ArgumentOutOfRangeException(nameof(cutter), cutter.Kind, "No words for this kind of cutter."),
        };
    }

    private static string Flutes(Cutter cutter) => Written.Count(cutter.Flutes, "flute");
}
