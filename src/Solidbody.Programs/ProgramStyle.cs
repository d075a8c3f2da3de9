using Solidbody.Geometry;

namespace Solidbody.Programs;

/// <summary>The habits of one controller: which words it takes and how it wants numbers written.</summary>
public sealed record ProgramStyle
{
    /// <summary>Decimals of coordinates in millimetres, 2 to 4; inch programs get one more.</summary>
    public int Decimals { get; init; } = 3;
    /// <summary>Whether the program is written in inches (G20) instead of millimetres (G21).</summary>
    public bool Inches { get; init; }
    /// <summary>Whether every block carries an N word.</summary>
    public bool LineNumbers { get; init; }
    /// <summary>Whether comments are written; some controllers stumble over them.</summary>
    public bool Comments { get; init; } = true;
    /// <summary>Whether the controller takes G2 and G3; otherwise arcs become chords within <see cref="Tolerances.Flattening"/>.</summary>
    public bool Arcs { get; init; } = true;
    /// <summary>The cutter's place in the changer; null where the cutter is changed by hand before the program.</summary>
    public int? ToolNumber { get; init; }
    /// <summary>Whether the cutter's length is taken from the controller's table by G43 after it is fetched; only with a changer.</summary>
    public bool LengthOffsets { get; init; }
    /// <summary>Whether the controller takes drilling cycles (G81, G83); otherwise drilling is written move by move.</summary>
    public bool DrillingCycles { get; init; }
    /// <summary>The M word that turns the chip air on, 7 or 8; M9 turns it off. Null where there is none.</summary>
    public int? AirWord { get; init; }
    /// <summary>Whether blanks between words and zeros before a point are left out: a sixth less text, harder to read.</summary>
    public bool Terse { get; init; }
    /// <summary>Arcs smaller than this are written as chords, mm; at least ten grid steps, so that rounding cannot turn an arc round.</summary>
    public double LeastArcRadius { get; init; } = 0.1;
    /// <summary>Arcs larger than this are written as chords, mm; below 10 000, so that a block stays within its line.</summary>
    public double MostArcRadius { get; init; } = 5000;
    /// <summary>Wait for the spindle to reach its speed, whole seconds, 1 to 60. 3 s: common practice, no source.</summary>
    public int SpindleDwellSeconds { get; init; } = 3;

    /// <exception cref="ArgumentOutOfRangeException">A habit lies outside the range its own line states.</exception>
    internal void Check()
    {
        if (Decimals is < 2 or > 4)
            throw new ArgumentOutOfRangeException(nameof(Decimals), Decimals, "Coordinates are written with 2 to 4 decimals of a millimetre.");
        if (ToolNumber is < 0 or > 9999)
            throw new ArgumentOutOfRangeException(nameof(ToolNumber), ToolNumber, "A tool number lies in 0 to 9999.");
        if (LengthOffsets && ToolNumber is null)
            throw new ArgumentOutOfRangeException(nameof(LengthOffsets), LengthOffsets, "A length offset needs the number of the cutter that was fetched.");
        if (AirWord is not (null or 7 or 8))
            throw new ArgumentOutOfRangeException(nameof(AirWord), AirWord, "Chip air is turned on by M7 or M8.");
        var least = 10 * Math.Pow(10, -Decimals);
        if (!(LeastArcRadius >= least))
            throw new ArgumentOutOfRangeException(nameof(LeastArcRadius), LeastArcRadius, $"The least arc radius is at least {least} mm, ten grid steps.");
        if (!(MostArcRadius >= LeastArcRadius && MostArcRadius < 10_000))
            throw new ArgumentOutOfRangeException(nameof(MostArcRadius), MostArcRadius, "The greatest arc radius is at least the least one and below 10 000 mm.");
        if (SpindleDwellSeconds is < 1 or > 60)
            throw new ArgumentOutOfRangeException(nameof(SpindleDwellSeconds), SpindleDwellSeconds, "The dwell after the spindle's start lies in 1 to 60 s.");
    }
}
