using Solidbody.Findings;
using Solidbody.Instrument.Checks;

namespace Solidbody.Instrument.Buying;

/// <summary>What keeps the wood's cost from being worked out.</summary>
public static class CostFindings
{
    public static Finding NoPrice(string wood, string parts) =>
        new("COST-01", Severity.Notes, parts, $"{wood} without a price, other woods with one", "a price for every wood", Limits.OwnFile,
            "give `price_per_board_foot` or `price_per_m3` in its [[woods]]; until then the sum is not worked out.")
        { Title = "a wood's price is not known" };
}
