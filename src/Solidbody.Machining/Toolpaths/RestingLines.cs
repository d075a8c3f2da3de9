namespace Solidbody.Machining.Toolpaths;

/// <summary>Where a cutter rests on a field of samples, along whole lines of it.</summary>
internal sealed class RestingLines(SurfaceField field, CutterForm form)
{
    private readonly HeightPyramid pyramid = field.Pyramid(CutterStamp.ReachOf(form, field.Grid.Cell));

    /// <summary>Tip heights over the middles of the columns that lie between two places of a line along x, ends left out; −∞ where nothing carries.</summary>
    /// <param name="y">Within the field.</param>
    public List<(double X, double Z)> Between(double from, double to, double y)
    {
        var grid = field.Grid;
        var across = (y - grid.Y0) / grid.Cell - 0.5;
        var row = (int)Math.Floor(across);
        var first = (int)Math.Floor((from - grid.X0) / grid.Cell - 0.5) + 1;
        var tips = new float[Math.Max(0, (int)Math.Ceiling((to - grid.X0) / grid.Cell - 0.5) - first)];
        if (tips.Length > 0) LineKernel.Rest(pyramid, new(form, (float)grid.Cell, 0, (float)(across - row)), row, first, tips);
        return [.. tips.Select((z, i) => (grid.X(first + i), (double)z))];
    }
}
