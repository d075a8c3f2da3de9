namespace Solidbody.Geometry;

/// <summary>How a part lies on the bed: turned over or not, turned about the spindle's axis, then shifted. The only bridge from part to work frame.</summary>
/// <param name="Up">The face that lies up. Back up is a half turn about the part's own X axis (its centre line): y and z change sign.</param>
/// <param name="Turn">Turn about Z after that, radians, counter-clockwise from above.</param>
/// <param name="Origin">Where the part's origin comes to lie, work frame.</param>
public readonly record struct Placement(Side Up, double Turn, WorkPoint Origin)
{
    /// <summary>+1 front up, −1 back up: the factor on y and z.</summary>
    private double Flip => Up == Side.Front ? 1 : -1;

    public WorkPoint ToWork(PartPoint p)
    {
        var (sin, cos) = Math.SinCos(Turn);
        var (x, y, z) = (p.X, Flip * p.Y, Flip * p.Z);
        return new(cos * x - sin * y + Origin.X, sin * x + cos * y + Origin.Y, z + Origin.Z);
    }

    public PartPoint ToPart(WorkPoint w)
    {
        var (sin, cos) = Math.SinCos(Turn);
        var (x, y) = (w.X - Origin.X, w.Y - Origin.Y);
        return new(cos * x + sin * y, Flip * (-sin * x + cos * y), Flip * (w.Z - Origin.Z));
    }

    /// <summary>A direction in the plan, part to work.</summary>
    public Point2 DirectionToWork(Point2 d)
    {
        var (sin, cos) = Math.SinCos(Turn);
        return new(cos * d.X - sin * Flip * d.Y, sin * d.X + cos * Flip * d.Y);
    }

    /// <summary>The 4×4 matrix part → work, row by row, 16 numbers; last row 0 0 0 1.</summary>
    public double[] ToMatrix()
    {
        var (sin, cos) = Math.SinCos(Turn);
        var f = Flip;
        return [cos, -sin * f, 0, Origin.X, sin, cos * f, 0, Origin.Y, 0, 0, f, Origin.Z, 0, 0, 0, 1];
    }

    /// <summary>Reads back what <see cref="ToMatrix"/> wrote.</summary>
    /// <exception cref="ArgumentException">Not 16 finite numbers, or not a level rigid placement within 1e-9.</exception>
    public static Placement FromMatrix(IReadOnlyList<double> m)
    {
        ArgumentNullException.ThrowIfNull(m);
        if (m.Count != 16 || m.Any(v => !double.IsFinite(v)))
            throw new ArgumentException("A placement is 16 finite numbers, row by row.", nameof(m));
        var up = m[10] > 0 ? Side.Front : Side.Back;
        var read = new Placement(up, Math.Atan2(m[4], m[0]), new(m[3], m[7], m[11]));
        var again = read.ToMatrix();
        for (var i = 0; i < 16; i++)
            if (Math.Abs(again[i] - m[i]) > 1e-9)
                throw new ArgumentException($"Entry {i} is {m[i]}, but a level placement without stretch or mirror has {again[i]}.", nameof(m));
        return read;
    }
}
