using System.Collections.Immutable;
using Solidbody.Instrument.Balance;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Buying;
using Solidbody.Instrument.Necks;
using Solidbody.Instrument.Playing;
using Solidbody.Instrument.Seasons;

namespace Solidbody.Instrument;

/// <summary>What was worked out about how the instrument plays, holds and hangs: figures for tables and plots. What is not right among them is a finding too.</summary>
public sealed record Figures
{
    /// <summary>Of an instrument whose parts could not be drawn.</summary>
    public static Figures None { get; } = new();

    /// <summary>Least wood in the body between every two voids and to edge and faces, up to <see cref="Walls.WallFinder.Interest"/>; the thinnest first. Right-handed.</summary>
    public ImmutableArray<Wall> BodyWalls { get; init; } = [];

    /// <summary>What a bolt-on neck's screws hold; null without their length.</summary>
    public NeckScrewHold? NeckScrews { get; init; }
    /// <summary>Glue faces of a set neck, mm²; null for another.</summary>
    public double? TenonGlue { get; init; }
    /// <summary>Core and wings of a through-neck instrument; null for another.</summary>
    public CoreFigures? Core { get; init; }
    /// <summary>The scarf joint of an angled headstock; null without one.</summary>
    public ScarfJoint? Scarf { get; init; }
    /// <summary>The grain of an angled headstock in one piece; null without one.</summary>
    public HeadGrain? HeadGrain { get; init; }

    /// <summary>Each string at pitch, from the lowest; empty when the file does not describe the strings.</summary>
    public ImmutableArray<StringTension> Tension { get; init; } = [];
    /// <summary>How alike the strings feel; null without strings.</summary>
    public Feel? Feel { get; init; }
    /// <summary>What another tuning makes of the strings.</summary>
    public ImmutableArray<Retuning> Retunings { get; init; } = [];
    /// <summary>How the strings bend the neck; null without strings, or where a wood's stiffness is not known.</summary>
    public NeckBend? Bend { get; init; }

    /// <summary>Where every string runs, from the lowest.</summary>
    public ImmutableArray<StringPlace> StringPlaces { get; init; } = [];
    /// <summary>Where every fret lies, from the nut line.</summary>
    public ImmutableArray<FretPlace> FretPlaces { get; init; } = [];

    /// <summary>How the strings lie over frets and body.</summary>
    public StringHeights? Heights { get; init; }

    /// <summary>How the wood moves with the seasons; null without parts.</summary>
    public Movement? Movement { get; init; }

    /// <summary>How the hand comes at the highest frets, bass side and treble; empty without a body. Right-handed.</summary>
    public ImmutableArray<Reach> Reach { get; init; } = [];

    /// <summary>Cover plates to make from sheet: outline and screws. Right-handed.</summary>
    public ImmutableArray<CoverPlate> Covers { get; init; } = [];

    /// <summary>Strips of binding to buy and bend; empty without. Right-handed.</summary>
    public ImmutableArray<BodyBinding> Bindings { get; init; } = [];

    /// <summary>Each string's way over nut and saddle, from the lowest.</summary>
    public ImmutableArray<StringPath> Paths { get; init; } = [];
    /// <summary>Where the saddles stand and how true the frets are; null without strings.</summary>
    public IntonationTable? Intonation { get; init; }

    /// <summary>What it weighs and how it hangs; null where a wood's density is not known.</summary>
    public WeightBalance? Balance { get; init; }
    /// <summary>What wood to buy, what it costs and how much of it is waste; null without parts.</summary>
    public WoodBill? WoodBill { get; init; }
}
