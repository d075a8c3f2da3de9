using System.Collections.Immutable;
using Solidbody.Instrument.Necks;
using Solidbody.Instrument.Fretboards;
using Solidbody.Materials;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The tables <c>[nut]</c> and <c>[neck]</c>. Defaults are common practice, no source, unless stated.</summary>
static class NeckSection
{
    /// <summary>String pitch at the nut by number of strings, from four: a bass has room to spare, many strings crowd.</summary>
    static readonly ImmutableArray<double> BassNutPitch = [10.5, 9.5, 9.0, 8.5, 8.0, 7.5];
    const double GuitarNutPitch = 7.1;
    const double GuitarNutEdges = 7.5, BassNutEdges = 10.5;

    static readonly ImmutableArray<string> Profiles = ["C", "D", "U", "V", "asymmetric"];

    public static NutDefinition ReadNut(TableReader nut, InstrumentBasis basis)
    {
        var pitch = basis.IsBass ? BassNutPitch[Math.Clamp(basis.Strings - 4, 0, BassNutPitch.Length - 1)] : GuitarNutPitch;
        var spread = nut.Length("string_spread", 15, 100, Math.Round(pitch * (basis.Strings - 1), 3), "first to last string, centre to centre");
        var width = nut.Length("width", 25, 120, spread + (basis.IsBass ? BassNutEdges : GuitarNutEdges), "width of the board at the nut");
        var edge = nut.Length("edge_distance", 0, 10, 0, "outer strings to the board's edge; given, the width follows from it; 0 leaves it to the width");
        var thickness = nut.Length("thickness", 3, 10, basis.IsBass ? 5 : 4.5, "along the neck; the nut stands against the board's end");
        if (edge > 0 && nut.Has("width"))
            nut.Refuse("edge_distance", "the board at the nut has a width and an edge distance", "one of the two", "give one: the other follows");
        if (edge > 0) width = spread + 2 * edge;
        if (nut.IsSound && width < spread + 4)
            nut.Refuse("width", $"the nut is {nut.Show(width)} wide, its strings spread over {nut.Show(spread)}", $"at least {nut.Show(spread + 4)}", "widen the nut or bring the strings together: 2 mm must stay outside each outer string");
        return new NutDefinition(width, thickness, spread, nut.Flag("compensated", false, "whether each string's slot is moved toward the bridge for its intonation"))
        {
            Spacing = nut.Choice("spacing", [("centres", NutSpacing.Centres), ("gaps", NutSpacing.Gaps)], "centres", "strings the same from middle to middle, or with the same gap between them, which needs their gauges"),
            ZeroFretSetBack = ReadZeroFret(nut),
        };
    }

    static double? ReadZeroFret(TableReader nut)
    {
        var fitted = nut.Flag("zero_fret", false, "a fret on the nut line; the nut stands behind it and only guides the strings");
        var setBack = nut.Length("zero_fret_set_back", 2, 15, 5, "zero fret: from its middle back to the nut's face");
        return fitted ? setBack : null;
    }

    public static NeckDefinition Read(TableReader neck, InstrumentBasis basis, FretLayout layout, double heelWidth)
    {
        var thickness = basis.IsBass ? (Fret1: 21.5, Fret12: 23.5) : (Fret1: 20.5, Fret12: 22.5);
        var (wood, fret1, fret12) = (
            neck.Word("wood", basis.Woods, "sugar-maple", "wood of the neck"),
            neck.Length("thickness_at_fret_1", 16, 30, thickness.Fret1, "with the fretboard, on the centre line"),
            neck.Length("thickness_at_fret_12", 17, 32, thickness.Fret12, "with the fretboard, on the centre line"));
        var joint = neck.Choice("joint", [("bolt-on", JointKind.BoltOn), ("set", JointKind.Set), ("through", JointKind.Through)], "bolt-on", "screwed through the body, glued into it, or in one piece with the body's middle");
        var (profile, section, at12) = ReadSections(neck);
        return new NeckDefinition
        {
            Wood = wood,
            Grain = SeasonsSection.ReadGrain(neck, "flat", "how its blank is sawn"),
            ThicknessAtFret1 = fret1,
            ThicknessAtFret12 = fret12,
            Bow = neck.Length("bow", 0, 2, 0, "fuller half way between frets 1 and 12 by this much; 0 is a straight taper"),
            Profile = profile,
            Section = section == NeckProfile.Named(profile) ? null : section,
            SectionAt12 = at12 == section ? null : at12,
            Lip = neck.Length("lip", 1, 5, 2.5, "upright neck wood at the board's edge"),
            VoluteHeight = neck.Length("volute_height", 0, 6, 0, "thickening behind the nut; 0 is none"),
            VoluteAt = neck.Length("volute_at", -20, 40, HeadBlend.Usual.VoluteAt, "its crest, from the nut toward the tip"),
            VoluteLength = neck.Length("volute_length", 20, 100, 2 * HeadBlend.Usual.VoluteHalfLength, "from where it begins to where it ends"),
            Joint = joint,
            Heel = joint == JointKind.Through ? ReadThroughHeel(neck.Table("heel"), basis) : ReadHeel(neck.Table("heel"), basis, heelWidth),
            Core = CoreSection.Read(neck, joint, heelWidth),
            Rod = ReadRod(neck.Table("rod"), layout),
            Bars = ReadBars(neck.Table("bars"), layout.HeelEnd),
        };
    }

    static (string Name, NeckProfile Section, NeckProfile At12) ReadSections(TableReader neck)
    {
        var name = neck.Word("profile", Profiles, "C", "family of the section of the neck's back");
        var other = neck.Word("profile_at_fret_12", Profiles, name, "family it has turned into at fret 12");
        var section = ReadSection(neck.Table("section"), NeckProfile.Named(name) ?? NeckProfile.All[0].Profile, "");
        return (name, section, ReadSection(neck.Table("section_at_fret_12"), other == name ? section : NeckProfile.Named(other) ?? section, " at fret 12"));
    }

    static NeckProfile ReadSection(TableReader section, NeckProfile family, string where) => new(
        section.Number("middle", 1, 4, family.P, $"fullness of the middle{where}; the family's unless given"),
        section.Number("shoulders", 1, 4, family.Q, $"fullness of the shoulders{where}; the family's unless given"),
        section.Number("edge", 0.8, 0.99, family.C, $"how upright the edge stands{where}; the family's unless given"),
        family.Epsilon,
        section.Number("apex", -0.2, 0.2, family.Apex, $"deepest line{where}, as a part of the half width, negative toward the bass; the family's unless given"));

    static HeelDefinition ReadHeel(TableReader heel, InstrumentBasis basis, double heelWidth)
    {
        var length = heel.Length("length", LeastHeel, MostHeel, HeelLength(basis), "straight heel that lies in the body's pocket");
        return new HeelDefinition(
            heel.Length("thickness", FreeRange.Heel.Least, FreeRange.Heel.Most, UsualHeel, "neck wood without the board: 25.4 mm with a board of 6.35 mm"),
            heel.Length("blend", LeastBlend, MostBlend, UsualBlend, "length of the blend into the shaft, on the centre line"),
            heel.Length("blend_extra_at_edge", 0, MostExtra, UsualExtra, "how much longer the blend is at the edges"),
            heel.Length("corner_radius", 3, 20, 7, "plan radius of the heel's two end corners; not less than the pocket's"),
            length,
            ReadScrews(heel.Table("screws"), heelWidth))
        { TenonWidth = heel.Length("tenon_width", 0, 80, 0, "tenon of a set neck, narrower than the board over it; 0 is as wide as the board") is > 0 and var tenon ? tenon : null };
    }

    /// <summary>Of a through-neck: from the shoulder line on it is the body's middle, with nothing to screw or to glue in.</summary>
    static HeelDefinition ReadThroughHeel(TableReader heel, InstrumentBasis basis)
    {
        foreach (var key in (string[])["corner_radius", "tenon_width", "screws"]) heel.RefuseIfGiven(key, "a neck that is screwed or glued into a pocket", "remove it: a through-neck has no pocket");
        return new HeelDefinition(
            heel.Length("thickness", FreeRange.Heel.Least, FreeRange.Heel.Most, UsualHeel, "neck wood without the board, where it meets the body"),
            heel.Length("blend", LeastBlend, MostBlend, UsualBlend, "length of the blend into the shaft, on the centre line"),
            heel.Length("blend_extra_at_edge", 0, MostExtra, UsualExtra, "how much longer the blend is at the edges"),
            0,
            heel.Length("length", LeastHeel, MostHeel, HeelLength(basis), "from the body's shoulder line to the board's end, where the core takes over"),
            ScrewPattern.None);
    }

    /// <summary>The heel and its blend into the shaft, mm.</summary>
    const double LeastHeel = 50, MostHeel = 130, UsualHeel = 19.05, LeastBlend = 20, MostBlend = 100, UsualBlend = 36, MostExtra = 60, UsualExtra = 24;

    static double HeelLength(InstrumentBasis basis) => basis.IsBass ? 92 : 75;

    /// <summary>Heel kept from a screw's middle to its side, mm, and the widest pattern across; a narrow heel takes a narrower one.</summary>
    const double ScrewToSide = 8, ScrewsAcross = 38;

    /// <summary>How far a plate reaches beyond its screws along and across, both sides together, mm.</summary>
    const double PlateAlong = 10, PlateAcross = 12;

    public static ScrewPattern ReadScrews(TableReader screws, double heelWidth)
    {
        var along = screws.Length("along", 25, 80, 51, "between the two rows, along the neck");
        var across = screws.Length("across", 20, 60, Math.Clamp(Math.Floor(heelWidth - 2 * ScrewToSide), 20, ScrewsAcross), "between the two screws of a row");
        var pattern = new ScrewPattern(
            along,
            across,
            screws.Length("from_end", 6, 40, 12, "rear row to the heel's end"),
            screws.Length("pilot", 2, 5, 3.2, "hole in the neck"),
            screws.Length("pilot_depth", 8, 25, 15, "from the heel's back face"),
            screws.Length("clearance", 3, 7, 5, "hole through the body: the screw passes freely"),
            screws.Length("recess", 0, 25, 0, "ferrule recess in the body's back, diameter; 0 is none: a plate lies on the back"),
            screws.Length("recess_depth", 0, 10, 0, "depth of that recess"))
        {
            Length = screws.Length("length", 0, 80, 0, "of a screw, from under its head: then its bite in the heel and what it holds are worked out; 0 is not known") is > 0 and var length ? length : null,
            Diameter = screws.Length("diameter", 3, 6, Math.Round(WoodScrews.Diameter(8), 2), "of its shank; number 8"),
        };
        var plate = new NeckPlateDefinition(
            screws.Length("plate_length", 30, 110, along + PlateAlong, "plate on the body's back, along the neck"),
            screws.Length("plate_width", 25, 90, across + PlateAcross, "its width"),
            screws.Length("plate_thickness", 0.5, 6, 2, "its thickness"));
        return pattern.Recess > 0 ? pattern : pattern with { Plate = plate };
    }

    /// <summary>Neck left behind the rod's end, to the heel's end.</summary>
    const double HeelBehindRod = 35;
    /// <summary>The rod's end beyond the nut; where a nut stands back or aslant, so far behind it, into the access.</summary>
    const double UsualRodStart = -20, IntoAccess = 8, AccessWidth = 12;

    /// <summary>Bar of a rod: two of them fill a channel of usual depth.</summary>
    const double RodDiameter = 4.8;

    static RodDefinition ReadRod(TableReader rod, FretLayout layout)
    {
        var (width, depth) = (rod.Length("width", 4, 10, 6, "channel for the truss rod"), rod.Length("depth", 6, 14, 10, "of the channel, from the glue plane"));
        return new RodDefinition(
            width,
            depth,
            rod.Length("start", -60, 30, Math.Min(UsualRodStart, Math.Round(layout.NutBack.Middle - Math.Abs(layout.NutBack.Slope) * AccessWidth / 2 - IntoAccess, 1)), "end toward the head, from the nut; negative lies beyond the nut"),
            rod.Length("end", 200, 900, Math.Round(layout.HeelEnd - HeelBehindRod, 1), "end toward the heel, from the nut; 35 mm before the heel's end"),
            rod.Length("access_length", 0, 40, 16, "wider room for the adjuster behind the nut, along the neck; 0 is none"),
            rod.Length("access_width", 6, 20, AccessWidth, "width of that room"),
            rod.Length("least_cover", 2, 8, 3, "least wood allowed under the channel"))
        {
            Kind = rod.Choice("kind", [("double-action", RodKind.DoubleAction), ("single-action", RodKind.SingleAction)], "double-action", "two bars that bend the neck either way, or one that pulls and can only bend it back"),
            Diameter = rod.Length("diameter", 2, 8, Math.Min(RodDiameter, Math.Min(width, depth / 2)), "of its steel bar, or of each of its two"),
            Capacity = rod.Force("capacity", 0, 20_000, 0, "greatest pull in a bar its maker states; 0 is not stated: then that of a plain threaded rod is taken"),
        };
    }

    /// <summary>Bars begin behind the first fret and end with the rod.</summary>
    const double BarsFrom = 15;

    static BarsDefinition ReadBars(TableReader bars, double heelEnd)
    {
        var count = bars.Count("count", 0, 2, 0, "stiff bars glued beside the rod: none, or 2, one on each side");
        if (bars.IsSound && count == 1) bars.Refuse("count", "one bar beside the rod", "0 or 2", "put one on each side: a neck stiffened on one side twists");
        var (width, height) = (bars.Length("width", 2, 8, 3, "of a bar and its channel"), bars.Length("height", 3, 14, 8, "of a bar"));
        return new BarsDefinition(count, width, height,
            bars.Length("below", 0, 6, 0, "top of a bar below the glue plane: its channel is that much deeper than the bar is high"),
            bars.Length("offset", 5, 25, 10.5, "middle of a bar to the centre line"),
            bars.Length("start", 0, 200, BarsFrom, "end toward the nut, from the nut"),
            bars.Length("end", 200, 900, Math.Round(heelEnd - HeelBehindRod, 1), "end toward the heel, from the nut; with the rod's"),
            bars.Choice("material", [("carbon", NeckIron.Carbon), ("steel", NeckIron.Steel)], "carbon", "of the bars"));
    }
}
