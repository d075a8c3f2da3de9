using System.Collections.Immutable;
using Solidbody.Instrument;

namespace Solidbody.App.Terminal.Tables;

/// <summary>A table of what was worked out.</summary>
/// <param name="Name">By which a person asks for it.</param>
/// <param name="Title">Above it.</param>
/// <param name="Missing">What to say when there is nothing to show.</param>
/// <param name="Of">The table; null when there is nothing to show.</param>
public sealed record FigureTable(string Name, string Title, string Missing, Func<Design, FigureWords, TextTable?> Of)
{
    private const string NoStrings = "not worked out: describe the strings in [[tuning.strings]].";

    public static ImmutableArray<FigureTable> All { get; } =
    [
        new("tension", "Strings at pitch: pull, stress, share of strength, room to breaking", NoStrings, StringTables.Tension),
        new("tunings", "What another tuning pulls", NoStrings, StringTables.Tunings),
        new("heights", "Strings over frets and body, and where they come nearest to a fret", "not worked out.", StringTables.Heights),
        new("paths", "Strings over nut and saddle: how far they bend, how hard they press", "not worked out.", StringTables.Paths),
        new("intonation", "Saddles behind the scale line, and the worst cents before and after", NoStrings, IntonationTables.Saddles),
        new("cents", "Cents off at each fret, saddles and nut set", NoStrings, IntonationTables.Cents),
        new("bend", "The neck under its strings, rod slack", "not worked out: it takes the strings, and the stiffness of neck and fretboard.", NeckTables.Bend),
        new("wood-loads", "Where the neck's wood is worked hardest, and its strength over that", "not worked out: it takes the strings, and the stiffness of neck and fretboard.", NeckTables.Loads),
        new("walls", "Least wood in the body, thinnest first", "none thin enough to name.", BodyTables.Walls),
        new("reach", "Frets on the body, last behind cutaway, heel there, room to horn", "not worked out: the body is bought.", BodyTables.Reach),
        new("movement", "Widths from the driest to the wettest air", "not worked out.", WoodTables.Movement),
        new("mass", "What it weighs, and where", "not worked out: the density of a wood is missing.", WoodTables.Mass),
        new("balance", "Let go on the strap: angle of rest and of hold, force at the nut", "not worked out: it takes every wood's density and two strap buttons.", WoodTables.Balance),
        new("core", "Core and wings: blanks, glue faces", "the neck ends in the body.", BodyTables.Core),
        new("wood", "Wood to buy, rough", "not worked out.", WoodTables.Bill),
    ];
}
