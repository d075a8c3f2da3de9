using System.Collections.Immutable;
using Solidbody.Findings;

namespace Solidbody.Instrument.Playing;

internal static class PathChecks
{
    public static IEnumerable<Finding> Of(InstrumentDefinition d, ImmutableArray<StringPath> paths)
    {
        var inTree = paths.Where(p => p.Tree is not null).ToList();
        if (inTree.Count > 0) yield return PathFindings.Trees([.. inTree.Select(p => (p.String, p.Tree!.Value))], inTree.Min(p => p.PostBreak), d.Headstock.TreeHeight);
        if (paths.Where(p => !(p.NutBreak >= StringPath.LeastAtNut)).MinBy(p => p.NutBreak) is { } flat) yield return PathFindings.NutTooFlat(flat.String, flat.NutBreak, d.Headstock.Trees);
        if (paths.Where(p => !(p.NutBreak <= StringPath.MostAtNut)).MaxBy(p => p.NutBreak) is { } steep) yield return PathFindings.NutTooSteep(steep.String, steep.NutBreak);
        if (paths.Where(p => !(Math.Abs(p.NutTurn) <= StringPath.MostTurn)).MaxBy(p => Math.Abs(p.NutTurn)) is { } turned) yield return PathFindings.NutTurn(turned.String, Math.Abs(turned.NutTurn));
        if (paths.Where(p => !(p.SaddleBreak >= StringPath.LeastAtSaddle)).MinBy(p => p.SaddleBreak) is { } loose) yield return PathFindings.SaddleTooFlat(loose.String, loose.SaddleBreak);
        if (paths.Where(p => !(p.SaddleBreak <= StringPath.MostAtSaddle)).MaxBy(p => p.SaddleBreak) is { } bent) yield return PathFindings.SaddleTooSteep(bent.String, bent.SaddleBreak);
        if (paths.Where(p => !(p.WindingsLeft >= 0)).MinBy(p => p.WindingsLeft) is { } wound) yield return PathFindings.WindingsOnFace(wound.String, wound.WindingsLeft);
    }
}
