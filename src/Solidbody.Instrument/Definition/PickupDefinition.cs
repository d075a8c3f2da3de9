namespace Solidbody.Instrument;

/// <param name="Name">Such as <c>bridge pickup</c>.</param>
/// <param name="CentreX">From the nut.</param>
/// <param name="AlongX">Cavity.</param>
/// <param name="AlongY">Cavity.</param>
/// <param name="Depth">From the front.</param>
/// <param name="CornerRadius">Inside corners.</param>
/// <param name="Turn">Slant, radians, counter-clockwise seen from the front, right-handed: positive moves the treble end toward the nut.</param>
public sealed record PickupDefinition(string Name, double CentreX, double AlongX, double AlongY, double Depth, double CornerRadius, double Turn)
{
    /// <summary>First to last pole, on the long axis; null where there are none to see, or it is not known.</summary>
    public double? PoleSpread { get; init; }
    /// <summary>Deeper ends for its mounting legs; null when it has none.</summary>
    public PickupLegs? Legs { get; init; }
    /// <summary>Two screws into the wood; null when it hangs in a ring or a plate.</summary>
    public PickupScrews? Screws { get; init; }
}

/// <param name="Across">Over both legs, across the strings.</param>
/// <param name="Along">Of each, along the strings.</param>
/// <param name="Depth">From the front.</param>
public sealed record PickupLegs(double Across, double Along, double Depth);

/// <param name="Apart">Across the strings.</param>
/// <param name="Pilot">Hole.</param>
/// <param name="Depth">From the floor it stands on.</param>
public sealed record PickupScrews(double Apart, double Pilot, double Depth);
