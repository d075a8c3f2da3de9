using System.Globalization;
using Solidbody.Geometry;

namespace Solidbody.Drawings.Dxf;

/// <summary>An entity of a DXF: the groups from its type to the next one's.</summary>
internal readonly record struct DxfEntity(DxfGroups Groups, int From, int To, ReadingLog Log)
{
    public string Type => Groups.Value(From).ToString();
    public DrawingPlace At => Groups.At(From);
    public string Layer => Text(8) ?? "0";

    /// <summary>First value of a code, or null.</summary>
    public string? Text(int code)
    {
        for (var i = From + 1; i < To; i++) if (Groups[i].Code == code) return Groups.Value(i).ToString();
        return null;
    }

    public double Number(int code, double or)
    {
        for (var i = From + 1; i < To; i++) if (Groups[i].Code == code) return NumberAt(i);
        return or;
    }

    /// <summary>A number without which the entity means nothing.</summary>
    public double Number(int code)
    {
        if (Text(code) is not null) return Number(code, 0);
        Log.Refuse(At, $"{Type} has no group {code}", $"{Type} with all its numbers", "save the drawing again");
        return 0;
    }

    public int Flags(int code) => (int)Number(code, 0);
    public Point2 Point(int code) => new(Number(code), Number(code + 10));

    /// <summary>Every value of a code, in order.</summary>
    public double[] Numbers(int code)
    {
        var values = new List<double>();
        for (var i = From + 1; i < To; i++) if (Groups[i].Code == code) values.Add(NumberAt(i));
        return [.. values];
    }

    public double NumberAt(int i)
    {
        if (double.TryParse(Groups.Value(i), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value)) return value;
        Log.Refuse(Groups.At(i), $"group {Groups[i].Code} of {Type} is {ReadingLog.Quote(Groups.Value(i))}", "a number", "save the drawing again");
        return 0;
    }

    /// <summary>Whether the entity lies in the plan seen from above, from below (its x then runs the other way), or in neither, which is refused.</summary>
    /// <returns>The map from the entity's own coordinates to the drawing's; null when it lies in another plane.</returns>
    /// <remarks>DXF's arbitrary axis rule: for the direction (0, 0, −1) the own x axis is (−1, 0, 0) and the own y axis (0, 1, 0).</remarks>
    public Affine? Plane()
    {
        var (x, y, z) = (Number(210, 0), Number(220, 0), Number(230, 1));
        if (Math.Abs(x) <= Tolerances.Geometry && Math.Abs(y) <= Tolerances.Geometry && Math.Abs(z) > Tolerances.Geometry) return z > 0 ? Affine.Identity : Affine.Scale(-1, 1);
        Log.Refuse(At, $"{Type} does not lie in the plan", "a drawing in one plan, seen from above", "draw it flat");
        return null;
    }
}
