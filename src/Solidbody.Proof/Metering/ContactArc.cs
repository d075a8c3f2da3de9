using System.Numerics;

namespace Solidbody.Proof.Metering;

/// <summary>The front half of a cutter's circumference in parts of half a degree, each of which met wood or not.</summary>
/// <remarks>A cutter of radius R that goes straight on meets a column w to the left of its path first at the angle asin(w/R) from straight ahead.</remarks>
internal sealed class ContactArc
{
    private const int Parts = 360;
    private readonly ulong[] met = new ulong[(Parts + 63) / 64];

    public void Clear() => Array.Clear(met);

    /// <summary>Wood w to the left of the path, and <paramref name="around"/> to either side of that.</summary>
    public void Meets(double w, double around, double radius)
    {
        var (first, end) = (PartAt((w - around) / radius), PartAt((w + around) / radius));
        for (var i = first; i < Math.Max(end, first + 1) && i < Parts; i++) met[i / 64] |= 1ul << (i % 64);
    }

    /// <summary>All that met wood, radians: 0 to π.</summary>
    public double Angle => met.Sum(BitOperations.PopCount) * Math.PI / Parts;

    private static int PartAt(double sine) => (int)Math.Round((Math.Asin(Math.Clamp(sine, -1, 1)) / Math.PI + 0.5) * Parts);
}
