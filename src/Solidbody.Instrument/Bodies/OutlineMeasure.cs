using System.Collections.Immutable;

namespace Solidbody.Instrument.Bodies;

/// <summary>One measure of the outline that a rule can ask to change: its key below <c>[body.outline]</c>, and what the file may say.</summary>
/// <param name="Key">As the file writes it.</param>
/// <param name="Least">mm, or a part of the length.</param>
/// <param name="Most">The same.</param>
/// <param name="IsLength">mm; otherwise a part of the body's length or a fret count.</param>
/// <param name="IsStation">Whether the stations' places depend on it linearly.</param>
internal sealed record OutlineMeasure(string Key, double Least, double Most, bool IsLength, bool IsStation, Func<OutlineDefinition, double, OutlineDefinition> With)
{
    /// <summary>Shortest and longest body the families are tested for, mm.</summary>
    public const double ShortestBody = 300, LongestBody = 540;

    public static OutlineMeasure BodyLength { get; } = Station("length", ShortestBody, LongestBody, (o, v) => o with { BodyLength = v });
    public static OutlineMeasure TailOffset { get; } = Station("tail_offset", -45, 45, (o, v) => o with { TailOffset = v });
    public static OutlineMeasure LowerBoutWidth { get; } = Station("lower_bout_width", 200, 420, (o, v) => o with { LowerBoutWidth = v });
    public static OutlineMeasure LowerBoutAt { get; } = Part("lower_bout_at", 0.24, 0.33, (o, v) => o with { LowerBoutAt = v });
    public static OutlineMeasure LowerBoutSkew { get; } = Station("lower_bout_skew", -10, 45, (o, v) => o with { LowerBoutSkew = v });
    public static OutlineMeasure WaistWidth { get; } = Station("waist_width", 150, 320, (o, v) => o with { WaistWidth = v });
    public static OutlineMeasure WaistAt { get; } = Part("waist_at", 0.46, 0.63, (o, v) => o with { WaistAt = v });
    public static OutlineMeasure WaistSkew { get; } = Station("waist_skew", -50, 75, (o, v) => o with { WaistSkew = v });
    public static OutlineMeasure UpperBoutWidth { get; } = Station("upper_bout_width", 180, 400, (o, v) => o with { UpperBoutWidth = v });
    public static OutlineMeasure UpperBoutAt { get; } = Part("upper_bout_at", 0.68, 0.90, (o, v) => o with { UpperBoutAt = v });
    public static OutlineMeasure UpperBoutSkew { get; } = Station("upper_bout_skew", -90, 120, (o, v) => o with { UpperBoutSkew = v });

    public static OutlineMeasure HornReach(string side) => Horn(side, "horn_reach", 12, 115, true, (h, v) => h with { HornReach = v });
    public static OutlineMeasure HornTipRadius(string side) => Horn(side, "horn_tip_radius", 7, 18, true, (h, v) => h with { HornTipRadius = v });
    public static OutlineMeasure CutawayWidth(string side) => Horn(side, "cutaway_width", 17, 105, true, (h, v) => h with { CutawayWidth = v });
    public static OutlineMeasure CutawayRadius(string side) => Horn(side, "cutaway_radius", 8, 20, true, (h, v) => h with { CutawayRadius = v });
    public static OutlineMeasure CutawayFret(string side) => Horn(side, "cutaway_fret", 8, 28.5, false, (h, v) => h with { CutawayFret = v });
    public static OutlineMeasure ShoulderMeet(string side) => Shoulder<ShoulderDefinition.Rounded>(side, "meet", 10, 40, true, (r, v) => r with { ShoulderMeet = v });

    /// <summary>In the order they are tried: places before widths, skews and what belongs to one side.</summary>
    public static ImmutableArray<OutlineMeasure> All { get; } = [UpperBoutAt, WaistAt, LowerBoutAt, UpperBoutWidth, WaistWidth, LowerBoutWidth, TailOffset, UpperBoutSkew, WaistSkew, LowerBoutSkew, .. OfSide("treble"), .. OfSide("bass"), BodyLength];

    private static ImmutableArray<OutlineMeasure> OfSide(string side) => [CutawayFret(side), CutawayWidth(side), CutawayRadius(side), HornReach(side), HornTipRadius(side), ShoulderMeet(side)];

    private static OutlineMeasure Station(string key, double least, double most, Func<OutlineDefinition, double, OutlineDefinition> with) => new(key, least, most, true, true, with);
    private static OutlineMeasure Part(string key, double least, double most, Func<OutlineDefinition, double, OutlineDefinition> with) => new(key, least, most, false, true, with);
    private static OutlineMeasure Horn(string side, string key, double least, double most, bool isLength, Func<ShoulderDefinition.Horned, double, ShoulderDefinition> with) => Shoulder(side, key, least, most, isLength, with);

    /// <summary>A side of the other kind stays as it is.</summary>
    private static OutlineMeasure Shoulder<T>(string side, string key, double least, double most, bool isLength, Func<T, double, ShoulderDefinition> with) where T : ShoulderDefinition =>
        new($"{side}.{key}", least, most, isLength, false, (o, v) => side == "treble"
            ? o.Treble is T t ? o with { Treble = with(t, v) } : o
            : o.Bass is T b ? o with { Bass = with(b, v) } : o);
}
