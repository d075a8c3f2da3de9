using System.Collections.Immutable;
using Solidbody.Findings;

namespace Solidbody.Instrument.Bodies;

/// <summary>Whether every wire has a way, through rooms and bores, to the controls.</summary>
internal static class WireGraph
{
    /// <param name="body">The definition.</param>
    /// <param name="pockets">The rooms: those that open into each other are one for a wire.</param>
    /// <param name="bores">The ways that can be made.</param>
    public static IEnumerable<Finding> Unconnected(BodyDefinition body, ImmutableArray<Pocket> pockets, IEnumerable<HandBore> bores)
    {
        if (body.Controls is null) yield break;
        var joins = bores.Select(b => b.Into).Concat(pockets.Where(p => p.Into is not null).Select(p => ImmutableArray.Create(p.Name, p.Into!))).ToList();
        var reached = new HashSet<string> { RoomNames.Controls };
        while (joins.FirstOrDefault(j => j.Any(reached.Contains) && !j.All(reached.Contains)) is { IsDefault: false } next) reached.UnionWith(next);

        foreach (var pickup in body.Pickups.Where(p => !reached.Contains(p.Name))) yield return WireFindings.NotConnected(pickup.Name, RoomNames.Controls);
        // The strings' ground ends at the bridge, or at a tremolo's claw.
        if (!reached.Contains(RoomNames.Bridge) && !(body.Tremolo is not null && reached.Contains(RoomNames.Springs)))
            yield return WireFindings.NotConnected(body.Tremolo is null ? RoomNames.Bridge : RoomNames.Springs, RoomNames.Controls);
    }
}
