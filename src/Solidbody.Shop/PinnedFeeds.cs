namespace Solidbody.Shop;

/// <summary>What a pass is for.</summary>
public enum Pass
{
    /// <summary>Takes the bulk and leaves a skin.</summary>
    Roughing,
    /// <summary>Takes the skin and leaves the part.</summary>
    Finishing,
}

/// <summary>Settings a person holds a cutter to: what is given is used as it is, and checked like everything else; what is null is worked out.</summary>
public sealed record PinnedFeeds
{
    /// <summary>Widest step-over over the diameter: clearing rings further apart leave wood in corners.</summary>
    public const double WidestStepOver = 0.45;

    /// <summary>Name of a cutter on the rack.</summary>
    public required string Cutter { get; init; }
    /// <summary>Key of the wood it holds for; null for all.</summary>
    public string? Wood { get; init; }
    /// <summary>The passes it holds for; null for all.</summary>
    public Pass? Pass { get; init; }
    /// <summary>Turns a second.</summary>
    public double? SpindleSpeed { get; init; }
    /// <summary>mm/s.</summary>
    public double? Feed { get; init; }
    /// <summary>Feed a tooth, mm.</summary>
    public double? ChipLoad { get; init; }
    /// <summary>mm; of a drill its peck.</summary>
    public double? StepDown { get; init; }
    /// <summary>mm.</summary>
    public double? StepOver { get; init; }

    /// <summary>How many of wood and passes it names: of two that hold, the more particular one rules.</summary>
    internal int Particular => (Wood is null ? 0 : 2) + (Pass is null ? 0 : 1);
}
