using System.Collections.Immutable;

namespace Solidbody.Programs.Reading;

/// <summary>Obeys blocks: keeps what the controller keeps between lines and turns motion words into <see cref="Motion"/>s.</summary>
/// <remarks>After a mistake it goes on as if the likeliest word had been there, so that one slip is told once.</remarks>
internal sealed partial class Interpreter(MistakeList mistakes)
{
    private enum Distance { Unknown, Absolute, Incremental }

    private readonly ImmutableArray<Motion>.Builder _motions = ImmutableArray.CreateBuilder<Motion>();
    private double? _millimetresPerUnit;
    private Distance _distance;
    private bool _feedPerMinute, _planeKnown;
    private int? _motionWord;
    private double? _feed;
    private double _speed;
    private bool _spindleTurns;

    public ProgramStart? Start { get; private set; }
    public bool HasEnded { get; private set; }

    public ImmutableArray<Motion> TakeMotions() => _motions.DrainToImmutable();

    /// <summary>Order of execution: NISTIR 6556, table 8, from memory, without the steps this subset has no words for.</summary>
    public void Obey(Block block)
    {
        if (block.Has(ModalGroup.FeedMode)) _feedPerMinute = true;
        if (block.Has('F')) Feed(block);
        if (block.Has('S')) _speed = block['S'] / 60;
        if (block.Has('T')) _chosenTool = (int)Math.Round(block['T']);
        if (block.Has(ModalGroup.ToolChange)) ChangeTool(block);
        if (block.Has(ModalGroup.Spindle)) Spindle(block);
        Dwell(block);
        if (block.Has(ModalGroup.Plane)) _planeKnown = true;
        if (block.Has(ModalGroup.Units)) _millimetresPerUnit = block[ModalGroup.Units] == 20 ? ArcRule.MillimetresPerInch : 1;
        Length(block);
        if (block.Has(ModalGroup.Distance)) _distance = block[ModalGroup.Distance] == 90 ? Distance.Absolute : Distance.Incremental;
        if (block.Has(ModalGroup.ReturnMode)) _returnsToStart = block[ModalGroup.ReturnMode] == 98;
        Move(block);
        if (block.Has(ModalGroup.Stopping)) HasEnded = block[ModalGroup.Stopping] is 2 or 30;
    }

    /// <summary>F is obeyed before G20 and G21 of its own line, so the unit is the one in force before it.</summary>
    private void Feed(Block block)
    {
        if (_millimetresPerUnit is null)
            mistakes.Add(block.Line, block.Column('F'), "F stands before the units are known; it is obeyed before G20 or G21 of its own line", "G20 or G21 on an earlier line", "write G21 (millimetres) or G20 (inches) on a line before it");
        _feed = block['F'] * (_millimetresPerUnit ?? 1) / 60;
    }

    private void Spindle(Block block)
    {
        _spindleTurns = block[ModalGroup.Spindle] == 3;
        if (_spindleTurns && !(_speed > 0))
            mistakes.Add(block.Line, block.Column(ModalGroup.Spindle), "M3 without a speed", "S above 0 before M3 or on its line", "write S with the turns a minute");
    }

    private void Dwell(Block block)
    {
        var dwells = block.Has(ModalGroup.NonModal);
        if (dwells && !block.Has('P'))
            TellMissing(block, block.Column(ModalGroup.NonModal), "G4 without P", "G4 P with seconds", "write P with the seconds to wait");
        if (!dwells && block.Has('P') && MotionWordOf(block) != 82)
            TellMissing(block, block.Column('P'), "P without G4 or G82", "P on the line of G4 or of G82", "take it out, or write G4");
    }

    /// <summary>Tells a mistake that an unread word of the same line could explain, unless there is one.</summary>
    private void TellMissing(Block block, int column, string wrong, string allowed, string remedy)
    {
        if (!block.IsBroken) mistakes.Add(block.Line, column, wrong, allowed, remedy);
    }
}
