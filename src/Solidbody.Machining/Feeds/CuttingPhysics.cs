namespace Solidbody.Machining.Feeds;

/// <summary>The formulas between a cutter, its speed and the wood. They know no machine and no guitar.</summary>
public static class CuttingPhysics
{
    /// <summary>Chip load fz = F / (n·z): what one tooth takes.</summary>
    /// <param name="feed">F, mm/s; ≥ 0.</param>
    /// <param name="turns">n, turns a second; &gt; 0.</param>
    /// <param name="flutes">z ≥ 1.</param>
    /// <returns>mm a tooth.</returns>
    public static double ChipLoad(double feed, double turns, int flutes) => feed / (Positive(turns, nameof(turns)) * Flutes(flutes));

    /// <summary>Feed F = fz·n·z, mm/s.</summary>
    public static double Feed(double chipLoad, double turns, int flutes) => Positive(chipLoad, nameof(chipLoad)) * Positive(turns, nameof(turns)) * Flutes(flutes);

    /// <summary>Cutting speed at the circumference v = π·D·n, mm/s.</summary>
    /// <param name="diameter">D, mm; &gt; 0.</param>
    /// <param name="turns">n, turns a second; &gt; 0.</param>
    public static double CuttingSpeed(double diameter, double turns) => Math.PI * Positive(diameter, nameof(diameter)) * Positive(turns, nameof(turns));

    /// <summary>Power at the cutting edge P = kc·ae·ap·F / 1000.</summary>
    /// <param name="force">kc, specific cutting force, N/mm²; &gt; 0.</param>
    /// <param name="width">ae, width of the bite, mm; &gt; 0.</param>
    /// <param name="depth">ap, depth of the bite, mm; &gt; 0.</param>
    /// <param name="feed">F, mm/s; &gt; 0.</param>
    /// <returns>Watts. Derivation: force kc·(ae·ap·F/v) times speed v; N/mm² · mm³/s = N·mm/s = W/1000.</returns>
    public static double Power(double force, double width, double depth, double feed) =>
        Positive(force, nameof(force)) * Positive(width, nameof(width)) * Positive(depth, nameof(depth)) * Positive(feed, nameof(feed)) / 1000;

    private static double Positive(double value, string name) =>
        value > 0 && double.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(name, value, "Must be positive and finite.");

    private static int Flutes(int flutes) =>
        flutes >= 1 ? flutes : throw new ArgumentOutOfRangeException(nameof(flutes), flutes, "A cutter has at least one flute.");
}
