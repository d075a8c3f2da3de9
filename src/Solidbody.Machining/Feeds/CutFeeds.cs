namespace Solidbody.Machining.Feeds;

/// <summary>How one cutter is driven through one wood.</summary>
/// <param name="SpindleSpeed">Turns a second, whole turns a minute.</param>
/// <param name="Feed">mm/s.</param>
/// <param name="PlungeFeed">mm/s, straight down or steeply down a ramp.</param>
/// <param name="StepDown">Deepest bite of a roughing pass, mm.</param>
/// <param name="StepOver">Between neighbouring roughing passes, mm.</param>
/// <param name="ChipLoad">What a tooth takes at that, mm.</param>
/// <param name="Power">At the edge in a full-width cut of <paramref name="StepDown"/>, watts.</param>
public sealed record CutFeeds(double SpindleSpeed, double Feed, double PlungeFeed, double StepDown, double StepOver, double ChipLoad, double Power);
