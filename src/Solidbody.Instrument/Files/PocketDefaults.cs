namespace Solidbody.Instrument.Files;

/// <summary>What a neck pocket is when the file says nothing of it, mm. Common practice, no source.</summary>
/// <param name="HeelCorner">A heel that exists: the pocket's corners follow it as far as cutters allow. Null leaves them to the cutter.</param>
sealed record PocketDefaults(double Length, double Depth, double? HeelCorner)
{
    /// <summary>Of our own heel of 19.05 in a pocket of 15.875.</summary>
    public const double GluePlaneAbove = 3.175;

    /// <summary>A cutter of 12 mm reaches in.</summary>
    const double UsualCorner = 6.5;

    public static PocketDefaults Own(double heelLength) => new(heelLength, 15.875, null);

    public double Corner(double clearance, double least, double most) => HeelCorner is { } heel ? Math.Clamp(heel + clearance, least, most) : UsualCorner;
}
