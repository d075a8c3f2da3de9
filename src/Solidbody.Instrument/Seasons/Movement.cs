using System.Collections.Immutable;
using Solidbody.Instrument.Balance;
using Solidbody.Instrument.Bodies;
using Solidbody.Materials;

namespace Solidbody.Instrument.Seasons;

/// <summary>How the instrument's wood moves between the driest and the wettest air it will see.</summary>
/// <param name="Built">Moisture of the wood while it is built, per cent.</param>
/// <param name="Driest">In the driest air.</param>
/// <param name="Wettest">In the wettest air.</param>
/// <param name="Widths">Every width that matters, and how far it moves.</param>
public sealed record Movement(double Built, double Driest, double Wettest, ImmutableArray<MovingWidth> Widths)
{
    /// <summary>A bolt-on neck's heel in its pocket; null where there is none, or where glue fills it.</summary>
    public JointPlay? Pocket { get; init; }
    /// <summary>The cover of the controls in its ledge, along its long side and across it.</summary>
    public ImmutableArray<JointPlay> Cover { get; init; } = [];
    /// <summary>How far a fret's end stands out of the board at either side in the driest air, mm: half of what the board's end shrinks; null where the board's wood has no figures.</summary>
    public double? FretEnds { get; init; }
    /// <summary>Most the scale line can change along the grain over the whole range, mm: neglected everywhere else, for fret places keep their proportion.</summary>
    public double ScaleAtMost { get; init; }

    /// <summary>A body with a top of another wood, which moves otherwise; null without one.</summary>
    public TopCup? Top { get; init; }

    /// <param name="d">The definition.</param>
    /// <param name="woods">Of all its parts.</param>
    public static Movement Of(InstrumentDefinition d, ImmutableArray<PartWood> woods)
    {
        ArgumentNullException.ThrowIfNull(d);
        var air = new Air(d.Seasons.Built.Moisture, d.Seasons.Driest.Moisture, d.Seasons.Wettest.Moisture);
        var (body, neck, board) = (Sawn(d, d.Body.Wood, d.Body.Grain), Sawn(d, d.Neck.Wood, d.Neck.Grain), Sawn(d, d.Fretboard.Wood, d.Fretboard.Grain));
        var joint = NeckJoint.Of(d);
        var heel = air.Moves("neck at the heel", neck, 2 * Tenon.HalfWidth(d) ?? joint.HeelWidth);
        var pocket = air.Moves("neck pocket", body, 2 * BodyMaker.PocketHalfWidth(d, joint.HeelEnd));
        var boardEnd = air.Moves("fretboard at its end", board, d.Fretboard.WidthAtEnd);
        var (hasNeck, hasBoard) = (woods.Any(w => w.Part.Name == "neck"), woods.Any(w => w.Name == "fretboard"));
        ImmutableArray<MovingWidth> bodies = [.. woods.Where(w => w.Part.Name == "body").Select(w => air.Moves($"{w.Name}, widest", Sawn(d, w.Wood, w.Grain), w.Box.Width))];
        return new(air.Built, air.Driest, air.Wettest,
        [
            .. bodies,
            .. d.Neck.Core is { } core ? Glued(d, core, air) : [],
            .. hasNeck ? [air.Moves("neck at the nut", neck, d.Nut.Width)] : Array.Empty<MovingWidth>(),
            .. hasNeck && d.Neck.Core is null ? [heel, pocket] : Array.Empty<MovingWidth>(),
            .. hasBoard ? [air.Moves("fretboard at the nut", board, d.Nut.Width), boardEnd] : Array.Empty<MovingWidth>(),
        ])
        {
            Pocket = hasNeck && d.Neck.Joint == JointKind.BoltOn ? JointPlay.Of("neck in its pocket", heel, pocket) : null,
            Cover = d.Body.Controls is { LedgeWidth: > 0, LedgeDepth: > 0 } c
                ? [InLedge(air, body, c, "along", c.Length, Math.Sin(c.Angle)), InLedge(air, body, c, "across", c.Width, Math.Cos(c.Angle))]
                : [],
            Top = d.Body.Top is { } top && bodies.Length == 2 ? TopCup.Of(d, top, bodies[0], bodies[1]) : null,
            FretEnds = hasBoard && boardEnd.Dry is { } change ? Math.Max(0, -change / 2) : null,
            ScaleAtMost = Moisture.MostChangeAlong(d.Scale, air.Driest, air.Wettest),
        };
    }

    /// <summary>Beside their widths: front to back core and wings move apart, which shows as a step at the glue lines.</summary>
    private static IEnumerable<MovingWidth> Glued(InstrumentDefinition d, CoreDefinition core, Air air)
    {
        var (neck, wings) = (Sawn(d, d.Neck.Wood, d.Neck.Grain), Sawn(d, d.Body.Wood, d.Body.Grain));
        yield return air.Moves("core, glue line to glue line", neck, core.Width);
        yield return air.Moves("core, front to back", neck.Turned, d.Body.Thickness);
        yield return air.Moves("wings, front to back", wings.Turned, d.Body.Thickness);
    }

    /// <summary>A cover that does not move itself (plastic, metal) in a ledge that does.</summary>
    /// <param name="across">Share of the direction that lies across the grain: what lies apart in it moves by the share squared.</param>
    private static JointPlay InLedge(Air air, SawnWood body, ControlsDefinition c, string way, double room, double across)
    {
        var (what, between) = ($"cover in its ledge, {way}", room + 2 * c.LedgeWidth);
        var ledge = air.Moves(what, body, between);
        var plate = new MovingWidth(what, "", between - 2 * (c.Cover?.Gap ?? SeasonLimits.CoverGap), 0, 0);
        return JointPlay.Of(what, plate, ledge with { Dry = ledge.Dry * across * across, Wet = ledge.Wet * across * across });
    }

    private static SawnWood Sawn(InstrumentDefinition d, string wood, Grain grain) => new(d.WoodOf(wood), wood, grain);

    private sealed record SawnWood(Wood? Wood, string Key, Grain Grain)
    {
        /// <summary>Through its thickness a flatsawn board moves as a quartersawn one does across.</summary>
        public SawnWood Turned => this with { Grain = Grain == Grain.Flat ? Grain.Quarter : Grain.Flat };
    }

    private sealed record Air(double Built, double Driest, double Wettest)
    {
        public MovingWidth Moves(string what, SawnWood cut, double width) => new(what, cut.Key, width, Change(cut, width, Driest), Change(cut, width, Wettest));
        private double? Change(SawnWood cut, double width, double to) => cut.Wood is { } wood ? Moisture.Change(wood, cut.Grain, width, Built, to) : null;
    }
}

/// <summary>A width across the grain.</summary>
/// <param name="What">For people.</param>
/// <param name="Wood">Key.</param>
/// <param name="Width">As built, mm.</param>
/// <param name="Dry">Change to the driest air, mm; negative shrinks; null where the wood has no figures.</param>
/// <param name="Wet">Change to the wettest air, mm.</param>
public sealed record MovingWidth(string What, string Wood, double Width, double? Dry, double? Wet);

/// <summary>Play of something in its seat, both sides together, mm; negative jams. Null where a wood has no figures.</summary>
public sealed record JointPlay(string What, double Built, double? Driest, double? Wettest)
{
    public static JointPlay Of(string what, MovingWidth inner, MovingWidth seat)
    {
        ArgumentNullException.ThrowIfNull(inner);
        ArgumentNullException.ThrowIfNull(seat);
        var built = seat.Width - inner.Width;
        return new(what, built, built + seat.Dry - inner.Dry, built + seat.Wet - inner.Wet);
    }

    /// <summary>The season that leaves this play.</summary>
    public string Season(double play) => play == Driest ? "driest" : "wettest";
    public double? Least => Driest is { } d && Wettest is { } w ? Math.Min(d, w) : null;
    public double? Most => Driest is { } d && Wettest is { } w ? Math.Max(d, w) : null;
}
