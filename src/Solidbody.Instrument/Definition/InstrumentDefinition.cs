using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Materials;

namespace Solidbody.Instrument;

/// <summary>Which hand frets: a left-handed instrument is the mirrored design.</summary>
public enum Hand { Right, Left }

/// <summary>Everything the instrument file says, defaults filled in. Lengths mm, angles radians. Values are checked one by one by the reader; how they fit together is for the findings.</summary>
public sealed record InstrumentDefinition
{
    public required string Name { get; init; }
    /// <summary>Unit the person writes lengths in, and reads them in.</summary>
    public LengthUnit Unit { get; init; } = LengthUnit.Millimetre;
    public Hand Hand { get; init; } = Hand.Right;
    public int Strings { get; init; } = 6;
    /// <summary>Nut to the saddles' scale line, on the centre line.</summary>
    public required double Scale { get; init; }
    /// <summary>Null for a single scale.</summary>
    public FanDefinition? Fan { get; init; }
    public int Frets { get; init; } = 22;
    public required NutDefinition Nut { get; init; }
    public required FretboardDefinition Fretboard { get; init; }
    public required NeckDefinition Neck { get; init; }
    public required HeadstockDefinition Headstock { get; init; }
    public required BodyDefinition Body { get; init; }
    /// <summary>A neck that exists: nut, board and heel are its own as measured, and only the body is made. Null when the neck is made too.</summary>
    public BoughtNeck? BoughtNeck { get; init; }
    /// <summary>A body that exists: pocket and bridge are its own as measured, and only neck and fretboard are made. Null when the body is made too.</summary>
    public BoughtBody? BoughtBody { get; init; }
    public ActionDefinition Action { get; init; } = new();
    /// <summary>Null when the file does not describe the strings: what hangs on their pull is then not worked out.</summary>
    public TuningDefinition? Tuning { get; init; }
    public WeightsDefinition Weights { get; init; } = new();
    public HangingDefinition Hanging { get; init; } = new();
    /// <summary>The air it is built in, and will see.</summary>
    public SeasonsDefinition Seasons { get; init; } = new();
    public BuyingDefinition Buying { get; init; } = new();
    /// <summary>Woods whose figures or price the person gives.</summary>
    public ImmutableArray<OwnWood> Woods { get; init; } = [];
    /// <summary>Findings the person goes on against.</summary>
    public ImmutableArray<Override> Overrides { get; init; } = [];

    /// <summary>The wood of that key with its figures: the person's own, or the table's; null where neither knows it.</summary>
    public Wood? WoodOf(string key) => Woods.FirstOrDefault(w => w.Wood.Key == key)?.Wood ?? Materials.Woods.Find(key);
}
