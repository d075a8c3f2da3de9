namespace Solidbody.Instrument;

/// <param name="Name">Such as <c>bridge pickup</c>.</param>
/// <param name="CentreX">From the nut.</param>
/// <param name="AlongX">Cavity.</param>
/// <param name="AlongY">Cavity.</param>
/// <param name="Depth">From the front.</param>
/// <param name="CornerRadius">Inside corners.</param>
/// <param name="Turn">Slant, radians: positive moves the treble end toward the bridge... counter-clockwise seen from the front, right-handed.</param>
public sealed record PickupDefinition(string Name, double CentreX, double AlongX, double AlongY, double Depth, double CornerRadius, double Turn);
