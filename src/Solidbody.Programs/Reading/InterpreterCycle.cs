using System.Globalization;
using Solidbody.Geometry;

namespace Solidbody.Programs.Reading;

/// <summary>Drilling cycles G81, G82 and G83 as the moves they stand for (NISTIR 6556, section 3.5.16, its rules and examples from memory).</summary>
internal sealed partial class Interpreter
{
    /// <summary>How far above the last bottom a peck's rapid back into the hole ends, mm (section 3.5.16.4, 0.010 in; from memory).</summary>
    private const double PeckClearance = 0.254;
    /// <summary>More bites in a hole, or repeats in a block, are a slip of the hand.</summary>
    private const int MostRepeats = 1000;

    /// <summary>What a cycle's blocks keep from one to the next: "sticky" numbers, as written. R stays even when other motions lie between.</summary>
    private (int Word, double Z, double Bite) _cycle;
    private double? _retract;
    private bool? _returnsToStart;

    private static bool IsCycle(int? word) => word is 81 or 82 or 83;

    /// <summary>The motion word a block's axis words would be obeyed by.</summary>
    private int? MotionWordOf(Block block) => block.Has(ModalGroup.Motion) ? block[ModalGroup.Motion] : _motionWord;

    private void Cycle(Block block)
    {
        var word = _motionWord!.Value;
        var isFirst = _cycle.Word != word;
        var z = Sticky(block, 'Z', isFirst ? null : _cycle.Z, "the hole's bottom");
        var r = Sticky(block, 'R', _retract, "the height where drilling begins");
        var bite = word == 83 ? Sticky(block, 'Q', isFirst ? null : _cycle.Bite, "the depth of a bite") : 0;
        if (word == 82 && isFirst && !block.Has('P')) TellMissing(block, FirstAxisColumn(block), "G82 without P", "P with the seconds to wait at the bottom", "write P");
        (_cycle, _retract) = ((word, z, bite), r);
        if (_returnsToStart is null)
        {
            mistakes.Add(block.Line, FirstAxisColumn(block), "a drilling cycle before the return mode is known", "G98 (back to where it began) or G99 (back to R) before the first cycle", "write G98");
            _returnsToStart = true;
        }
        var unit = _millimetresPerUnit!.Value;
        var clear = _distance == Distance.Incremental ? _at.Z + r * unit : r * unit;
        var bottom = _distance == Distance.Incremental ? clear + z * unit : z * unit;
        var repeats = block.Has('L') ? block['L'] : 1;
        if (Fault(block, clear, bottom, bite * unit, repeats)) return;
        Drill(block, clear, bottom, word == 83 ? bite * unit : double.PositiveInfinity, (int)Math.Round(repeats));
    }

    private double Sticky(Block block, char letter, double? kept, string means)
    {
        if (block.Has(letter)) return block[letter];
        if (kept is null) TellMissing(block, FirstAxisColumn(block), $"G{_motionWord} without {letter}", $"{letter}, {means}, in a cycle's first block", $"write {letter}");
        return kept ?? 0;
    }

    private bool Fault(Block block, double clear, double bottom, double bite, double repeats)
    {
        if (block.IsBroken) return true;
        var column = FirstAxisColumn(block);
        var before = mistakes.Count;
        if (bottom > clear) mistakes.Add(block.Line, column, $"the hole's bottom, Z {Text(bottom)} mm, lies above R, {Text(clear)} mm", "Z at or below R", "mend Z or R");
        if (_cycle.Word == 83 && !(bite > 0 && (clear - bottom) / bite <= MostRepeats))
            mistakes.Add(block.Line, column, $"a bite of {Text(bite)} mm", string.Create(CultureInfo.InvariantCulture, $"Q above 0, and no more than {MostRepeats} bites in a hole"), "mend Q");
        if (!(repeats >= 1 && repeats <= MostRepeats && repeats == Math.Round(repeats)))
            mistakes.Add(block.Line, block.Column('L'), string.Create(CultureInfo.InvariantCulture, $"L is {repeats}"), $"whole numbers from 1 to {MostRepeats}", "mend L or take it out");
        return mistakes.Count > before;
    }

    private void Drill(Block block, double clear, double bottom, double bite, int repeats)
    {
        if (_at.Z < clear) Rapid(block, _at with { Z = clear });
        var end = _returnsToStart == true ? _at.Z : clear;
        for (var i = 0; i < repeats; i++)
        {
            Rapid(block, new(Coordinate(block, 'X', _at.X), Coordinate(block, 'Y', _at.Y), _at.Z));
            Rapid(block, _at with { Z = clear });
            for (var level = clear; ;)
            {
                level = Math.Max(bottom, level - bite);
                Add(MotionKind.Line, _at with { Z = level }, default, _feed!.Value, block.Line);
                if (level <= bottom) break;
                Rapid(block, _at with { Z = clear });
                Rapid(block, _at with { Z = Math.Min(clear, level + PeckClearance) });
            }
            Rapid(block, _at with { Z = end });
        }
    }

    private void Rapid(Block block, WorkPoint to) => Add(MotionKind.Rapid, to, default, 0, block.Line);

    /// <summary>Words that only a cycle knows.</summary>
    private void RefuseCycleWords(Block block, bool hasAxis)
    {
        var word = hasAxis ? MotionWordOf(block) : null;
        if (block.Has('Q') && word != 83) TellMissing(block, block.Column('Q'), "Q without G83", "Q with X or Y while G83 is in force", "take it out");
        if (block.Has('L') && !IsCycle(word)) TellMissing(block, block.Column('L'), "L without a cycle", "L with X or Y while G81, G82 or G83 is in force", "take it out");
    }
}
