using System.Globalization;
using System.Text;
using Solidbody.Geometry;

namespace Solidbody.Programs.Writing;

/// <summary>The points a program's numbers can say: whole steps of the last decimal. Everything is rounded to it once, before any word is written.</summary>
internal readonly record struct OutputGrid
{
    /// <summary>Coordinates stay below this, mm: larger than any router, and short enough for a line.</summary>
    public const double Reach = 10_000;

    public OutputGrid(ProgramStyle style)
    {
        Decimals = style.Inches ? style.Decimals + 1 : style.Decimals;
        _stepsPerUnit = Math.Pow(10, Decimals);
        _unit = style.Inches ? ArcRule.MillimetresPerInch : 1;
    }

    private readonly double _stepsPerUnit;
    private readonly double _unit;
    public int Decimals { get; }
    /// <summary>One step, mm.</summary>
    public double Step => _unit / _stepsPerUnit;

    public long Steps(double mm) => (long)Math.Round(mm / _unit * _stepsPerUnit);
    public double Millimetres(long steps) => steps / _stepsPerUnit * _unit;
    public GridPoint Nearest(WorkPoint p) => new(Steps(p.X), Steps(p.Y), Steps(p.Z));

    /// <summary>The shortest text of a number given in units of its last decimal: no trailing zeros, no exponent, never −0.</summary>
    /// <param name="terse">Whether the zero before a point is left out too.</param>
    public static void Append(StringBuilder text, long steps, int decimals, bool terse)
    {
        if (steps < 0) text.Append('-');
        var size = (ulong)Math.Abs(steps);
        var ten = 1UL;
        for (var i = 0; i < decimals; i++) ten *= 10;
        var fraction = size % ten;
        if (!terse || size >= ten || fraction == 0) text.Append(CultureInfo.InvariantCulture, $"{size / ten}");
        if (fraction == 0) return;
        text.Append('.');
        while (fraction != 0)
        {
            ten /= 10;
            text.Append((char)('0' + fraction / ten));
            fraction %= ten;
        }
    }
}

/// <summary>A point of the output grid, in steps.</summary>
internal readonly record struct GridPoint(long X, long Y, long Z)
{
    public bool SamePlan(GridPoint b) => X == b.X && Y == b.Y;
}
