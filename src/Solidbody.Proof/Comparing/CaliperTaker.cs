using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Programs;
using Solidbody.Proof.Cutting;

namespace Solidbody.Proof.Comparing;

/// <summary>Takes a part's measures on the cut wood. Points are cut exactly; along a caliper's line one row of fine columns of its own is cut,
/// so that a measure does not depend on the part's grid.</summary>
/// <param name="programs">The part's programs, in order.</param>
/// <param name="blank">Its blank, part frame.</param>
internal sealed class CaliperTaker(IReadOnlyList<CutProgram> programs, Box3 blank)
{
    /// <summary>Side of a column on a caliper's line, mm: a wall is found within half of it.</summary>
    private const double Fine = 0.005;

    /// <summary>The measure as taken; NaN when the caliper finds nothing to close on within its search.</summary>
    public double Take(Caliper caliper) => caliper switch
    {
        Caliper.Thickness c => Height(c.At, Side.Front) + Height(c.At, Side.Back),
        Caliper.DepthFromTop c => Math.Abs(Height(c.At, Side.Front) - c.Level),
        Caliper.DepthFromBottom c => Math.Abs(-Height(c.At, Side.Back) - c.Level),
        Caliper.Fall c => Height(c.High, Side.Front) - Height(c.Low, Side.Front),
        Caliper.Outside c => Run(c.Middle, c.Along, 0, c.Search, c.Z, wood: true).Length,
        Caliper.Inside c => Run(c.Middle, c.Along, 0, c.Search, c.Z, wood: false).Length,
        Caliper.InsideCentre c => Run(c.Origin, c.Along, c.At, c.Search, c.Z, wood: false).Middle,
        Caliper.InsideEnd c => Run(c.Origin, c.Along, c.At, c.Search, c.Z, wood: false, openBehind: true) is var (length, centre) ? centre + length / 2 : double.NaN,
        _ => throw new ArgumentOutOfRangeException(nameof(caliper), caliper, "There is no such caliper."),
    };

    /// <summary>The measure against what the file says, 0 when the caliper finds nothing to close on.</summary>
    public (MeasureResult Result, bool Found) Take(Measure measure)
    {
        var taken = Take(measure.Caliper);
        var found = double.IsFinite(taken);
        return (new(measure.Name, measure.Expected, found ? Math.Round(taken, 4) : 0, measure.Tolerance), found);
    }

    /// <summary>Width of the room round a point along a direction, and how far its middle lies from the point; NaN when there is none.</summary>
    public (double Width, double Off) Room(Point2 p, Point2 along, double search, double z) => Run(p, along, 0, search, z, wood: false);

    /// <summary>Height of a face as its own side sees it: z for the front, −z for the back.</summary>
    private double Height(Point2 p, Side side) => programs.Where(program => program.Up == side)
        .Aggregate(side == Side.Front ? blank.Z1 : -blank.Z0, (height, program) => Math.Min(height, program.At(p).Height));

    /// <summary>The run of wood, or without wood, round <c>origin + at·along</c>: its length, and its middle's distance from the origin.</summary>
    /// <param name="openBehind">Whether the run may go on to the search's near end.</param>
    private (double Length, double Middle) Run(Point2 origin, Point2 along, double at, double search, double z, bool wood, bool openBehind = false)
    {
        var cells = 2 * (int)Math.Ceiling(search / Fine) + 1;
        var row = new ColumnField(new Grid(at - cells * Fine / 2, -Fine / 2, Fine, cells, 1), blank.Z0, blank.Z1);
        foreach (var program in programs) LineCutter.Cut(row, program, origin, along.Unit);
        bool Same(int cell) => (row.Top(cell, 0) > z && row.Bottom(cell, 0) < z) == wood;
        var middle = cells / 2;
        if (!Same(middle)) return (double.NaN, double.NaN);
        var (first, last) = (middle, middle);
        while (first > 0 && Same(first - 1)) first--;
        while (last < cells - 1 && Same(last + 1)) last++;
        if ((first == 0 && !openBehind) || last == cells - 1) return (double.NaN, double.NaN);
        return ((last - first + 1) * Fine, at + ((first + last) / 2.0 - middle) * Fine);
    }
}
