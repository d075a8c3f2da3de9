using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Instrument.Balance;

namespace Solidbody.Instrument.Buying;

/// <summary>What wood to buy for the instrument.</summary>
/// <param name="Lines">One a part; of a body with a top one for each of its woods.</param>
public sealed record WoodBill(ImmutableArray<BoardLine> Lines)
{
    /// <summary>A board foot, mm³: 144 cubic inches by its definition, the inch 25.4 mm.</summary>
    public const double BoardFoot = 144 * 25.4 * 25.4 * 25.4;

    public double Bought => Lines.Sum(l => l.Bought);
    public double Finished => Lines.Sum(l => l.Finished);
    /// <summary>Share of the wood bought that does not stay in the instrument.</summary>
    public double WasteShare => 1 - Finished / Bought;
    /// <summary>In the person's money; null while a price is missing.</summary>
    public double? Cost => Lines.Aggregate((double?)0, (sum, l) => sum + l.Cost);

    /// <summary>A price missing beside others that are given.</summary>
    internal IEnumerable<Finding> Findings => Lines.Any(l => l.Cost is not null)
        ? Lines.Where(l => l.Cost is null).GroupBy(l => l.Wood).Select(g => CostFindings.NoPrice(g.Key, string.Join(", ", g.Select(l => l.Part))))
        : [];

    /// <param name="d">The definition.</param>
    /// <param name="woods">Of all its parts.</param>
    public static WoodBill Of(InstrumentDefinition d, ImmutableArray<PartWood> woods)
    {
        ArgumentNullException.ThrowIfNull(d);
        return new([.. woods.Select(w => Line(d, w))]);
    }

    private static BoardLine Line(InstrumentDefinition d, PartWood wood)
    {
        var (box, buying) = (wood.Box, d.Buying);
        var price = d.Woods.FirstOrDefault(w => w.Wood.Key == wood.Wood)?.Price;
        return new(wood.Name, wood.Wood, wood.Boards, box.Length + 2 * buying.Margin, box.Width / wood.Boards + 2 * buying.Margin, box.Thickness + buying.Planing, buying.Waste, wood.Volume.Volume, price);
    }
}

/// <summary>Boards for one part, or for one of its woods.</summary>
/// <param name="Part">Its name.</param>
/// <param name="Wood">Key.</param>
/// <param name="Pieces">Side by side.</param>
/// <param name="Length">Of a rough piece, mm.</param>
/// <param name="Width">Of a rough piece, mm.</param>
/// <param name="Thickness">Of a rough piece, mm.</param>
/// <param name="Waste">Bought beyond the pieces, a share of them.</param>
/// <param name="Finished">Wood in the finished part, mm³.</param>
/// <param name="Price">For a cubic metre of rough board; null when not given.</param>
public sealed record BoardLine(string Part, string Wood, int Pieces, double Length, double Width, double Thickness, double Waste, double Finished, double? Price)
{
    /// <summary>mm³ of rough board.</summary>
    public double Bought => Pieces * Length * Width * Thickness * (1 + Waste);
    /// <summary>The same in board feet.</summary>
    public double BoardFeet => Bought / WoodBill.BoardFoot;
    public double WasteShare => 1 - Finished / Bought;
    public double? Cost => Bought * 1e-9 * Price;
}
