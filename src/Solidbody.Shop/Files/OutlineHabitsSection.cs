using Solidbody.Reading;

namespace Solidbody.Shop.Files;

/// <summary>The table <c>[outline]</c>: how parts are cut out of their blanks.</summary>
static class OutlineHabitsSection
{
    public static OutlineHabits Read(TableReader outline)
    {
        var or = new OutlineHabits();
        var hold = outline.Choice("hold", [("tabs", OutlineHold.Tabs), ("skin", OutlineHold.Skin)], "tabs", "what holds a part until the end: tabs, or a thin skin under all of its outline, cut by hand");
        if (hold == OutlineHold.Skin)
            foreach (var key in new[] { "tab_thickness", "tab_length" }) outline.RefuseIfGiven(key, "tabs, where `hold` is \"tabs\"", "take it out, or say hold = \"tabs\"");
        else outline.RefuseIfGiven("skin", "a skin, where `hold` is \"skin\"", "take it out, or say hold = \"skin\"");
        return new(
            outline.Choice("direction", [("climb", OutlineDirection.Climb), ("conventional", OutlineDirection.Conventional), ("with-grain", OutlineDirection.WithGrain)], "climb",
                "which way round the finishing pass runs; with-grain divides it so that no stretch is cut against the grain"),
            hold,
            hold == OutlineHold.Skin ? outline.Length("skin", 0.2, 1.5, or.Skin, "thickness of the skin") : or.Skin,
            hold == OutlineHold.Tabs ? outline.Length("tab_thickness", 1, 10, or.TabThickness, "of a tab; under half of its blank in any case") : or.TabThickness,
            hold == OutlineHold.Tabs ? outline.LengthIfGiven("tab_length", 3, 20, "of a tab along the outline; by the part's thickness unless given") : null);
    }
}
