using System.Text;
using CsCheck;

namespace Solidbody.Programs.Tests;

/// <summary>Whatever a file holds, reading gives a program or mistakes, never an exception and never both.</summary>
public class ReaderFuzzTests
{
    private const string Sample = """
        (Part: body)
        N1 G17 G21 G40 G49 G54 G80 G90 G94
        N2 G0 Z60
        T1 M6
        G0 Z60
        S18000 M3
        G4 P3
        X10 Y20
        G1 Z40 F300
        G91 X30.125 F1200
        G90 G3 X50.125 Y30 I0 J10
        G2 X40.125 Y30 R5 Z39 ; half a turn
        M0
        G0 Z60
        M5
        M2
        """;

    private static void ReadsOrTells(string text)
    {
        var result = ProgramReader.Read(text, "fuzz.nc");
        Assert.Equal(result.IsGood, result.Value is not null);
        Assert.InRange(result.Mistakes.Length, 0, 100);
        var lines = text.Count(c => c == '\n') + 1;
        Assert.All(result.Mistakes, m =>
        {
            Assert.InRange(m.Line, 1, lines);
            Assert.InRange(m.Column, 1, text.Length + 1);
        });
        if (result.Value is not { } program) return;
        var at = program.Start?.At;
        foreach (var motion in program.Motions)
        {
            Assert.Equal(at, motion.From);
            Assert.True(double.IsFinite(motion.Length) && double.IsFinite(motion.Feed) && double.IsFinite(motion.SpindleSpeed));
            at = motion.To;
        }
    }

    [Fact]
    public void The_sample_itself_is_good() => Assert.True(ProgramReader.Read(Sample, "fuzz.nc").IsGood);

    [Fact]
    public void Random_bytes() => Gen.Byte.Array[0, 400].Sample(bytes => ReadsOrTells(Encoding.Latin1.GetString(bytes)), iter: 3000);

    [Fact]
    public void Random_words() => Gen.Char["GMXYZIJRFSTNP0123456789.-+ \n()/;#%eE"].Array[0, 300].Sample(chars => ReadsOrTells(new string(chars)), iter: 5000);

    [Fact]
    public void A_good_program_with_a_few_characters_changed_taken_out_or_put_in() =>
        Gen.Select(Gen.Int[0, Sample.Length - 1], Gen.Int[0, 3], Gen.Char["GMXYZIJRFSTNP0123456789.-+ \n()\u0000é"]).Array[1, 4].Sample(changes =>
        {
            var text = new StringBuilder(Sample);
            foreach (var (at, kind, c) in changes)
            {
                var place = Math.Min(at, text.Length - 1);
                if (kind == 0) text[place] = c;
                else if (kind == 1) text.Remove(place, 1);
                else if (kind == 2) text.Insert(place, c);
                else text.Insert(place, Sample.AsSpan(place / 2, Math.Min(20, Sample.Length - place / 2)));
            }
            ReadsOrTells(text.ToString());
        }, iter: 10_000);
}
