"""Makes the sheets' fonts from the published TTFs; run once, results are committed. See README.md."""
import sys
from fontTools import subset
from fontTools.ttLib import TTFont

LATIN = list(range(0x20, 0x7F)) + list(range(0xA0, 0x180)) + [
    0x2009, 0x2013, 0x2014, 0x2018, 0x2019, 0x201C, 0x201D, 0x2026, 0x2032, 0x2033,
    0x2044, 0x2212, 0x2192, 0x221A, 0x2248, 0x2264, 0x2265, 0xB5, 0xD7, 0xB1, 0xB0]
SIGNS = [0x20, 0x2300, 0x2205, 0x2220, 0x2713]
DIGITS = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"]


def make(source, target, family, style, codes, tabular=False):
    font = TTFont(source)
    if tabular:
        for table in font["cmap"].tables:
            for i, name in enumerate(DIGITS):
                if 0x30 + i in table.cmap:
                    table.cmap[0x30 + i] = name + ".tf"
    options = subset.Options(layout_features=[], hinting=False, name_IDs=[0, 1, 2, 3, 4, 5, 6, 13, 14], recalc_timestamp=False)
    cutter = subset.Subsetter(options)
    cutter.populate(unicodes=codes)
    cutter.subset(font)
    for record in font["name"].names:
        text = {1: family, 2: "Regular", 3: f"{family} {style}", 4: f"{family} {style}", 6: f"{family}-{style}".replace(" ", "")}.get(record.nameID)
        if text:
            record.string = text
    font.save(target, reorderTables=True)
    widths = {font["hmtx"][font.getBestCmap()[0x30 + i]][0] for i in range(10)} if 0x30 in font.getBestCmap() else None
    missing = [hex(c) for c in codes if c not in font.getBestCmap()]
    print(target, "figure widths:", widths, "lacks:", missing)


overpass, bitter, dejavu = sys.argv[1:4]
for weight, style in ((400, "Regular"), (600, "SemiBold"), (700, "Bold")):
    make(f"{overpass}/{weight}{style}/Overpass_{weight}{style}.ttf", f"SheetText-{style}.ttf", "Sheet Text", style, LATIN, tabular=True)
make(f"{bitter}/700Bold/Bitter_700Bold.ttf", "SheetTitle-Bold.ttf", "Sheet Title", "Bold", LATIN)
make(f"{dejavu}/ttf/DejaVuSans.ttf", "SheetSigns-Regular.ttf", "Sheet Signs", "Regular", SIGNS)
