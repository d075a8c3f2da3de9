namespace Solidbody.Instrument.Necks;

/// <summary>The strings as straight lines over the instrument, numbered from 0, the lowest, on the bass side; right-handed plan, mm.</summary>
/// <param name="Count">Strings n.</param>
/// <param name="Scale">Nut to scale line.</param>
/// <param name="NutSpread">First to last at the nut.</param>
/// <param name="BridgeSpread">First to last at the scale line.</param>
public sealed record Strings(int Count, double Scale, double NutSpread, double BridgeSpread)
{
    public static Strings Of(InstrumentDefinition d) => new(d.Strings, d.Scale, d.Nut.StringSpread, d.Body.Bridge.StringSpread);

    private double Share(int i) => Count == 1 ? 0 : (double)i / (Count - 1) - 0.5;
    public double NutY(int i) => NutSpread * Share(i);
    public double BridgeY(int i) => BridgeSpread * Share(i);
    /// <summary>y of a string at x; its straight run goes on beyond the nut.</summary>
    public double Y(int i, double x) => NutY(i) + (BridgeY(i) - NutY(i)) * x / Scale;
    /// <summary>Spread between the outer strings at x.</summary>
    public double Spread(double x) => NutSpread + (BridgeSpread - NutSpread) * x / Scale;
    /// <summary>Drift of a string per mm beyond the nut (u = −x).</summary>
    public double Drift(int i) => -(BridgeY(i) - NutY(i)) / Scale;
}
