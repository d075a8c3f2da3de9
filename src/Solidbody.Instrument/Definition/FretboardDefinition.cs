using System.Collections.Immutable;
using Solidbody.Materials;

namespace Solidbody.Instrument;

/// <summary>How the fretboard is prepared for its frets.</summary>
public enum FretCut { Slots, ScribedLines }

/// <summary>The board's end toward the bridge: square to the centre line, or along the last fret.</summary>
public enum BoardEndKind { Square, AlongLastFret }

public sealed record FretboardDefinition
{
    public required string Wood { get; init; }
    /// <summary>How it is sawn.</summary>
    public Grain Grain { get; init; } = Grain.Quarter;
    /// <summary>On the centre line.</summary>
    public required double Thickness { get; init; }
    /// <summary>Radius of the playing face at the nut, and at the last fret (the same for a plain radius).</summary>
    public required double RadiusAtNut { get; init; }
    public required double RadiusAtLastFret { get; init; }
    /// <summary>Board beyond the last fret.</summary>
    public required double BeyondLastFret { get; init; }
    public BoardEndKind End { get; init; } = BoardEndKind.Square;
    /// <summary>Board beyond the heel's end: it hangs over the body.</summary>
    public double Overhang { get; init; }
    /// <summary>Board outside the outer strings at the last fret and nut decide the taper: width at the board's end follows from the bridge spread unless given.</summary>
    public required double WidthAtEnd { get; init; }
    /// <summary>Slots the router saws, or shallow lines to saw by hand.</summary>
    public FretCut FretCut { get; init; } = FretCut.Slots;
    public required double SlotWidth { get; init; }
    public required double SlotDepth { get; init; }
    /// <summary>Of a fret's crown above the board, mm.</summary>
    public double FretHeight { get; init; } = 1.1;
    /// <summary>Slots end this far inside the board's edge, for a binding; null where they run out through it.</summary>
    public double? BlindSlotsInside { get; init; }
    public required DotsDefinition Dots { get; init; }
}

/// <param name="Frets">Single dots lie half way to the fret before; a number listed in <paramref name="Doubles"/> has two.</param>
public sealed record DotsDefinition(ImmutableArray<int> Frets, ImmutableArray<int> Doubles, double Diameter, double Depth, double DoubleSpacing);
