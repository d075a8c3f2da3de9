using CsCheck;

namespace Solidbody.Reading.Tests;

public class NearestWordTests
{
    /// <summary>Counted by hand.</summary>
    [Theory]
    [InlineData("", "", 0)]
    [InlineData("width", "width", 0)]
    [InlineData("width", "", 5)]
    [InlineData("witdh", "width", 1)]   // two neighbours swapped
    [InlineData("widt", "width", 1)]
    [InlineData("wwidth", "width", 1)]
    [InlineData("wadth", "width", 1)]
    [InlineData("kitten", "sitting", 3)]
    public void Distance_counts_single_letter_slips(string a, string b, int distance) => Assert.Equal(distance, NearestWord.Distance(a, b));

    [Fact]
    public void Distance_is_the_same_both_ways_and_no_more_than_the_longer_word() =>
        Gen.Select(Gen.String[Gen.Char["abcd"], 0, 12], Gen.String[Gen.Char["abcd"], 0, 12]).Sample((a, b) =>
            NearestWord.Distance(a, b) == NearestWord.Distance(b, a) && NearestWord.Distance(a, b) <= Math.Max(a.Length, b.Length));

    [Theory]
    [InlineData("witdh", "width")]
    [InlineData("stringspread", "string_spread")]
    [InlineData("colour", null)]
    public void Only_a_near_word_is_offered(string word, string? near) =>
        Assert.Equal(near, NearestWord.To(word, ["width", "thickness", "string_spread"]));

    [Fact]
    public void A_monstrous_word_is_not_compared() => Assert.Null(NearestWord.To(new string('w', 100_000), ["width"]));
}
