namespace Solidbody.Instrument;

/// <summary>Where frets stand and how they sound in twelve-tone equal temperament.</summary>
public static class FretTable
{
    /// <summary>Distance from the nut to a fret.</summary>
    /// <param name="scale">Scale length L, mm.</param>
    /// <param name="fret">Fret number n, from 0 (the nut); fractions lie between frets.</param>
    /// <returns>d = L (1 − 2^(−n/12)), mm.</returns>
    public static double Position(double scale, double fret) => scale * (1 - Math.Pow(2, -fret / 12));

    /// <summary>Distance along the string from one fret to the next, mm.</summary>
    public static double Gap(double scale, int fret) => Position(scale, fret) - Position(scale, fret - 1);

    /// <summary>Frequency of a note, Hz: A4 · 2^((m − 69)/12), m = 69 being A4. ISO 16:1975 fixes A4 at 440 Hz.</summary>
    public static double Pitch(int note, double a4 = 440) => a4 * Math.Pow(2, (note - 69) / 12.0);
}
