namespace Solidbody.Shop;

/// <summary>Which way round a part its finishing pass runs.</summary>
public enum OutlineDirection { Climb, Conventional, WithGrain }

/// <summary>What holds a part in its blank until the end.</summary>
public enum OutlineHold { Tabs, Skin }

/// <summary>How the shop cuts parts out of their blanks. Defaults: common practice, no source.</summary>
/// <param name="Skin">Wood left under the outline where a skin holds it, mm.</param>
/// <param name="TabThickness">mm.</param>
/// <param name="TabLength">mm; null takes the usual one for the part's thickness.</param>
public sealed record OutlineHabits(OutlineDirection Direction = OutlineDirection.Climb, OutlineHold Hold = OutlineHold.Tabs, double Skin = 0.5, double TabThickness = 3, double? TabLength = null);
