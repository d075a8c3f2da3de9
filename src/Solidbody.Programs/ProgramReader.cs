using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Programs.Reading;

namespace Solidbody.Programs;

/// <summary>Reads RS274/NGC text strictly: what is not explicitly allowed is a mistake (NISTIR 6556, section 3.3).</summary>
/// <remarks>
/// Taken: G0 G1 G2 G3 (XY plane; I J or R; with Z a helix), G4, G17, G20 G21, G40, G43 with H, G49, G54, G80, drilling cycles G81 G82 G83 with G98 G99,
/// G90 G91, G94, M0 M1 M2 M3 M5 M6 M7 M8 M9 M30, F N S T words and comments in ( ) or after ;. Words of a line are obeyed in the order of NISTIR 6556 table 8.
/// Nothing is taken for granted at the start: units and distance mode stand before the first move, feed mode before the first cut, plane
/// before the first arc. The first moves are a G0 in Z alone and a G0 in X and Y alone, because the tip stands nobody knows where (<see cref="ProgramStart"/>).
/// </remarks>
public static class ProgramReader
{
    /// <summary>Longest text, characters: some thirty times a long program.</summary>
    private const int LongestText = 200_000_000;

    /// <summary>The program, or its mistakes (at most 100), each with line and column; never an exception for anything a file may hold.</summary>
    public static Result<ReadProgram> Read(string text, string fileName)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(fileName);
        var mistakes = new MistakeList(fileName);
        if (text.Length > LongestText)
        {
            mistakes.Add(1, 1, $"the text has {text.Length} characters", $"at most {LongestText} characters", "divide the program");
            return new(null, mistakes.ToImmutable());
        }
        var comments = ImmutableArray.CreateBuilder<string>();
        var scanner = new BlockScanner(mistakes, comments);
        var interpreter = new Interpreter(mistakes);
        var block = new Block();
        var line = 0;
        foreach (var range in text.AsSpan().Split('\n'))
        {
            var words = text.AsSpan()[range];
            line++;
            if (words.EndsWith('\r')) words = words[..^1];
            if (interpreter.HasEnded)
            {
                if (words.Trim(" \t").IsEmpty) continue;
                mistakes.Add(line, 1, "text after the end of the program", "nothing after M2 or M30", "take it out, or move the end");
                break;
            }
            block.Begin(line);
            var before = mistakes.Count;
            scanner.Scan(words, block);
            block.IsBroken = mistakes.Count > before;
            if (!block.IsEmpty) interpreter.Obey(block);
            if (mistakes.IsFull) break;
        }
        if (!interpreter.HasEnded && !mistakes.IsFull)
            mistakes.Add(line, 1, "the program has no end", "M2 or M30 in the last block", "write M5 and M2 on the last lines");
        if (mistakes.Count > 0) return new(null, mistakes.ToImmutable());
        return new(new ReadProgram
        {
            FileName = fileName,
            Start = interpreter.Start,
            Motions = interpreter.TakeMotions(),
            Tool = interpreter.Tool,
            Comments = comments.DrainToImmutable(),
            Lines = text.EndsWith('\n') ? line - 1 : line,
        }, []);
    }
}
