namespace Solidbody.Instrument.Tests;

public class NoteNameTests
{
    /// <summary>Note numbers of scientific pitch notation: A4 is 69 and the octave changes at C (MIDI 1.0 numbering with C4 = 60, from memory).</summary>
    [Theory]
    [InlineData("A4", 69), InlineData("C4", 60), InlineData("B3", 59), InlineData("E2", 40), InlineData("E1", 28), InlineData("B0", 23), InlineData("Bb1", 34), InlineData("F#3", 54)]
    [InlineData("C0", 12), InlineData("B7", 107), InlineData("Cb4", 59), InlineData("B#3", 60), InlineData("E#2", 41), InlineData("Fb2", 40)]
    public void A_name_is_a_note(string name, int number) => Assert.Equal(new Note(number), NoteName.Read(name));

    [Theory]
    [InlineData(""), InlineData("E"), InlineData("2"), InlineData("e2"), InlineData("E 2"), InlineData(" E2"), InlineData("E2 "), InlineData("H2"), InlineData("E8"), InlineData("E-1"), InlineData("E10")]
    [InlineData("E##2"), InlineData("Ebb2"), InlineData("E♭2"), InlineData("Es2"), InlineData("2E"), InlineData("E#"), InlineData("E٢")]
    public void Anything_else_is_none(string name) => Assert.Null(NoteName.Read(name));

    [Fact]
    public void Every_note_shown_reads_back() =>
        Assert.All(Enumerable.Range(12, 96).Select(n => new Note(n)), n => Assert.Equal(n, NoteName.Read(NoteName.Of(n))));

    [Theory, InlineData(40, "E2"), InlineData(54, "F#3"), InlineData(34, "Bb1"), InlineData(39, "Eb2"), InlineData(11, "B-1")]
    public void A_note_is_shown_by_its_usual_name(int number, string name) => Assert.Equal(name, NoteName.Of(new(number)));
}
