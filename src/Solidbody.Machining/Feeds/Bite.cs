namespace Solidbody.Machining.Feeds;

/// <summary>The wood a cutter takes at once as it goes along.</summary>
/// <param name="Depth">ap, along its axis, mm; &gt; 0.</param>
/// <param name="Width">ae, across the feed, mm; &gt; 0, at most its diameter: a slot.</param>
public readonly record struct Bite(double Depth, double Width);
