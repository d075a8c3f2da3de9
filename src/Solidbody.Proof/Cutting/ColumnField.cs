using System.Numerics;
using Solidbody.Geometry;

namespace Solidbody.Proof;

/// <summary>Wood as columns over a grid in a part's frame: each has an upper and a lower face, or nothing is left of it. mm, single precision (4e-6 mm at 50 mm).</summary>
/// <remarks>A three-axis router only lowers the surface that lies up, so a part cut from both faces is two surfaces. The lower one is kept
/// upside down, so that cutting either is the same minimum.</remarks>
public sealed class ColumnField
{
    private readonly float[] upper, underside;
    private readonly double bottom, top;

    /// <param name="grid">Its columns, part frame.</param>
    /// <param name="bottom">Lower face of the uncut blank, part frame.</param>
    /// <param name="top">Upper face of the uncut blank, part frame.</param>
    public ColumnField(Grid grid, double bottom, double top)
    {
        Grid = grid;
        (this.bottom, this.top) = (bottom, top);
        // A row has room for one vector beyond its columns, so that runs need no mask; no wood stands there.
        Stride = grid.Columns + Vector<float>.Count - 1;
        upper = new float[Stride * grid.Rows];
        underside = new float[Stride * grid.Rows];
        Array.Fill(upper, float.NegativeInfinity);
        Array.Fill(underside, float.NegativeInfinity);
        for (var row = 0; row < grid.Rows; row++)
        {
            upper.AsSpan(row * Stride, grid.Columns).Fill((float)top);
            underside.AsSpan(row * Stride, grid.Columns).Fill((float)-bottom);
        }
    }

    public Grid Grid { get; }
    internal int Stride { get; }

    /// <summary>Heights as a side sees them: z for the front, −z for the back.</summary>
    internal float[] Surface(Side side) => side == Side.Front ? upper : underside;

    /// <summary>Height of the uncut blank's face on a side, as that side sees it.</summary>
    internal double Highest(Side side) => side == Side.Front ? top : -bottom;

    /// <summary>Upper face, part frame.</summary>
    public float Top(int column, int row) => upper[row * Stride + column];
    /// <summary>Lower face, part frame.</summary>
    public float Bottom(int column, int row) => -underside[row * Stride + column];
    /// <summary>Whether nothing is left of the column.</summary>
    public bool IsEmpty(int column, int row) => !(Top(column, row) > Bottom(column, row));

    /// <summary>Wood left, mm³: what the columns hold.</summary>
    public double Volume
    {
        get
        {
            var sum = 0.0;
            for (var row = 0; row < Grid.Rows; row++)
                for (var column = 0; column < Grid.Columns; column++)
                    sum += Math.Max(0, (double)Top(column, row) - Bottom(column, row));
            return sum * Grid.Cell * Grid.Cell;
        }
    }
}
