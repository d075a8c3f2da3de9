using System.Collections.Immutable;
using Solidbody.Geometry;

namespace Solidbody.Packet.Pictures;

/// <summary>A deviation map made small enough for a picture without losing its worst cells, the share within limits, and the places to point at.</summary>
/// <param name="Worst">Per picture cell, the deviation of largest size in it; NaN where nothing is compared.</param>
/// <param name="Within">Share of the compared cells inside both limits, 0 to 1; 1 when none is compared.</param>
/// <param name="TooDeep">Share of them cut deeper than its limit.</param>
/// <param name="LeftOn">Share of them with more wood left than its limit.</param>
/// <param name="Places">Deepest cut and most wood left, then other places over a limit, well apart.</param>
internal sealed record DeviationSummary(int Columns, int Rows, float[] Worst, double Within, double TooDeep, double LeftOn, ImmutableArray<(Point2 At, double Value)> Places, Grid Grid, int Block)
{
    private const int MostPlaces = 5;
    private const double Apart = 30;

    /// <summary>The middle of a picture cell, part frame.</summary>
    public Point2 Centre(int column, int row) => new(Grid.X0 + (column + 0.5) * Block * Grid.Cell, Grid.Y0 + (row + 0.5) * Block * Grid.Cell);

    /// <summary>Takes blocks of cells together until the picture is at most <paramref name="widest"/> cells either way.</summary>
    public static DeviationSummary Of(Grid grid, ReadOnlySpan<float> values, double deepest, double leftover, int widest)
    {
        var block = Math.Max(1, (int)Math.Ceiling(Math.Max(grid.Columns, grid.Rows) / (double)widest));
        var (columns, rows) = ((grid.Columns + block - 1) / block, (grid.Rows + block - 1) / block);
        var worst = new float[columns * rows];
        Array.Fill(worst, float.NaN);
        long compared = 0, tooDeep = 0, leftOn = 0;
        for (var r = 0; r < grid.Rows; r++)
            for (var c = 0; c < grid.Columns; c++)
            {
                var value = values[r * grid.Columns + c];
                if (float.IsNaN(value)) continue;
                compared++;
                if (value < -deepest) tooDeep++;
                if (value > leftover) leftOn++;
                ref var kept = ref worst[r / block * columns + c / block];
                if (float.IsNaN(kept) || Math.Abs(value) > Math.Abs(kept)) kept = value;
            }
        double all = Math.Max(1, compared);
        var whole = new DeviationSummary(columns, rows, worst, 1 - (tooDeep + leftOn) / all, tooDeep / all, leftOn / all, [], grid, block);
        return whole with { Places = whole.Farthest(deepest, leftover) };
    }

    private ImmutableArray<(Point2, double)> Farthest(double deepest, double leftover)
    {
        var places = ImmutableArray.CreateBuilder<(Point2 At, double Value)>();
        void Add(Func<float, double> badness, double least)
        {
            var (best, at) = (least, -1);
            for (var i = 0; i < Worst.Length; i++)
                if (badness(Worst[i]) > best && places.All(p => p.At.DistanceTo(Centre(i % Columns, i / Columns)) > Apart))
                    (best, at) = (badness(Worst[i]), i);
            if (at >= 0) places.Add((Centre(at % Columns, at / Columns), Worst[at]));
        }
        Add(v => -v, 0);
        Add(v => v, 0);
        while (places.Count < MostPlaces)
        {
            var before = places.Count;
            Add(v => Math.Max(-v / deepest, v / leftover), 1);
            if (places.Count == before) break;
        }
        return places.ToImmutable();
    }
}
