using Solidbody.Instrument.Fretboards;
using Solidbody.Instrument.Necks;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The table <c>[headstock]</c>: tuners on one side or both, and the outline around them. The measures are our own headstock family's.</summary>
static class HeadstockSection
{
    /// <summary>What the number of tuners a side and their size decide, mm; splay in degrees.</summary>
    sealed record Family(double TunerHole, double PostRadius, double FirstPost, double TunerPitch, double Splay, double EdgeDistance, double EdgeLead, double EdgeTrail,
        double NeckBlend, double Swell, double Dip, double TipLength, double TipLean, double TipRadius, double TipLeg, double OgeePosts, double OgeeOther);

    static readonly Family InLine = new(10, 3, 34, 25, 0, 11, 14, 6, 7, 3, 1.5, 26, 0.12, 8, 7, 2.4, -1);
    static readonly Family BothSides = new(10, 3, 38, 36, 1.5, 11.5, 15, 8, 8, 0, 0, 21, 0, 6.5, 5.5, 2.6, 2.6);
    static readonly Family BassBothSides = new(17, 6, 46, 52, 1, 15, 20, 9, 9, 0, 0, 26, 0, 8.5, 7.5, 3, 3);
    /// <summary>From the rules for other sizes: lead 0.45 pitch, trail 0.55 of the edge distance.</summary>
    static readonly Family BassInLine = new(17, 6, 46, 40, 0, 15, 18, 8.25, 9, 3, 1.5, 32, 0.12, 9.75, 8.25, 3, -1);

    /// <summary>More tuners a side than this stand closer together, or the head grows long.</summary>
    const int MostAtFullPitch = 3;
    const double CrowdedPitch = 30;

    public static HeadstockDefinition Read(TableReader head, InstrumentBasis basis, FretLayout layout)
    {
        var bass = head.Count("tuners_bass", 0, 9, (basis.Strings + 1) / 2, "tuners on the bass side; all strings there is in line");
        var treble = head.Count("tuners_treble", 0, 9, Math.Max(0, basis.Strings - bass), "tuners on the treble side");
        if (head.IsSound && bass + treble != basis.Strings)
            head.Refuse("tuners_bass", $"{bass} and {treble} tuners for {basis.Strings} strings", $"{basis.Strings} together", "give each string one tuner");

        var inLine = bass == 0 || treble == 0;
        var family = (basis.IsBass, inLine) switch { (false, true) => InLine, (false, false) => BothSides, (true, true) => BassInLine, _ => BassBothSides };
        var pitch = !basis.IsBass && !inLine && Math.Max(bass, treble) > MostAtFullPitch ? CrowdedPitch : family.TunerPitch;
        var (ogeeBass, ogeeTreble) = bass > 0 ? (family.OgeePosts, family.OgeeOther) : (family.OgeeOther, family.OgeePosts);
        var angle = head.Angle("angle", 0, 17, 0, "how far the headstock leans back; 0 is parallel");
        var drop = head.Length("drop", 0, 12, angle > 0 ? 0 : 4, "front face below the board's glue plane; an angled headstock has none");
        if (head.IsSound && angle > 0 && drop > 0)
            head.Refuse("drop", $"an angled headstock with a drop of {head.Show(drop)}", "0 with an angle", "leave out drop or angle");
        var definition = new HeadstockDefinition
        {
            TunersBass = bass,
            TunersTreble = treble,
            Thickness = head.Length("thickness", 10, 22, 15, "front face to back"),
            Drop = drop,
            Angle = angle,
            Scarf = ReadScarf(head, angle),
            TunerHole = head.Length("tuner_hole", 5, 22, family.TunerHole, "bore for a tuner's bush"),
            PostRadius = head.Length("post_radius", 2, 10, family.PostRadius, "string post: the string touches its inner side"),
            FirstPost = family.FirstPost,
            TunerPitch = head.Length("tuner_pitch", 18, 80, pitch, "post to post on a side"),
            Splay = double.DegreesToRadians(family.Splay),
            EdgeDistance = head.Length("edge_distance", 8, 25, family.EdgeDistance, "posts to the edge beside them"),
            EdgeLead = head.Length("edge_lead", 5, 40, family.EdgeLead, "straight edge before the first post"),
            EdgeTrail = head.Length("edge_trail", 2, 25, family.EdgeTrail, "straight edge beyond the last post"),
            NeckBlend = head.Length("neck_blend", 4, 20, family.NeckBlend, "how far the neck's own edge runs on past the nut"),
            Guard = head.Length("guard", 4, 20, 8, "on a side without tuners: edge outside the outer string"),
            Swell = head.Length("swell", 0, 10, family.Swell, "on a side without tuners: fullness toward the tip"),
            Dip = head.Length("dip", 0, 6, family.Dip, "on a side without tuners: hollow behind the nut"),
            TipLength = head.Length("tip_length", 10, 60, family.TipLength, "tip beyond the last post's edge"),
            TipLean = head.Number("tip_lean", -1, 1, family.TipLean, "tip toward the treble side, as a part of the head's width"),
            TipRadius = head.Length("tip_radius", 5, 25, family.TipRadius, "at the tip's end"),
            TipLeg = head.Length("tip_leg", 4, 20, family.TipLeg, "half width of the tip"),
            OgeeBass = head.Length("ogee_bass", -5, 6, ogeeBass, "hollow (negative: swelling) between bass edge and tip"),
            OgeeTreble = head.Length("ogee_treble", -5, 6, ogeeTreble, "hollow (negative: swelling) between treble edge and tip"),
            PostHeight = head.Length("post_height", 3, 25, basis.IsBass ? 9 : 7, "hole of a string post above the headstock's face"),
            Windings = head.Number("windings", 0, 6, 2, "turns of string round its post, each below the one before"),
            Trees = head.Flag("trees", true, "whether string trees are fitted where the strings need them"),
            TreeHeight = head.Length("tree_height", 1, 15, basis.IsBass ? 5 : 4, "a string under its tree, above the headstock's face"),
        };
        // Without a post for every string there is nothing to work out.
        var drawn = bass + treble == layout.Strings.Count;
        definition = definition with { Splay = head.Angle("splay", 0, MostSplay, drawn ? Splay(definition, layout) : family.Splay, "how far the strings turn outward at the nut; enough to keep posts of opposite sides apart") };
        return definition with { FirstPost = head.Length("first_post", NearestPost, FurthestPost, drawn ? FirstPost(definition, layout) : family.FirstPost, "from the nut to the first post on each side; far enough for the hollow at the nut") };
    }

    /// <summary>First posts stand between these, mm; the default is tried in such steps. The same for the splay, degrees.</summary>
    const double NearestPost = 20, FurthestPost = 90, PostStep = 0.5, MostSplay = 6, SplayStep = 0.25;

    /// <summary>The family's own, or the next half millimetre at which the hollow at the nut keeps its radius on both sides: a narrow nut or a wide head asks for more way.</summary>
    static double FirstPost(HeadstockDefinition head, FretLayout layout)
    {
        var half = layout.HalfWidth(-layout.Strings.HeadFrom);
        bool Holds(double first, int side) => NutHollow.Of(head with { FirstPost = first }, layout.Strings, half, side) is not { } edge || NutHollow.Holds(edge);
        for (var first = head.FirstPost; first <= FurthestPost; first += PostStep)
            if (Holds(first, -1) && Holds(first, +1)) return first;
        return head.FirstPost;
    }

    /// <summary>The family's own, or the next quarter degree at which posts of opposite sides keep their distance, degrees.</summary>
    static double Splay(HeadstockDefinition head, FretLayout layout)
    {
        var usual = double.RadiansToDegrees(head.Splay);
        for (var splay = usual; splay <= MostSplay; splay += SplayStep)
        {
            var splayed = head with { Splay = double.DegreesToRadians(splay) };
            if (TunerPosts.LeastOpposite(splayed, TunerPosts.Of(splayed, layout.Strings)) >= TunerPosts.OppositeRule(splayed)) return splay;
        }
        return usual;
    }

    static ScarfDefinition? ReadScarf(TableReader head, double angle)
    {
        var scarf = head.Flag("scarf", false, "whether an angled headstock is a piece of its own, glued to the shaft on a long slope");
        var place = head.Choice("scarf_line", [("under-board", ScarfPlace.UnderBoard), ("on-face", ScarfPlace.OnFace)], "under-board", "where the line of the joint comes out in front");
        var stock = head.Length("scarf_stock", 12, 30, 20, "thickness of the board both pieces are sawn from");
        if (head.IsSound && scarf && !(angle > 0))
            head.Refuse("scarf", "a scarf joint without an angle", "false, or an angle above 0", "give the headstock its angle, or leave out the joint");
        return scarf ? new(place, stock) : null;
    }
}
