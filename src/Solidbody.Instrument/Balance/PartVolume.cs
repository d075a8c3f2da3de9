using Solidbody.Geometry;

namespace Solidbody.Instrument.Balance;

/// <summary>The wood of a finished part.</summary>
/// <param name="Volume">mm³.</param>
/// <param name="Centre">Of the wood, part frame.</param>
public sealed record PartVolume(double Volume, PartPoint Centre)
{
    /// <summary>A part's box in so many columns along and rows across, whatever its size: rows of a neck lie closer than its columns, as its sides run along it.</summary>
    private const int Along = 180, Across = 200;
    /// <summary>Bores made by hand are followed in steps of this, mm.</summary>
    private const double Step = 1;

    /// <summary>Adds up the part's columns. Fret slots, thinner than a column, are taken off by their own measures; bores made by hand where they run in wood.</summary>
    public static PartVolume Of(Part part) => Of(part, Along, Across);

    internal static PartVolume Of(Part part, int along, int across)
    {
        ArgumentNullException.ThrowIfNull(part);
        var shape = new PartShape(part with { Slots = [] });
        var sum = new Sum();
        AddColumns(ref sum, shape, along, across);
        foreach (var slot in part.Slots) if (!slot.Scribed) TakeSlot(ref sum, part, slot);
        foreach (var bore in part.HandBores) TakeBore(ref sum, shape, bore);
        return sum.Whole(part);
    }

    /// <summary>What of a part lies below a level, and what lies above it: two woods glued on that plane. Together they are the part. For a part without slots.</summary>
    public static (PartVolume Below, PartVolume Above) Split(Part part, double level)
    {
        ArgumentNullException.ThrowIfNull(part);
        var (shape, below, above) = (new PartShape(part), new Sum { To = level }, new Sum { From = level });
        AddColumns(ref below, shape, Along, Across);
        AddColumns(ref above, shape, Along, Across);
        foreach (var bore in part.HandBores)
        {
            TakeBore(ref below, shape, bore);
            TakeBore(ref above, shape, bore);
        }
        return (below.Whole(part), above.Whole(part));
    }

    /// <summary>The same wood higher up.</summary>
    public PartVolume Raised(double by) => this with { Centre = Centre with { Z = Centre.Z + by } };

    public static PartVolume Together(PartVolume a, PartVolume b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        var volume = a.Volume + b.Volume;
        double Mean(Func<PartPoint, double> of) => (a.Volume * of(a.Centre) + b.Volume * of(b.Centre)) / volume;
        return new(volume, new(Mean(p => p.X), Mean(p => p.Y), Mean(p => p.Z)));
    }

    /// <summary>The box is divided evenly, so that square ends are met exactly.</summary>
    private static void AddColumns(ref Sum sum, PartShape shape, int along, int across)
    {
        var box = shape.Part.Outline.Bounds;
        var (cell, step, columns) = (box.Width / along, box.Height / across, new DesignColumn[along]);
        for (var i = 0; i < across; i++)
        {
            var y = box.Y0 + (i + 0.5) * step;
            var row = new Grid(box.X0, y - cell / 2, cell, along, 1);
            shape.SampleRow(row, 0, columns);
            for (var c = 0; c < along; c++)
                if (!columns[c].IsEmpty) sum.AddColumn(row.X(c), y, columns[c], cell * step);
        }
    }

    /// <summary>The slot's length inside the outline, which is straight there, times its width and depth.</summary>
    private static void TakeSlot(ref Sum sum, Part part, Slot slot)
    {
        const int pieces = 64;
        var (run, piece) = (slot.B - slot.A, (slot.B - slot.A).Length / pieces);
        for (var i = 0; i < pieces; i++)
        {
            var p = slot.A + (i + 0.5) / pieces * run;
            if (part.Outline.Contains(p)) sum.Add(p.X, p.Y, part.Front.Z(p.X, p.Y) - slot.Depth / 2, -slot.Width * slot.Depth * piece);
        }
    }

    private static void TakeBore(ref Sum sum, PartShape shape, HandBore bore)
    {
        var (a, b) = (bore.A, bore.B);
        var length = Math.Sqrt((b.X - a.X) * (b.X - a.X) + (b.Y - a.Y) * (b.Y - a.Y) + (b.Z - a.Z) * (b.Z - a.Z));
        var steps = Math.Max(1, (int)Math.Ceiling(length / Step));
        for (var i = 0; i < steps; i++)
        {
            var t = (i + 0.5) / steps;
            var (x, y, z) = (a.X + t * (b.X - a.X), a.Y + t * (b.Y - a.Y), a.Z + t * (b.Z - a.Z));
            var column = shape.At(new(x, y));
            if (!column.IsEmpty && sum.Holds(z) && z > column.Bottom && z < column.Top) sum.Add(x, y, z, -Math.PI / 4 * bore.Diameter * bore.Diameter * length / steps);
        }
    }

    /// <summary>Volume and its moments, of what lies between two levels.</summary>
    private struct Sum()
    {
        public double Volume, X, Y, Z;
        public double From = double.NegativeInfinity, To = double.PositiveInfinity;

        public readonly bool Holds(double z) => z > From && z <= To;

        public void AddColumn(double x, double y, DesignColumn column, double area)
        {
            var (bottom, top) = (Math.Max(column.Bottom, From), Math.Min(column.Top, To));
            if (top > bottom) Add(x, y, (top + bottom) / 2, area * (top - bottom));
        }

        public void Add(double x, double y, double z, double volume)
        {
            Volume += volume;
            X += volume * x;
            Y += volume * y;
            Z += volume * z;
        }

        /// <summary>Where nothing is left, nothing weighs: its centre is the part's own.</summary>
        public readonly PartVolume Whole(Part part) => Volume > 0
            ? new(Volume, new(X / Volume, Y / Volume, Z / Volume))
            : new(0, new(part.Bounds.Plan.Centre.X, part.Bounds.Plan.Centre.Y, (part.Bounds.Z0 + part.Bounds.Z1) / 2));
    }
}
