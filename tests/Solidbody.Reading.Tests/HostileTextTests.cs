using CsCheck;
using Solidbody.Findings;

namespace Solidbody.Reading.Tests;

/// <summary>What is no TOML file at all: a clear answer, no exception, no long wait.</summary>
public class HostileTextTests
{
    static Result<object> Read(string text) => TomlFile.Read<object>(text, "f", file => file.Text("name", 10, null, ""));

    [Theory]
    [InlineData("units = \"mm\"\nname = \"a\0b\"", 2, 10, "the character U+0000 does not belong in a text file")]
    [InlineData("\u007fELF", 1, 1, "the character U+007F does not belong in a text file")]
    [InlineData("PK\u0003\u0004", 1, 3, "the character U+0003 does not belong in a text file")]
    [InlineData("name = \"\uFFFD\"", 1, 9, "the character U+FFFD does not belong in a text file")]
    [InlineData("a = 1\nb = [[[[[[[[[[[[[[[[[[", 2, 21, "brackets are nested more than 16 deep")]
    public void It_is_turned_away_with_its_place(string text, int line, int column, string wrong)
    {
        var mistake = Read(text).Mistakes.Single();

        Assert.Equal((line, column, wrong), (mistake.Line, mistake.Column, mistake.Wrong));
    }

    [Fact]
    public void A_huge_file_is_turned_away() =>
        Assert.Equal("the file has 1000001 characters", Read(new string(' ', TomlFile.LongestText + 1)).Mistakes.Single().Wrong);

    [Theory]
    [InlineData('[')]
    [InlineData('{')]
    [InlineData('"')]
    [InlineData('\'')]
    [InlineData('.')]
    [InlineData('=')]
    [InlineData('\n')]
    [InlineData('#')]
    [InlineData('a')]
    public void A_long_run_of_one_character_gets_an_answer(char c) => Assert.NotEmpty(Read(new string(c, 100_000)).Mistakes);

    [Fact]
    public void Brackets_behind_a_quote_never_hide_from_the_count() => Gen.Select(Gen.String[Gen.Char["\"'#\\\n a=,"], 0, 20], Gen.Const("x = ")).Sample((noise, key) =>
        !Read(noise + "\n" + key + new string('[', 50_000)).IsGood);

    [Fact]
    public void Long_dotted_keys_get_an_answer() => Assert.NotEmpty(Read(string.Join('.', Enumerable.Repeat("a", 50_000)) + " = 1").Mistakes);

    /// <summary>Found by the law below: texts that make the parser throw.</summary>
    [Theory]
    [InlineData("units = \"mm\"\nname = \"i\\", 2)]
    [InlineData("units = \"mm\"\nname = \"\\UFFFFFFFF\"\nx = 1", 2)]
    public void A_text_that_breaks_off_inside_an_escape_is_answered_on_its_line(string text, int line) => Assert.Contains(Read(text).Mistakes, m => m.Line == line);

    [Fact]
    public void Any_text_gets_an_answer() => Gen.String[Gen.Char["[]{}\"'=.,#\\\n\r\t abunitsmname01-+:é\0"], 0, 60].Sample(text => Read(text).Mistakes.Length >= 0, iter: 5_000);
}
