using System.Collections.Immutable;
using Solidbody.Machining.Timing;
using Solidbody.Programs;
using Solidbody.Proof.Metering;
using Solidbody.Shop;

namespace Solidbody.App;

/// <summary>How well an operation uses its time, from the program's text cut in simulation.</summary>
/// <param name="Program">The program it stands in.</param>
/// <param name="Operation">Its line of the index: planned time and bound.</param>
/// <param name="RapidSeconds">Of its time, rapids.</param>
/// <param name="AirSeconds">Of its time, feed moves that took nothing.</param>
/// <param name="FeedSeconds">All feed moves.</param>
/// <param name="Volume">Wood taken, mm³.</param>
/// <param name="Engagement">Widest arc of a flat cutter in wood on a motion that does not go down, radians; 0 for other cutters.</param>
public sealed record OperationFigures(ProgramEntry Program, OperationEntry Operation, double RapidSeconds, double AirSeconds, double FeedSeconds, double Volume, double Engagement)
{
    /// <summary>The figures of every operation of a program.</summary>
    public static ImmutableArray<OperationFigures> Of(ProgramCut program, Machine machine)
    {
        ArgumentNullException.ThrowIfNull(program);
        ArgumentNullException.ThrowIfNull(machine);
        var cuts = program.Motions;
        var seconds = MotionTime.Each([.. cuts.Select(c => c.Motion)], machine);
        var operations = program.Entry.Operations;
        return [.. operations.Select((operation, i) =>
        {
            var end = i + 1 < operations.Length ? operations[i + 1].Line : int.MaxValue;
            var own = Enumerable.Range(0, cuts.Length).Where(k => cuts[k].Motion.Line >= operation.Line && cuts[k].Motion.Line < end).ToArray();
            var feeds = own.Where(k => cuts[k].Motion.Kind != MotionKind.Rapid).ToArray();
            return new OperationFigures(program.Entry, operation, own.Except(feeds).Sum(k => seconds[k]), feeds.Sum(k => cuts[k].AirShare * seconds[k]),
                feeds.Sum(k => seconds[k]), own.Sum(k => cuts[k].Volume), feeds.Where(k => !cuts[k].Descends).Select(k => cuts[k].Engagement).DefaultIfEmpty().Max());
        })];
    }
}
