namespace Solidbody.Materials;

/// <summary>How a figure is known.</summary>
public enum Known
{
    /// <summary>Read in the source itself.</summary>
    Read,
    /// <summary>Read in a page that quotes the source.</summary>
    SecondHand,
    FromMemory,
    /// <summary>Worked out from other figures, each with its own source.</summary>
    WorkedOut,
    /// <summary>The person's own file says so.</summary>
    Given,
}

/// <summary>A figure with where it comes from.</summary>
/// <param name="Source">Publication and table, or what it was worked out from.</param>
public readonly record struct Sourced(double Value, Known Known, string Source)
{
    /// <summary>Source and how it is known, for a reader.</summary>
    public string Told => Known switch
    {
        Known.Read => Source,
        Known.SecondHand => $"{Source}, as re-tabulated",
        Known.FromMemory => $"{Source}, from memory",
        Known.WorkedOut => $"worked out from {Source}",
        _ => Source,
    };
}
