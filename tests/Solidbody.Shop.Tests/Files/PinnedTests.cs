using Solidbody.Shop.Files;

namespace Solidbody.Shop.Tests.Files;

public class PinnedTests
{
    static readonly string Shop = Repository.ReadExample("school-shop.toml");

    static string[] Mistakes(string pinned) => [.. ShopFile.Read(Shop + "\n[[pinned]]\n" + pinned, "shop.toml").Mistakes.Select(m => $"{m.Wrong} | {m.Allowed} | {m.Remedy}")];

    [Fact]
    public void What_is_pinned_is_read_as_it_is_written()
    {
        var shop = ShopFile.Read(Shop + "\n[[pinned]]\ncutter = \"U6\"\nwood = \"sugar-maple\"\npass = \"roughing\"\nfeed = \"2400 mm/min\"\nstep_down = 2.5\nstep_over = 2\n", "shop.toml").Good;
        Assert.Equal(new PinnedFeeds { Cutter = "U6", Wood = "sugar-maple", Pass = Pass.Roughing, Feed = 40, StepDown = 2.5, StepOver = 2 }, Assert.Single(shop.Pinned));
        Assert.Empty(ShopFile.Read(Shop, "shop.toml").Good.Pinned);
    }

    public static TheoryData<string, string> Misfits => new()
    {   // the entry; its one mistake. The school's spindle turns 8000 to 24000, its axes feed 4000 mm/min; U6 has two flutes of 25 mm.
        { "cutter = \"U7\"\nfeed = \"900 mm/min\"", "no cutter is called \"U7\" | U12, U6, S3, B12, B6, F058, D2.5, D3, D3.2, D5, D6, D8, R6 | did you mean \"U6\"?" },
        { "cutter = \"U6\"", "this entry pins nothing | spindle_speed, feed, chip_load, step_down or step_over | add one of them, or remove the entry" },
        { "cutter = \"U6\"\nspindle_speed = 30000", "the spindle speed is 30000 rpm | 8000 rpm to 24000 rpm, what the spindle turns | pin one the spindle has" },
        { "cutter = \"U6\"\nfeed = \"5000 mm/min\"", "the feed is 5000 mm/min | at most 4000 mm/min, what the axes feed | pin a slower one" },
        { "cutter = \"D8\"\nfeed = \"2000 mm/min\"", "the feed is 2000 mm/min | at most 1500 mm/min, what the axes feed | pin a slower one" },
        { "cutter = \"U6\"\nstep_down = 26", "the step-down is 26 mm | at most 25 mm, the flutes of U6 | pin less, or nothing" },
        { "cutter = \"U6\"\nstep_over = 3", "the step-over is 3 mm | at most 2.7 mm: passes further apart leave wood in corners | pin less, or nothing" },
        { "cutter = \"B6\"\nstep_over = 1", "only the roughing passes of a flat cutter have a step-over to pin | no `step_over` here | remove it" },
        { "cutter = \"D8\"\npass = \"finishing\"\nfeed = \"900 mm/min\"", "a drill has no roughing and finishing passes | no `pass` for a drill | remove it" },
        { "cutter = \"U6\"\nspindle_speed = 12000\nfeed = \"3000 mm/min\"\nchip_load = 0.125", "spindle speed, feed and chip load are pinned at once | any two of them: the third follows | remove one" },
        { "cutter = \"U6\"\nspindle_speed = 12000\npass = \"finishing\"", "a spindle speed is pinned for one kind of pass, but a program turns at one speed | no `pass` beside a spindle speed, or beside feed and chip load together | remove `pass`, or the speed" },
        { "cutter = \"U6\"\nfeed = \"3840 mm/min\"\nchip_load = 0.05", "feed and chip load ask for 38400 rpm | 0.08 mm to 0.24 mm at this feed, from what the spindle turns | pin a chip load in that range" },
        { "cutter = \"U6\"\nspindle_speed = 20000\nchip_load = 0.2", "spindle speed and chip load ask for a feed of 8000 mm/min | at most 0.1 mm at this speed, from what the axes feed | pin a smaller chip load, or a slower spindle" },
        { "cutter = \"U6\"\nstep_down = 2\n[[pinned]]\ncutter = \"U6\"\nstep_down = 3", "\"U6\" is pinned twice for the same wood and passes | once each | make one entry of the two" },
        { "cutter = \"U6\"\nstep_dwn = 2", "unknown key `step_dwn` in [pinned] | wood, cutter, pass, spindle_speed, feed, chip_load, step_down, step_over | did you mean `step_down`?" },
    };

    [Theory, MemberData(nameof(Misfits))]
    public void What_machine_and_cutter_cannot_do_is_refused_with_its_range(string pinned, string mistake) => Assert.Contains(mistake, Mistakes(pinned));

    [Fact]
    public void A_woods_cutting_force_is_a_range() => Assert.Equal(
        ["the least cutting force, 50 N/mm2, is above the most, 40 N/mm2 | least ≤ most | swap the two, or mend one"],
        ShopFile.Read(Shop + "\n[[woods]]\nwood = \"ebony\"\ncutting_force_least = \"50 N/mm2\"\ncutting_force_most = \"40 N/mm2\"\n", "shop.toml").Mistakes.Select(m => $"{m.Wrong} | {m.Allowed} | {m.Remedy}"));
}
