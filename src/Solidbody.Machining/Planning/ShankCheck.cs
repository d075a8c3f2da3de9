using Solidbody.Findings;
using Solidbody.Geometry;

namespace Solidbody.Machining.Planning;

/// <summary>Whether a shank rubs along a wall its cutter finishes. A shank wider than the edges is never let in; one as wide just slides along, and marks and heats the wood.</summary>
internal static class ShankCheck
{
    /// <param name="cutter">The cutter.</param>
    /// <param name="depth">Of the upright wall beside it, mm.</param>
    /// <returns>Null where the flutes span the wall or the shank stands clear of it.</returns>
    public static Finding? Of(Cutter cutter, double depth, string place) =>
        depth <= cutter.FluteLength + Tolerances.Output || cutter.ShankDiameter <= cutter.Diameter - PlanPractice.ShankRelief ? null : CutterFindings.ShankRubs(place, cutter, depth);
}
