using System.Collections.Immutable;
using Solidbody.Instrument.Bodies;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The table <c>[body.outline]</c> with its two shoulders: a family, and any of its measures changed.</summary>
static class OutlineSection
{
    enum ShoulderKind { Horned, Rounded }

    static readonly ImmutableArray<(string, ShoulderKind)> Kinds = [("horned", ShoulderKind.Horned), ("rounded", ShoulderKind.Rounded)];

    /// <summary>A wider body's tail falls away sooner beside the bridge: so much longer per mm of width.</summary>
    const double TailPerWidth = 0.125;

    /// <summary>What gives a family's outline, and says nothing beside a drawing.</summary>
    static readonly ImmutableArray<string> FamilyKeys =
    [
        "family", "length", "tail_offset", "tail_squareness", "lower_bout_width", "lower_bout_at", "lower_bout_skew", "lower_bout_offset", "waist_width", "waist_at", "waist_skew", "waist_offset",
        "upper_bout_width", "upper_bout_at", "upper_bout_skew", "upper_bout_offset", "treble", "bass",
    ];

    /// <returns>The family whose hardware places are the defaults, its outline, and the drawing that takes the outline's place.</returns>
    public static (OutlineFamily Family, OutlineDefinition Outline, DrawnOutline? Drawn) Read(TableReader outline, InstrumentBasis basis, double heelEnd, double heelWidth, double pocketLength, double bridgeLean, DrawingDesk drawings)
    {
        if (outline.Has(DrawingSection.Key))
        {
            foreach (var key in FamilyKeys) outline.RefuseIfGiven(key, "the measures of one of our own outlines, or a drawing", "remove it: the drawing has these measures");
            var unseen = OutlineFamily.Of(basis.IsBass ? "bass" : "offset");
            return (unseen, unseen.Outline, DrawingSection.Read(outline, drawings, heelEnd - pocketLength));
        }
        var word = outline.Word("family", OutlineFamily.All.Select(f => f.Word), basis.IsBass ? "bass" : "offset", "our own outlines; every measure below can be changed");
        var family = OutlineFamily.Of(word);
        var (drawn, wider) = (family.Outline, family.WidthFor(heelWidth));
        var treble = ReadShoulder(outline.Table("treble"), "treble", drawn.Treble, family, basis, heelEnd, wider);
        var bass = ReadShoulder(outline.Table("bass"), "bass", drawn.Bass, family, basis, heelEnd, wider);
        var reached = basis.Scale + bridgeLean + family.BehindScale + TailPerWidth * Math.Max(0, wider) - Foremost(treble, bass, heelEnd - pocketLength);
        var length = Math.Clamp(Math.Ceiling(reached), drawn.BodyLength, OutlineMeasure.LongestBody);
        return (family, new OutlineDefinition
        {
            BodyLength = Read(outline, OutlineMeasure.BodyLength, length, "foremost point to tail; long enough to carry the bridge"),
            TailOffset = Read(outline, OutlineMeasure.TailOffset, drawn.TailOffset, "rearmost point toward the treble side"),
            TailSquareness = outline.Number("tail_squareness", 0, 0.6, drawn.TailSquareness, "0 is oval, 0.6 squarer"),
            LowerBoutWidth = Read(outline, OutlineMeasure.LowerBoutWidth, Math.Clamp(drawn.LowerBoutWidth + wider, 200, 420), "bass and treble together"),
            LowerBoutAt = Read(outline, OutlineMeasure.LowerBoutAt, drawn.LowerBoutAt, "from the tail, part of the length"),
            LowerBoutSkew = Read(outline, OutlineMeasure.LowerBoutSkew, drawn.LowerBoutSkew, "bass bout nearer the nut than the treble one"),
            LowerBoutOffset = outline.Length("lower_bout_offset", -6, 6, drawn.LowerBoutOffset, "both bouts toward the treble side"),
            WaistWidth = Read(outline, OutlineMeasure.WaistWidth, Math.Clamp(drawn.WaistWidth + wider, 150, 320), "bass and treble together"),
            WaistAt = Read(outline, OutlineMeasure.WaistAt, drawn.WaistAt, "from the tail, part of the length"),
            WaistSkew = Read(outline, OutlineMeasure.WaistSkew, drawn.WaistSkew, "bass waist nearer the nut than the treble one"),
            WaistOffset = outline.Length("waist_offset", -6, 6, drawn.WaistOffset, "both toward the treble side"),
            UpperBoutWidth = Read(outline, OutlineMeasure.UpperBoutWidth, Math.Clamp(drawn.UpperBoutWidth + wider, 180, 400), "bass and treble together"),
            UpperBoutAt = Read(outline, OutlineMeasure.UpperBoutAt, drawn.UpperBoutAt, "from the tail, part of the length"),
            UpperBoutSkew = Read(outline, OutlineMeasure.UpperBoutSkew, drawn.UpperBoutSkew, "bass bout nearer the nut than the treble one"),
            UpperBoutOffset = outline.Length("upper_bout_offset", -6, 6, drawn.UpperBoutOffset, "both bouts toward the treble side"),
            Treble = treble,
            Bass = bass,
        }, null);
    }

    /// <summary>Rearmost point of the body, from the nut.</summary>
    public static double TailX(OutlineDefinition outline, double heelEnd, double pocketLength) =>
        Foremost(outline.Treble, outline.Bass, heelEnd - pocketLength) + outline.BodyLength;

    static double Foremost(ShoulderDefinition treble, ShoulderDefinition bass, double shoulderX) => shoulderX - Math.Max(Reach(treble), Reach(bass));

    static double Reach(ShoulderDefinition shoulder) => shoulder is ShoulderDefinition.Horned horned ? horned.HornReach : 0;

    /// <summary>A measure by its own key and range; a shoulder's key is the last of its name.</summary>
    static double Read(TableReader table, OutlineMeasure m, double or, string note)
    {
        var key = m.Key[(m.Key.LastIndexOf('.') + 1)..];
        return m.IsLength ? table.Length(key, m.Least, m.Most, or, note) : table.Number(key, m.Least, m.Most, or, note);
    }

    static ShoulderDefinition ReadShoulder(TableReader shoulder, string side, ShoulderDefinition drawn, OutlineFamily family, InstrumentBasis basis, double heelEnd, double wider)
    {
        var kind = shoulder.Choice("kind", Kinds, drawn is ShoulderDefinition.Horned ? "horned" : "rounded", "with a horn and a cutaway, or rounded into the neck");
        if (kind == ShoulderKind.Rounded)
        {
            var rounded = drawn as ShoulderDefinition.Rounded ?? Rounded;
            return new ShoulderDefinition.Rounded(
                Read(shoulder, OutlineMeasure.ShoulderMeet(side), Math.Clamp(rounded.ShoulderMeet + wider / 2, 10, 40), "half width of the straight shoulder at the neck"),
                shoulder.Number("slope", 0.05, 0.20, rounded.ShoulderSlope, "how far it falls back, part of the bout's distance"));
        }
        var horn = drawn as ShoulderDefinition.Horned ?? (ShoulderDefinition.Horned)family.Outline.Treble;
        return new ShoulderDefinition.Horned(
            Read(shoulder, OutlineMeasure.HornReach(side), horn.HornReach, "horn's tip in front of the shoulder line"),
            Read(shoulder, OutlineMeasure.HornTipRadius(side), horn.HornTipRadius, "at the tip"),
            Read(shoulder, OutlineMeasure.CutawayWidth(side), horn.CutawayWidth, "mouth of the cutaway"),
            Read(shoulder, OutlineMeasure.CutawayRadius(side), horn.CutawayRadius, "inside, at the cutaway's bottom"),
            Read(shoulder, OutlineMeasure.CutawayFret(side), CutawayFret(horn, family, basis, heelEnd), "fret level with the cutaway's bottom; parts of a fret count"),
            shoulder.Length("shoulder_corner_radius", 4, 14, horn.ShoulderCornerRadius, "wanted; smaller when the cutaway is shallow"),
            shoulder.Length("shoulder_margin", 8, 16, horn.ShoulderMargin, "wood beside the neck pocket"));
    }

    /// <summary>For a side the family draws with a horn and the person wants rounded; the middle of the tested range.</summary>
    static readonly ShoulderDefinition.Rounded Rounded = new(22, 0.19);

    /// <summary>The cutaway lies as far in front of the heel's end as in the family's drawing, to a tenth of a fret.</summary>
    static double CutawayFret(ShoulderDefinition.Horned horn, OutlineFamily family, InstrumentBasis basis, double heelEnd)
    {
        var fret = basis.FretAt(heelEnd - family.CutawayBeforeHeel(horn.CutawayFret));
        return Math.Clamp(Math.Round(fret, 1), 8, basis.Frets - 0.5);
    }
}
