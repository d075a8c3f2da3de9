using System.Collections.Immutable;
using Solidbody.Programs;

namespace Solidbody.Machining.Making;

/// <summary>Divides a program that is too long for its controller into ones that run one after another.</summary>
internal sealed class ProgramDivision(ProgramDraft draft, ProgramStyle style, double plungeFeed)
{
    /// <summary>How far above where it was a cutter ends its rapid when it comes back, mm.</summary>
    private const double Above = 1;
    /// <summary>A way over clearance in this last share of a piece is a better place to divide than the cut itself.</summary>
    private const double LastShare = 0.25;
    /// <summary>Left for a header that says which part of how many it is.</summary>
    private const int HeaderRoom = 200;

    private readonly ImmutableArray<(int Section, Motion Motion)> all =
        [.. draft.Sections.SelectMany((section, s) => section.Motions.Select(m => (s, m)))];

    /// <summary>The pieces, each beginning and ending at clearance: the whole where it is short enough.</summary>
    /// <param name="most">Longest text, characters.</param>
    /// <remarks>Inside a cut the cutter rises straight up and comes back straight down to where it was: both ways lie in wood it has already cut.</remarks>
    public ImmutableArray<ImmutableArray<ProgramSection>> Into(int most)
    {
        var pieces = ImmutableArray.CreateBuilder<ImmutableArray<ProgramSection>>();
        for (var from = 0; from < all.Length;)
        {
            var to = Fits(from, all.Length, most) ? all.Length : Best(from, Longest(from, most));
            pieces.Add(Piece(from, to));
            from = to;
        }
        return pieces.ToImmutable();
    }

    private bool Fits(int from, int to, int most) => ProgramWriter.Write(draft with { Sections = Piece(from, to) }, style).Length + HeaderRoom <= most;

    /// <summary>The most motions that fit; at least one, so that the division ends.</summary>
    private int Longest(int from, int most)
    {
        var (fits, tooLong) = (from + 1, all.Length);
        while (tooLong - fits > 1)
        {
            var middle = (fits + tooLong) / 2;
            if (Fits(from, middle, most)) fits = middle;
            else tooLong = middle;
        }
        return fits;
    }

    /// <summary>The last place over clearance near the end of a piece; else its end.</summary>
    private int Best(int from, int to)
    {
        for (var i = to; i > to - LastShare * (to - from); i--)
            if (IsOver(all[i - 1].Motion.To.Z)) return i;
        return to;
    }

    private bool IsOver(double z) => z >= draft.ClearanceHeight - Geometry.Tolerances.Geometry;

    private ImmutableArray<ProgramSection> Piece(int from, int to)
    {
        var motions = all[from..to].ToList();
        var (first, last) = (motions[0], motions[^1]);
        var (start, end) = (first.Motion.From, last.Motion.To);
        if (!IsOver(end.Z)) motions.Add((last.Section, new(MotionKind.Rapid, end, end with { Z = draft.ClearanceHeight }, default, 0)));
        if (!IsOver(start.Z))
        {
            var above = start with { Z = Math.Min(draft.ClearanceHeight, start.Z + Above) };
            motions.InsertRange(0, [(first.Section, new(MotionKind.Rapid, start with { Z = draft.ClearanceHeight }, above, default, 0)), (first.Section, new(MotionKind.Line, above, start, default, plungeFeed))]);
        }
        return [.. motions.GroupBy(m => m.Section).OrderBy(g => g.Key).Select(g => draft.Sections[g.Key] with { Motions = [.. g.Select(m => m.Motion)] })];
    }
}
