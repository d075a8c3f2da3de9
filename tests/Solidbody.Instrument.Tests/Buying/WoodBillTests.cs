using Solidbody.Instrument.Buying;
using Solidbody.Instrument.Files;

namespace Solidbody.Instrument.Tests.Buying;

public class WoodBillTests
{
    private static InstrumentDefinition Read(string more) => InstrumentFile.Read("units = \"mm\"\nname = \"a\"\nscale = 635\n" + more, "a.toml").Good;
    private static WoodBill Of(InstrumentDefinition d) => Designer.Design(d).Figures.WoodBill!;

    [Fact] // A board foot: a board 12 in × 12 in × 1 in (144 in³; 2359.737216 cm³).
    public void A_board_foot_is_a_foot_square_and_an_inch_thick() => Assert.Equal(304.8 * 304.8 * 25.4, WoodBill.BoardFoot, 1e-6);

    /// <summary>By hand, of the body's box L × W × 44.45 mm in two pieces: 2 · (L + 40) · (W/2 + 40) · 50.45, and a fifth more.</summary>
    [Fact]
    public void A_body_is_cut_from_two_boards_with_what_is_planed_and_sawn_off()
    {
        var design = Designer.Design(Read(""));
        var (box, line) = (design.Part("body").Bounds, design.Figures.WoodBill!.Lines.Single(l => l.Part == "body"));
        Assert.Equal(2 * (box.Length + 40) * (box.Width / 2 + 40) * (44.45 + 6) * 1.2, line.Bought, 1e-3);
        Assert.Equal(line.Bought / 2359737.216, line.BoardFeet, 1e-9);
        Assert.InRange(line.WasteShare, 0.4, 0.75);
    }

    [Fact] // 1 m³ at 3,000: the boards' own volume times it; 5 a board foot is the same board by the board foot.
    public void Cost_is_the_price_of_what_is_bought()
    {
        var bill = Of(Read("[[woods]]\nkey = \"red-alder\"\nprice_per_m3 = 3000\n[[woods]]\nkey = \"sugar-maple\"\nprice_per_board_foot = 5\n[[woods]]\nkey = \"indian-rosewood\"\nprice_per_board_foot = 0\n"));
        Assert.Equal(bill.Lines[0].Bought * 3e-6, bill.Lines[0].Cost!.Value, 1e-9);
        Assert.Equal(bill.Lines[1].BoardFeet * 5, bill.Lines[1].Cost!.Value, 1e-9);
        Assert.Equal(bill.Lines[0].Cost + bill.Lines[1].Cost, bill.Cost);
        Assert.Equal(1 - bill.Finished / bill.Bought, bill.WasteShare);
    }

    [Fact]
    public void A_price_missing_beside_others_is_found()
    {
        var priced = Read("[[woods]]\nkey = \"red-alder\"\nprice_per_m3 = 3000\n");
        Fires.OnlyWhenSpoilt("COST-01", Read(""), priced);
        Assert.Null(Of(priced).Cost);
    }
}
