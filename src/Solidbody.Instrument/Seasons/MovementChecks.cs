using Solidbody.Findings;

namespace Solidbody.Instrument.Seasons;

internal static class MovementChecks
{
    public static IEnumerable<Finding> Of(Movement m)
    {
        if (m.Pocket is { Least: { } least, Most: { } most } pocket)
        {
            if (!(least >= 0)) yield return MovementFindings.PocketJams(pocket, least, pocket.Season(least));
            if (!(most <= SeasonLimits.LoosePocket)) yield return MovementFindings.PocketLoosens(most, pocket.Season(most));
        }
        foreach (var cover in m.Cover)
            if (cover.Least is { } room && !(room >= 0)) yield return MovementFindings.CoverJams(cover.What, room, cover.Season(room));
        if (m.Top is { Most: { } rise } top && !(rise <= SeasonLimits.TopCup)) yield return MovementFindings.TopCups(rise, top.Width);
        if (m.FretEnds is { } ends && !(ends <= SeasonLimits.FretEnd)) yield return MovementFindings.FretEnds(ends);
    }
}
