using Solidbody.Geometry;

namespace Solidbody.Programs.Reading;

internal sealed partial class Interpreter
{
    private const int NoMotion = 80;
    /// <summary>Work Z of the tip once it has risen; null while nobody knows it.</summary>
    private double? _height;
    private WorkPoint _at;
    private (double Height, int Line)? _lowestRise;

    private void Move(Block block)
    {
        var hasAxis = block.Has('X') || block.Has('Y') || block.Has('Z');
        if (block.Has(ModalGroup.Motion))
        {
            _motionWord = block[ModalGroup.Motion];
            if (!hasAxis && _motionWord != NoMotion)
                TellMissing(block, block.Column(ModalGroup.Motion), $"G{_motionWord} without X, Y or Z", "a motion word with at least one axis word", "write where to go, or take the word out");
        }
        var isArc = _motionWord is 2 or 3;
        if (!hasAxis || !isArc) RefuseArcWords(block, hasAxis && IsCycle(_motionWord));
        RefuseCycleWords(block, hasAxis);
        if (!hasAxis) return;
        if (_motionWord is null or NoMotion)
        {
            TellMissing(block, FirstAxisColumn(block), _motionWord is null ? "an axis word before any of G0, G1, G2, G3" : "an axis word while G80 holds", "axis words while G0, G1, G2, G3 or a drilling cycle is in force", "write the motion word");
            _motionWord = 0;
            isArc = false;
        }
        RequireModes(block);
        if (Start is null) FindStart(block);
        else if (isArc) Arc(block);
        else if (IsCycle(_motionWord)) Cycle(block);
        else Straight(block);
        if (!IsCycle(_motionWord)) _cycle = default;
    }

    private void RefuseArcWords(Block block, bool isCycle)
    {
        foreach (var letter in "IJR")
            if (block.Has(letter) && !(isCycle && letter == 'R'))
                TellMissing(block, block.Column(letter), $"{letter} without an arc", "I, J or R with X or Y while G2 or G3 is in force", "take it out, or write the arc's end");
    }

    /// <summary>What must have been said before this move. Each is told once, then taken as usual.</summary>
    private void RequireModes(Block block)
    {
        var column = FirstAxisColumn(block);
        if (_millimetresPerUnit is null)
        {
            mistakes.Add(block.Line, column, "a move before the units are known", "G20 or G21 before the first move", "write G21 (millimetres) or G20 (inches) at the beginning");
            _millimetresPerUnit = 1;
        }
        if (_distance == Distance.Unknown)
        {
            mistakes.Add(block.Line, column, "a move before the distance mode is known", "G90 before the first move", "write G90 at the beginning");
            _distance = Distance.Absolute;
        }
        if (_motionWord == 0) return;
        if (!_feedPerMinute)
        {
            mistakes.Add(block.Line, column, "a cut before the feed mode is known", "G94 before the first cut", "write G94 at the beginning");
            _feedPerMinute = true;
        }
        if (_feed is null)
        {
            mistakes.Add(block.Line, column, "a cut without a feed", "F before the first cut or on its line", "write F with the feed a minute");
            _feed = 1;
        }
        if (_motionWord == 1 || _planeKnown) return;
        mistakes.Add(block.Line, column, "an arc or a cycle before the plane is known", "G17 before the first of them", "write G17 at the beginning");
        _planeKnown = true;
    }

    /// <summary>The first moves, whose beginning is unknown: rises, then one travel.</summary>
    private void FindStart(Block block)
    {
        var unit = _millimetresPerUnit!.Value;
        var (x, y, z) = (block.Has('X'), block.Has('Y'), block.Has('Z'));
        var isRapid = _motionWord == 0 && _distance == Distance.Absolute;
        if (isRapid && z && !x && !y)
        {
            _height = block['Z'] * unit;
            if (_lowestRise is null || _height < _lowestRise.Value.Height) _lowestRise = (_height.Value, block.Line);
            return;
        }
        if (_height is null)
            TellMissing(block, FirstAxisColumn(block), "the first move is not straight up", "G90 G0 with Z alone, to clearance, as the first move (and after M6)", "write G0 and the clearance height before it");
        else if (!(isRapid && x && y && !z))
            TellMissing(block, FirstAxisColumn(block), "the move after the rise is not a travel", "G90 G0 with X and Y, at clearance, before anything else", "write G0 with X and Y before it");
        var height = _height ?? (z ? block['Z'] * unit : 0);
        _at = new(x ? block['X'] * unit : 0, y ? block['Y'] * unit : 0, height);
        Start = new(_lowestRise?.Height ?? height, _lowestRise?.Line ?? block.Line, _at, block.Line);
    }

    private void Straight(Block block)
    {
        var isRapid = _motionWord == 0;
        Add(isRapid ? MotionKind.Rapid : MotionKind.Line, Target(block), default, isRapid ? 0 : _feed!.Value, block.Line);
    }

    private void Arc(Block block)
    {
        var target = Target(block);
        if ((block.Has('X') || block.Has('Y')) && ArcCentre(block, target) is { } centre)
            Add(_motionWord == 2 ? MotionKind.ArcClockwise : MotionKind.ArcCounterClockwise, target, centre, _feed!.Value, block.Line);
        else if (!block.Has('X') && !block.Has('Y'))
            TellMissing(block, FirstAxisColumn(block), "an arc without X and Y", "an arc's end with X, Y or both", "write X and Y, even where they do not change");
        _at = target;
    }

    private void Add(MotionKind kind, WorkPoint to, Point2 centre, double feed, int line)
    {
        var goesSomewhere = to != _at || kind is MotionKind.ArcClockwise or MotionKind.ArcCounterClockwise;
        if (goesSomewhere) _motions.Add(new(kind, _at, to, centre, feed, line, _spindleTurns ? _speed : 0));
        _at = to;
    }

    private WorkPoint Target(Block block) => new(Coordinate(block, 'X', _at.X), Coordinate(block, 'Y', _at.Y), Coordinate(block, 'Z', _at.Z));

    private double Coordinate(Block block, char letter, double now)
    {
        if (!block.Has(letter)) return now;
        var value = block[letter] * _millimetresPerUnit!.Value;
        return _distance == Distance.Incremental ? now + value : value;
    }

    private static int FirstAxisColumn(Block block)
    {
        var first = int.MaxValue;
        foreach (var letter in "XYZ")
            if (block.Has(letter)) first = Math.Min(first, block.Column(letter));
        return first;
    }
}
