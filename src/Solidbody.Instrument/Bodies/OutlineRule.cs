namespace Solidbody.Instrument.Bodies;

/// <summary>One rule of the outline, as it stands for an outline.</summary>
/// <param name="Place">Of the finding.</param>
/// <param name="What">What is measured.</param>
/// <param name="Figure">mm or degrees.</param>
/// <param name="Limit">Least, or most.</param>
/// <param name="IsMost">Whether the limit is the most.</param>
/// <param name="Change">What to change, in words.</param>
/// <param name="IsLinear">Whether it is linear in the stations' measures.</param>
internal sealed record OutlineRule(string Place, string What, double Figure, double Limit, bool IsMost, string Change, bool IsLinear)
{
    /// <summary>What is to spare; negative or NaN when broken.</summary>
    public double Margin => IsMost ? Limit - Figure : Figure - Limit;
    /// <summary>Written so that NaN fails too.</summary>
    public bool Holds => Margin >= 0;
    public string LimitSaid => $"at {(IsMost ? "most" : "least")} {OutlineFindings.Say(Limit)}";
}
