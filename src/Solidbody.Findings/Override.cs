namespace Solidbody.Findings;

/// <summary>What a person writes to go on although one finding stops.</summary>
/// <param name="Code">The finding's code.</param>
/// <param name="Place">The finding's place, word for word; null when only one finding has the code.</param>
/// <param name="Reason">Why they go on; printed on every sheet.</param>
public sealed record Override(string Code, string? Place, string Reason)
{
    public bool Means(Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return finding.Severity == Severity.Stops && finding.Code == Code && (Place is null || finding.Place == Place);
    }
}
