namespace Solidbody.Machining.Toolpaths;

/// <summary>How an outline's path runs round the part.</summary>
public enum OutlineWay
{
    /// <summary>Clockwise: the edges come in through the waste and press the wood on.</summary>
    Climb,
    /// <summary>Counter-clockwise.</summary>
    Conventional,
    /// <summary>Divided, each stretch the way its grain asks for.</summary>
    WithGrain,
}
