using CsCheck;
using Solidbody.Geometry;
using Solidbody.Shop.Files;

namespace Solidbody.Shop.Tests.Files;

public class ShopFileTests
{
    const string Machine = """
        units = "mm"
        name = "test shop"
        machine.feed.x = "4200 mm/min"
        machine.feed.y = "4000 mm/min"
        machine.feed.z = "1500 mm/min"
        machine.rapid = { x = "5000 mm/min", y = "5000 mm/min", z = "2500 mm/min" }
        machine.acceleration = { x = "400 mm/s2", y = "450 mm/s2", z = "250 mm/s2" }
        machine.travel = { x = 600, y = 600, z = 110 }
        machine.spindle = { slowest = 8000, fastest = "24000 rpm", power = "2 kW" }

        """;
    const string Cutter = """
        [[cutters]]
        name = "U6"
        kind = "up-spiral"
        diameter = 5.97
        flute_length = 25
        overall_length = 65
        shank = "1/4 in"
        flutes = 2
        stick_out = 40

        """;

    static string[] Mistakes(string text) => [.. ShopFile.Read(text, "shop.toml").Mistakes.Select(m => $"{m.Line},{m.Column}: {m.Wrong} | {m.Allowed} | {m.Remedy}")];

    [Fact]
    public void A_short_shop_file_takes_the_defaults()
    {
        var shop = ShopFile.Read(Machine + Cutter, "shop.toml").Good;

        Assert.Equal((600.0, 600.0, 0.3), (shop.Machine.BedX, shop.Machine.BedY, shop.Machine.SpoilboardAllowance));
        Assert.Equal((true, false, 3, false), (shop.Machine.Arcs, shop.Machine.ToolChanger, shop.Machine.Decimals, shop.Machine.Inches));
        Assert.Equal((8000.0 / 60, 400.0, 2000.0), (shop.Machine.SpindleSpeedLeast, shop.Machine.SpindleSpeedMost, shop.Machine.SpindlePower));
        Assert.Equal((4000.0 / 60, 400.0), (shop.Machine.FeedMostXY, shop.Machine.AccelerationXY));   // the slower axis rules the plan
        Assert.Equal(new HoldDowns(10, 4, 10, true, 6, 10), shop.HoldDowns);
        Assert.Equal(new Cutter { Name = "U6", Kind = CutterKind.UpSpiral, Diameter = 5.97, FluteLength = 25, OverallLength = 65, ShankDiameter = 6.35, Flutes = 2, StickOut = 40 }, shop.Cutters.Single());
    }

    public static TheoryData<string, string, string> CutterMistakes => new()
    {   // a line of the cutter; what stands there instead; the one mistake
        { "kind = \"up-spiral\"", "kind = \"up-spirl\"", "12,8: `kind` of [[cutters]] 1 is \"up-spirl\" | up-spiral, down-spiral, straight, ball-end, tapered ball-end, drill or roundover | did you mean \"up-spiral\"?" },
        { "flute_length = 25", "flute_length = 41", "14,16: the flutes are 41 mm | at most 40 mm, the stick-out, or the flutes turn in the collet | measure again" },
        { "stick_out = 40", "stick_out = 66", "18,13: it sticks out 66 mm | at most 65 mm, the overall length | measure again" },
        { "stick_out = 40", "", "10,1: `stick_out` of [[cutters]] 1 is missing | 3 mm to 200 mm | add it under [[cutters]]" },
        { "stick_out = 40", "stick_out = 40\nangle = \"90 deg\"", "19,9: `angle` of [[cutters]] 1 has no meaning here | only drills and tapered ball-ends have it | remove it, or mend `kind`" },
        { "stick_out = 40", "stick_out = 40\nedge_radius = 6", "19,15: `edge_radius` of [[cutters]] 1 has no meaning here | only roundovers have it | remove it, or mend `kind`" },
        { "kind = \"up-spiral\"", "kind = \"roundover\"\ntip_radius = 1\nedge_radius = 3", "14,15: tip and edge radius come to 4 mm | half the diameter, 2.985 mm | measure again: diameter = 2 × (tip_radius + edge_radius)" },
    };

    [Theory, MemberData(nameof(CutterMistakes))]
    public void A_cutter_that_cannot_be_is_refused_with_its_place(string line, string instead, string mistake) =>
        Assert.Equal([mistake], Mistakes(Machine + Cutter.Replace(line, instead, StringComparison.Ordinal)));

    public static TheoryData<string, string> OtherMistakes => new()
    {   // added to the short file; the one mistake
        { Cutter, "20,8: two cutters are called \"U6\" | each name once in the rack | rename one" },
        { "[machine.bed]\nx = 500", "20,5: the bed is 500 mm along X, the travel 600 mm | at least 600 mm | give the bed the cutter can reach over, or less travel" },
        { "[[woods]]\nwood = \"sugar-mapel\"", "20,8: `wood` of [[woods]] 1 is \"sugar-mapel\" | red-alder, basswood, yellow-poplar, sitka-spruce, limba, mahogany, khaya, black-cherry, black-walnut, soft-maple, silver-maple, bigleaf-maple, white-ash, sapele, sugar-maple, indian-rosewood, padauk, wenge or ebony | did you mean \"sugar-maple\"?" },
        { "[hold_downs]\ntape = 1", "20,8: `hold_downs.tape` is 1, a whole number | true or false | write true or false, without quotes" },
        { "[hold_downs]\nscrew_hed = 1", "20,1: unknown key `screw_hed` in [hold_downs] | screw_head, screw_head_height, screw_margin, tape, dowel_diameter, dowel_depth, dowel_play | did you mean `screw_head`?" },
    };

    [Theory, MemberData(nameof(OtherMistakes))]
    public void Each_mistake_is_told_with_its_place(string added, string mistake) => Assert.Equal([mistake], Mistakes(Machine + Cutter + added));

    [Fact]
    public void A_spindle_slowest_above_its_fastest_is_refused() =>
        Assert.Equal(["9,31: the slowest spindle speed is above the fastest | slowest ≤ fastest | swap the two, or mend one"],
            Mistakes(Machine.Replace("8000", "25000", StringComparison.Ordinal) + Cutter));

    [Fact]
    public void A_machines_own_figures_have_no_defaults() =>
        Assert.Equal(16, ShopFile.Read("units = \"mm\"", "shop.toml").Mistakes.Length); // 9 of the axes, 3 travels, 3 of the spindle, the cutters

    [Fact]
    public void A_damaged_file_is_read_or_refused_and_never_throws()
    {
        var text = Repository.ReadExample("school-shop.toml");
        Gen.Select(Gen.Int[0, text.Length - 1], Gen.Int[0, 40], Gen.String[Gen.Char["\"'[]{}=.,#\\\n u0-9é/"], 0, 4]).Sample((at, cut, put) =>
        {
            var result = ShopFile.Read(text[..at] + put + text[Math.Min(text.Length, at + cut)..], "damaged");
            return result.IsGood == result.Value is not null && result.Mistakes.All(m => m.Line >= 1 && m.Column >= 1 && m.Remedy != "");
        }, iter: 500);
    }
}
