namespace Solidbody.Machining.Feeds;

/// <summary>How one cutter is driven through one wood, and what that asks of cutter and machine in its heaviest bite.</summary>
public sealed record CutFeeds
{
    /// <summary>Turns a second, whole turns a minute.</summary>
    public required double SpindleSpeed { get; init; }
    /// <summary>mm/s, whole mm/min.</summary>
    public required double Feed { get; init; }
    /// <summary>mm/s, straight down or steeply down a ramp.</summary>
    public required double PlungeFeed { get; init; }
    /// <summary>Deepest bite of a pass, mm.</summary>
    public required double StepDown { get; init; }
    /// <summary>Between neighbouring roughing passes, mm.</summary>
    public required double StepOver { get; init; }
    /// <summary>The bite the figures below are for: a slot in roughing, the skin that is left in finishing.</summary>
    public required Bite Bite { get; init; }
    /// <summary>Feed a tooth, mm.</summary>
    public required double ChipLoad { get; init; }
    /// <summary>Thickest chip in that bite, mm; less than the chip load in a narrow one.</summary>
    public required double Chip { get; init; }
    /// <summary>At the edge, watts; with the upper end of the wood's cutting force, as the two below.</summary>
    public required double Power { get; init; }
    /// <summary>Greatest push sideways, N.</summary>
    public required double Force { get; init; }
    /// <summary>How far the tip gives way, mm.</summary>
    public required double Bending { get; init; }
}
