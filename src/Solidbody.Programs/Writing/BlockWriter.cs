using System.Globalization;
using System.Text;

namespace Solidbody.Programs.Writing;

/// <summary>Writes blocks and remembers what the controller remembers, so that only words that change are written.</summary>
internal sealed class BlockWriter(ProgramStyle style)
{
    /// <summary>Longest line: what small controllers' line buffers hold (common practice, no source).</summary>
    public const int LineLength = 80;
    /// <summary>Greatest line number (NISTIR 6556, section 3.3.2, from memory); counting starts again after it.</summary>
    private const int GreatestLineNumber = 99_999;
    /// <summary>Decimals of feeds: tenths of a millimetre a minute, hundredths of an inch a minute.</summary>
    private readonly int _feedDecimals = style.Inches ? 2 : 1;
    private readonly StringBuilder _text = new();
    private readonly OutputGrid _grid = new(style);
    private int _lineNumber;
    private bool _blockOpen;
    private int _motionWord = -1;
    private long _feed = -1;
    private bool _planKnown, _heightKnown;
    private DrillCycle? _cycle;

    /// <summary>Lines written so far.</summary>
    public int Lines { get; private set; }
    /// <summary>Where the program's own numbers have brought the tip.</summary>
    public GridPoint At { get; private set; }
    public override string ToString() => _text.ToString();

    /// <summary>Comment lines, if the controller takes comments.</summary>
    public void Comment(string text)
    {
        if (!style.Comments) return;
        foreach (var line in CommentText.Lines(text, LineLength - 2))
        {
            _text.Append('(').Append(line).Append(")\n");
            Lines++;
        }
    }

    /// <summary>A block whose words are already text.</summary>
    public void Block(string words)
    {
        Word(words);
        EndBlock();
    }

    /// <summary>Straight up or down in rapid, written whether or not the height changes: the controller's own position is not known.</summary>
    public void RiseTo(long height)
    {
        _heightKnown = false;
        MoveTo(0, At with { Z = height }, 0);
    }

    /// <summary>The first travel in the plan, both words written.</summary>
    public void TravelTo(GridPoint to)
    {
        At = to;
        _planKnown = true;
        MotionWord(0);
        AxisWord('X', to.X);
        AxisWord('Y', to.Y);
        EndBlock();
    }

    /// <summary>A rapid (0) or a line (1). One that goes nowhere on the grid is left out.</summary>
    /// <param name="feed">mm/s; not used for rapids.</param>
    public void MoveTo(int motionWord, GridPoint to, double feed)
    {
        if (_heightKnown && to == At) return;
        MotionWord(motionWord);
        Axes(to);
        if (motionWord != 0) Feed(feed);
        EndBlock();
    }

    /// <summary>An arc (2 or 3) about a centre given in steps from where the tip is. Its end differs from its start in the plan.</summary>
    public void ArcTo(int motionWord, GridPoint to, long i, long j, double feed)
    {
        MotionWord(motionWord);
        Axes(to);
        AxisWord('I', i);
        AxisWord('J', j);
        Feed(feed);
        EndBlock();
    }

    /// <summary>A hole by a cycle: the first says all its numbers, the next ones only what changes.</summary>
    public void Cycle(in DrillCycle cycle, OutputGrid grid)
    {
        if (_cycle is not { } before || before.ReturnsToStart != cycle.ReturnsToStart) Block(cycle.ReturnsToStart ? "G98" : "G99");
        var isFirst = _motionWord != cycle.Word;
        MotionWord(cycle.Word);
        var (bottom, clear, bite) = (grid.Steps(cycle.Bottom), grid.Steps(cycle.Clear), grid.Steps(cycle.Bite));
        var at = grid.Nearest(new(cycle.At.X, cycle.At.Y, cycle.ReturnsToStart ? cycle.Start : cycle.Clear));
        AxisWord('X', at.X);
        AxisWord('Y', at.Y);
        if (isFirst || _cycle is not { } last || grid.Steps(last.Bottom) != bottom) AxisWord('Z', bottom);
        if (isFirst || _cycle is not { } same || grid.Steps(same.Clear) != clear) AxisWord('R', clear);
        if (cycle.Word == DrillCycle.Pecked && (isFirst || grid.Steps(_cycle!.Value.Bite) != bite)) AxisWord('Q', bite);
        Feed(cycle.Feed);
        EndBlock();
        (At, _cycle) = (at, cycle);
    }

    /// <summary>Ends the cycles, if one is in force.</summary>
    public void EndCycle()
    {
        if (_cycle is null) return;
        (_cycle, _motionWord) = (null, -1);
        Block("G80");
    }

    private void Axes(GridPoint to)
    {
        if (_planKnown && to.X != At.X) AxisWord('X', to.X);
        if (_planKnown && to.Y != At.Y) AxisWord('Y', to.Y);
        if (!_heightKnown || to.Z != At.Z) AxisWord('Z', to.Z);
        _heightKnown = true;
        At = to;
    }

    private void MotionWord(int word)
    {
        if (word == _motionWord) return;
        _motionWord = word;
        Word(string.Create(CultureInfo.InvariantCulture, $"G{word}"));
    }

    private void Feed(double feed)
    {
        var perMinute = feed * 60 / (style.Inches ? ArcRule.MillimetresPerInch : 1);
        var steps = Math.Max(1, (long)Math.Round(perMinute * Math.Pow(10, _feedDecimals)));
        if (steps == _feed) return;
        _feed = steps;
        Letter('F');
        OutputGrid.Append(_text, steps, _feedDecimals, style.Terse);
    }

    private void AxisWord(char letter, long steps)
    {
        Letter(letter);
        OutputGrid.Append(_text, steps, _grid.Decimals, style.Terse);
    }

    private void Word(string word)
    {
        OpenOrSpace();
        _text.Append(style.Terse ? word.Replace(" ", "", StringComparison.Ordinal) : word);
    }

    private void Letter(char letter)
    {
        OpenOrSpace();
        _text.Append(letter);
    }

    private void OpenOrSpace()
    {
        if (_blockOpen)
        {
            if (!style.Terse) _text.Append(' ');
        }
        else if (style.LineNumbers)
        {
            _lineNumber = _lineNumber == GreatestLineNumber ? 1 : _lineNumber + 1;
            _text.Append(CultureInfo.InvariantCulture, $"N{_lineNumber}{(style.Terse ? "" : " ")}");
        }
        _blockOpen = true;
    }

    private void EndBlock()
    {
        _text.Append('\n');
        Lines++;
        _blockOpen = false;
    }
}
