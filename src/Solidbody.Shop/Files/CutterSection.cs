using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Reading;

namespace Solidbody.Shop.Files;

/// <summary>The list <c>[[cutters]]</c>: each cutter by its measured sizes.</summary>
static class CutterSection
{
    static readonly ImmutableArray<(string, CutterKind)> Kinds =
    [
        ("up-spiral", CutterKind.UpSpiral), ("down-spiral", CutterKind.DownSpiral), ("straight", CutterKind.Straight), ("ball-end", CutterKind.BallEnd),
        ("tapered ball-end", CutterKind.TaperedBallEnd), ("drill", CutterKind.Drill), ("roundover", CutterKind.Roundover),
    ];

    /// <summary>Included point angle of a common twist drill: 118°, common practice, no source.</summary>
    const double TwistDrillPoint = 118;

    public static Cutter Read(TableReader cutter, HashSet<string> names)
    {
        var name = cutter.Text("name", 30, null, "the shop's own short name, once in the rack");
        var kind = cutter.Choice("kind", Kinds, null, "what its edges sweep");
        var (isDrill, isTapered, isRoundover) = (kind == CutterKind.Drill, kind == CutterKind.TaperedBallEnd, kind == CutterKind.Roundover);
        var diameter = cutter.Length("diameter", 0.3, 60, null, "measured, not the catalogue's; of a tapered ball-end at the top of its cone");
        var flute = cutter.Length("flute_length", 0.5, 150, null, "cutting edges, from the tip");
        var overall = cutter.Length("overall_length", 10, 250, null, "tip to shank end");
        var result = new Cutter
        {
            Name = name,
            Kind = kind,
            Diameter = diameter,
            FluteLength = flute,
            OverallLength = overall,
            ShankDiameter = cutter.Length("shank", 1, 30, null, "diameter of the shank"),
            Flutes = cutter.Count("flutes", 1, 8, isDrill ? 2 : null, "cutting edges"),
            StickOut = cutter.Length("stick_out", 3, 200, null, "tip to collet when set up"),
            Angle = !isDrill && !isTapered ? RefuseFor(cutter, "angle", "drills and tapered ball-ends")
                : cutter.Angle("angle", isDrill ? 30 : 0.5, isDrill ? 180 : 60, isDrill ? TwistDrillPoint : null, "drill: included point angle, 180 deg is flat; tapered ball-end: half angle of its cone"),
            TipRadius = !isTapered && !isRoundover ? RefuseFor(cutter, "tip_radius", "tapered ball-ends and roundovers")
                : cutter.Length("tip_radius", isTapered ? 0.1 : 0, 20, null, "tapered ball-end: of its ball; roundover: of the flat tip inside the hollow"),
            EdgeRadius = !isRoundover ? RefuseFor(cutter, "edge_radius", "roundovers")
                : cutter.Length("edge_radius", 0.5, 25, null, "roundover: of the rounded edge it leaves"),
            Material = cutter.Word("material", ["carbide", "steel"], isDrill ? "steel" : "carbide", "of the edges"),
            Plunges = cutter.Flag("plunges", isDrill, "whether it cuts to its centre and may go straight down"),
        };
        if (cutter.IsSound) RefuseMisfits(cutter, result);
        if (name != "" && !names.Add(name))
            cutter.Refuse("name", $"two cutters are called \"{name}\"", "each name once in the rack", "rename one");
        return result;
    }

    /// <summary>A measure that this kind of cutter does not have: written all the same, it is a mistake, not a thing to pass over.</summary>
    static double RefuseFor(TableReader cutter, string key, string owners)
    {
        cutter.RefuseIfGiven(key, $"only {owners} have it", "remove it, or mend `kind`");
        return 0;
    }

    static void RefuseMisfits(TableReader cutter, Cutter c)
    {
        RefuseLonger("flute_length", "the flutes are", c.FluteLength, c.OverallLength, "the overall length");
        RefuseLonger("stick_out", "it sticks out", c.StickOut, c.OverallLength, "the overall length");
        RefuseLonger("flute_length", "the flutes are", c.FluteLength, c.StickOut, "the stick-out, or the flutes turn in the collet");
        RefuseLonger("tip_radius", "its tip radius is", c.TipRadius, c.Radius, "half the diameter");
        if (c.Kind == CutterKind.Roundover && Math.Abs(c.TipRadius + c.EdgeRadius - c.Radius) > Tolerances.Gouge)
            cutter.Refuse("edge_radius", $"tip and edge radius come to {cutter.Show(c.TipRadius + c.EdgeRadius)}", $"half the diameter, {cutter.Show(c.Radius)}", "measure again: diameter = 2 × (tip_radius + edge_radius)");

        void RefuseLonger(string key, string what, double have, double most, string limit)
        {
            if (have > most) cutter.Refuse(key, $"{what} {cutter.Show(have)}", $"at most {cutter.Show(most)}, {limit}", "measure again");
        }
    }
}
