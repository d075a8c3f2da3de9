namespace Solidbody.Programs.Reading;

/// <summary>Which cutter is in the spindle, and how long it is taken to be.</summary>
internal sealed partial class Interpreter
{
    private int? _chosenTool;
    private bool _hasLength;

    public int? Tool { get; private set; }

    private void ChangeTool(Block block)
    {
        if (_chosenTool is null)
            mistakes.Add(block.Line, block.Column(ModalGroup.ToolChange), "M6 without a T word", "T with the cutter's place in the changer, then M6", "write T before M6");
        if (Start is not null)
            mistakes.Add(block.Line, block.Column(ModalGroup.ToolChange), "M6 after the first travel", "one cutter a program, fetched before the first travel", "divide the program, one for each cutter");
        Tool = _chosenTool;
        _spindleTurns = false;
        _height = null;
    }

    /// <summary>G43 takes a cutter's length from the controller's table; what Z says from then on is the tip's height. Until the next rise nobody knows where that is.</summary>
    private void Length(Block block)
    {
        var applies = block.Has(ModalGroup.LengthOffset) && block[ModalGroup.LengthOffset] == 43;
        if (block.Has('H') != applies)
        {
            if (applies) TellMissing(block, block.Column(ModalGroup.LengthOffset), "G43 without H", "G43 with H, the cutter's number", "write H");
            else TellMissing(block, block.Column('H'), "H without G43", "H on the line of G43", "take it out, or write G43");
            return;
        }
        if (!block.Has(ModalGroup.LengthOffset)) return;
        if (!applies && !_hasLength) return;
        if (Start is not null)
            mistakes.Add(block.Line, block.Column(ModalGroup.LengthOffset), $"G{block[ModalGroup.LengthOffset]} after the first travel", "one length a program, said before the first travel", "take it out");
        if (applies && Tool is { } tool && (int)Math.Round(block['H']) != tool)
            mistakes.Add(block.Line, block.Column('H'), $"H{block['H']:0} is another cutter's length: T{tool} is in the spindle", $"H{tool}", $"write H{tool}");
        _hasLength = applies;
        _height = null;
    }
}
