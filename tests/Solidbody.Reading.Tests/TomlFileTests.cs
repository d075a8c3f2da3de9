using System.Collections.Immutable;
using Solidbody.Findings;

namespace Solidbody.Reading.Tests;

public class TomlFileTests
{
    sealed record Shelf(string Name, double Width, int Boards, bool Doors, ImmutableArray<double> Holes, double Back, ImmutableArray<int> Marks);
    sealed record Hole(double At);

    static Result<Shelf> Read(string text) => TomlFile.Read(text, "shelf.toml", file => new Shelf(
        file.Text("name", 10, null, "what it is called"),
        file.Length("width", 100, 900, null, "outside"),
        file.Count("boards", 1, 9, 3, "how many"),
        file.Flag("doors", false, "whether it has doors"),
        [.. file.Tables<Hole>("holes", 0, 3, [], (hole, _) => new Hole(hole.Length("at", 0, 900, null, "from the left"))).Select(h => h.At)],
        file.Table("back").Length("thickness", 3, 20, 6, "of the back"),
        file.Counts("marks", 1, 9, [1], "marks")));

    const string Good = "units = \"mm\"\nname = \"low\"\nwidth = 800\n";

    static string[] Mistakes(string text) => [.. Read(text).Mistakes.Select(m => $"{m.Line},{m.Column}: {m.Wrong} | {m.Allowed} | {m.Remedy}")];

    [Fact]
    public void A_good_file_gives_its_values_and_defaults()
    {
        var shelf = Read(Good + "marks = [5, 2]\n[[holes]]\nat = \"1 in\"\n[[holes]]\nat = 30.5\n").Good;

        Assert.Equal(("low", 800.0, 3, false, 6.0), (shelf.Name, shelf.Width, shelf.Boards, shelf.Doors, shelf.Back));
        Assert.Equal([25.4, 30.5], shelf.Holes);
        Assert.Equal([2, 5], shelf.Marks);
    }

    [Theory]
    [InlineData("\uFEFFunits = \"mm\"\r\nname = \"low\"\r\nwidth = 8_00\r\n")]
    [InlineData("name = 'low'\nunits = \"mm\"\nwidth = 800.0\nholes = []\nback = { thickness = 6 }")]
    [InlineData("width = 8e2 # wide\nunits = \"mm\"\nname = \"\"\"low\"\"\"\nback.thickness = 6")]
    [InlineData("width = \"800 mm\"\nname = \"low\"\nunits = \"in\"\nback.thickness = \"6 mm\"")]
    public void The_same_file_may_be_written_in_other_ways(string text)
    {
        var shelf = Read(text);

        Assert.Empty(shelf.Mistakes);
        Assert.Equal(("low", 800.0, 6.0), (shelf.Good.Name, shelf.Good.Width, shelf.Good.Back));
    }

    public static TheoryData<string, string> EachMistake => new()
    {   // added to the good file; the one mistake
        { "wdith = 3", "4,1: unknown key `wdith` at the top level | units, name, width, boards, doors, holes, back, marks | did you mean `width`?" },
        { "colour = 3", "4,1: unknown key `colour` at the top level | units, name, width, boards, doors, holes, back, marks | remove it, or use one of the keys allowed here" },
        { "thickness = 3", "4,1: unknown key `thickness` at the top level | units, name, width, boards, doors, holes, back, marks | `thickness` belongs in [back]" },
        { "[back]\nboards = 3", "5,1: unknown key `boards` in [back] | thickness | `boards` belongs at the top of the file, before the first table" },
        { "[bakc]", "4,2: unknown key `bakc` at the top level | units, name, width, boards, doors, holes, back, marks | did you mean `back`?" },
        { "boards = 2.5", "4,10: `boards` is 2.5, a number | a whole number, 1 to 9 | write a whole number without quotes" },
        { "boards = 10", "4,10: `boards` is 10 | 1 to 9 | give a whole number from 1 to 9" },
        { "boards = 99999999999", "4,10: `boards` is 99999999999 | 1 to 9 | give a whole number from 1 to 9" },
        { "doors = \"yes\"", "4,9: `doors` is \"yes\" | true or false | write true or false, without quotes" },
        { "width = 3", "4,1: `width` is given twice | each key and table once | remove one of the two; the first stands on line 3" },
        { "back = 3", "4,8: `back` is 3, a whole number | a table | write [back] on a line of its own and its keys below" },
        { "holes = 3", "4,9: `holes` is 3, a whole number | a list of tables | write [[holes]] for each, and its keys below" },
        { "[[holes]]\n[[holes]]\nat = 1", "4,1: `at` of [[holes]] 1 is missing | 0 mm to 900 mm | add it under [[holes]]" },
        { "[back]\nthickness = true", "5,13: `back.thickness` is true, a true or false, not a length | 3 mm to 20 mm | write it as `44.5 mm`, `1-3/4 in`, `0.023 in`" },
        { "[back]\nthickness = 2.999", "5,13: `back.thickness` is 2.999 | 3 mm to 20 mm | give a length within 3 mm to 20 mm" },
        { "[back]\nthickness = \"1 in\"", "5,13: `back.thickness` is \"1 in\" | 3 mm to 20 mm | give a length within 3 mm to 20 mm" },
        { "[back]\nthickness = \"6,5 mm\"", "5,13: `back.thickness` is \"6,5 mm\", not a length this file can hold | 3 mm to 20 mm | write a decimal point: `6.5 mm`" },
        { "[back]\nthickness = nan", "5,13: `back.thickness` is nan, not a length this file can hold | 3 mm to 20 mm | write it as `44.5 mm`, `1-3/4 in`, `0.023 in`" },
        { "[back]\nthickness = -inf", "5,13: `back.thickness` is -inf, not a length this file can hold | 3 mm to 20 mm | write it as `44.5 mm`, `1-3/4 in`, `0.023 in`" },
        { "[back]\n[back]", "5,2: `back` is given twice | each key and table once | remove one of the two; the first stands on line 4" },
        { "marks = [1, 1]", "4,9: `marks` names a number twice | each number once | remove the second" },
        { "marks = 1", "4,9: `marks` is 1, a whole number | a list of whole numbers | write them in brackets: [3, 5, 7]" },
    };

    [Theory, MemberData(nameof(EachMistake))]
    public void Each_mistake_is_told_with_its_place_and_what_to_do(string added, string mistake) => Assert.Equal([mistake], Mistakes(Good + added));

    [Fact]
    public void A_missing_unit_is_a_mistake_even_when_every_length_carries_its_own() =>
        Assert.Equal(["1,1: `units` is missing | mm or in | give it at the top of the file, before the first table"], Mistakes("name = \"low\"\nwidth = \"800 mm\""));

    [Fact]
    public void Without_a_unit_bare_lengths_add_no_mistakes_of_their_own() => Assert.Single(Mistakes("name = \"low\"\nwidth = 1"));

    [Fact]
    public void All_mistakes_are_told_at_once_in_the_files_order()
    {
        var mistakes = Mistakes("wdith = 3\nname = 7\nboards = 0\nunits = \"inch\"\n[back]\nthickness = \"2 ft\"\n");

        Assert.Equal(["1,1: `width`", "1,1: unknown key `wdith`", "2,8: `name`", "3,10: `boards`", "4,9: `units`", "6,13: `back.thickness`"],
            mistakes.Select(m => string.Join(' ', m.Split(' ').Take(m.Contains("unknown", StringComparison.Ordinal) ? 4 : 2))).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Bad_syntax_is_told_with_its_place_beside_the_other_mistakes()
    {
        var mistakes = Mistakes("units = \"mm\"\nname = \"low\"\nwidth = 43 mm\nboards = 0\n");

        Assert.True(mistakes.Length == 2, string.Join("\n", mistakes));
        Assert.StartsWith("3,12: this line is not TOML", mistakes[0], StringComparison.Ordinal);
        Assert.StartsWith("4,10: `boards` is 0", mistakes[1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_mistake_names_its_file_and_reads_as_one_line()
    {
        var mistake = Read(Good + "doors = \"a\\nb\"").Mistakes.Single();

        Assert.Equal("shelf.toml(4,9): `doors` is \"a b\"; allowed: true or false; write true or false, without quotes", mistake.ToString());
    }

    [Fact]
    public void A_reader_that_asks_twice_for_a_key_is_a_programmers_mistake() =>
        Assert.Throws<InvalidOperationException>(() => TomlFile.Read(Good, "f", file => $"{file.Flag("doors", true, "")}{file.Flag("doors", true, "")}"));
}
