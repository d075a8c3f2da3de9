using Solidbody.Materials;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The table <c>[seasons]</c>: the air the instrument is built in and will see.</summary>
static class SeasonsSection
{
    public static SeasonsDefinition Read(TableReader seasons)
    {
        var or = new SeasonsDefinition();
        var read = new SeasonsDefinition
        {
            Built = ReadClimate(seasons.Table("built"), or.Built, "in the workshop"),
            Driest = ReadClimate(seasons.Table("driest"), or.Driest, "in the driest weeks it will see"),
            Wettest = ReadClimate(seasons.Table("wettest"), or.Wettest, "in the wettest weeks it will see"),
        };
        RefuseOutOfOrder(seasons.Table("driest"), read.Driest, read.Built, "driest", "wetter", "at most");
        RefuseOutOfOrder(seasons.Table("wettest"), read.Built, read.Wettest, "wettest", "drier", "at least");
        return read;
    }

    public static Grain ReadGrain(TableReader part, string or, string what) => part.Choice("grain", [("flat", Grain.Flat), ("quarter", Grain.Quarter)], or, what);

    static Climate ReadClimate(TableReader climate, Climate or, string where) => new(
        climate.Temperature("temperature", -10, 50, or.Temperature, where),
        climate.Number("humidity", 5, 95, 100 * or.Humidity, $"relative humidity {where}, per cent") / 100);

    static void RefuseOutOfOrder(TableReader climate, Climate drier, Climate wetter, string season, string wrong, string limit)
    {
        if (!climate.IsSound || drier.Moisture <= wetter.Moisture) return;
        var (own, built) = season == "driest" ? (drier, wetter) : (wetter, drier);
        climate.Refuse("humidity", FormattableString.Invariant($"the {season} air is {wrong} than the workshop's: wood settles at {own.Moisture:0.0} %, in the workshop at {built.Moisture:0.0} %"),
            FormattableString.Invariant($"{limit} the workshop's {built.Moisture:0.0} %"), "look at humidity and temperature of both");
    }
}
