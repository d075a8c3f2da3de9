using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Materials;
using Solidbody.Reading;

namespace Solidbody.Shop.Files;

/// <summary>The shop file: machine, rack of cutters, woods and hold-downs; a definition out, or every mistake at once. <c>docs/shop-file.md</c> lists all keys.</summary>
public static class ShopFile
{
    /// <param name="fileName">As the person gave it, for the mistakes.</param>
    public static Result<ShopDefinition> Read(string text, string fileName) => TomlFile.Read(text, fileName, ReadShop);

    /// <summary>Every key with what is allowed and its default, as the reader sees them for one shop.</summary>
    /// <param name="text">A file without mistakes.</param>
    public static ImmutableArray<KeyNote> Keys(string text) => TomlFile.Describe(text, ReadShop);

    static ShopDefinition ReadShop(TableReader file)
    {
        var names = new HashSet<string>();
        var pins = new HashSet<(string, string?, Pass?)>();
        var name = file.Text("name", 60, "workshop", "what the shop is called on sheets");
        var machine = MachineSection.Read(file.Table("machine"));
        var cutters = file.Tables<Geometry.Cutter>("cutters", 1, 100, [], (cutter, _) => CutterSection.Read(cutter, names));
        return new ShopDefinition
        {
            Name = name,
            Machine = machine,
            Cutters = cutters,
            Woods = file.Tables("woods", 0, 100, [], (TableReader wood, WoodOnHand? _) => ReadWood(wood)),
            HoldDowns = ReadHoldDowns(file.Table("hold_downs")),
            Outline = OutlineHabitsSection.Read(file.Table("outline")),
            Pinned = file.Tables<PinnedFeeds>("pinned", 0, 300, [], (pinned, _) => PinnedSection.Read(pinned, cutters, machine, pins)),
        };
    }

    static WoodOnHand ReadWood(TableReader wood)
    {
        var key = wood.Word("wood", Woods.All.Select(w => w.Key), null, "its name in the wood table");
        var usual = CuttingForces.Default(Woods.Find(key)!.Hardness);
        var (chipLoad, least, most) = (
            wood.Number("chip_load", 0.3, 2, 1, "factor on the usual chip load: 1 is the middle of the usual range"),
            wood.CuttingForce("cutting_force_least", 5, 200, usual.Least, "lower end of its specific cutting force: figures are told from there"),
            wood.CuttingForce("cutting_force_most", 5, 200, usual.Most, "upper end: limits are kept with it"));
        if (wood.IsSound && least > most)
            wood.Refuse("cutting_force_least", $"the least cutting force, {least:0.##} N/mm2, is above the most, {most:0.##} N/mm2", "least ≤ most", "swap the two, or mend one");
        return new WoodOnHand(key, chipLoad, new(least, most));
    }

    /// <summary>Defaults: common practice, no source.</summary>
    static HoldDowns ReadHoldDowns(TableReader holdDowns) => new(
        holdDowns.Length("screw_head", 4, 30, 10, "diameter of a hold-down screw's head or washer"),
        holdDowns.Length("screw_head_height", 0, 20, 4, "its height above the blank"),
        holdDowns.Length("screw_margin", 2, 50, 10, "kept free between screw head and cutter"),
        holdDowns.Flag("tape", true, "whether double-sided tape is used"),
        holdDowns.Length("dowel_diameter", 3, 16, 6, "registration dowels"),
        holdDowns.Length("dowel_depth", 3, 30, 10, "of a dowel's hole in the spoilboard"),
        holdDowns.Length("dowel_play", 0, 0.5, 0.05, "hole less dowel, in diameter: what the flip may be off by"));
}
