using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Where a cutter rests on a surface of which only a zone carries it.</summary>
/// <remarks>A field of samples finds the place, Newton steps on the closed form make it exact; the zone's edge is sampled on its own.
/// With true extremum f* and a sampled one at most c/√2 away, the field alone errs by κ c²/4 (κ the difference of curvatures); each
/// Newton step on a parabola through six values near it leaves an error of third order in its width.</remarks>
internal sealed class ZoneContact
{
    /// <summary>Cells across the ball's radius.</summary>
    private const double CellsByRadius = 20;
    private const double FinestCell = 0.1, CoarsestCell = 0.3;
    /// <summary>A rest on the surface this much above the edge's is off the edge, mm: at ball radius 3 the contact is then 0.008 mm inside.</summary>
    private const double OffEdge = 1e-5;

    private readonly IHeight surface;
    private readonly Region zone;
    private readonly Cutter cutter;
    private readonly CutterForm form;
    private readonly ZoneEdge edge;

    public ZoneContact(IHeight surface, Region zone, Cutter cutter)
    {
        (this.surface, this.zone, this.cutter) = (surface, zone, cutter);
        form = CutterForm.Of(cutter);
        var tip = form.Ball > 0 ? form.Ball : form.Radius;
        Field = new(surface, zone.Bounds.Grown(FinestCell), Math.Clamp(tip / CellsByRadius, FinestCell, CoarsestCell), zone);
        edge = new(surface, zone, cutter);
    }

    public SurfaceField Field { get; }

    /// <summary>Tip height over (x, y), −∞ when the zone is out of reach, and whether the zone's inside (not only its edge) carries it.</summary>
    public (double Z, bool Inside) At(double x, double y)
    {
        var (rough, cell) = Field.Rest(x, y, form);
        var inner = cell < 0 ? double.NegativeInfinity : Refined(x, y, rough, cell);
        // More than a cell's diagonal off the edge, the edge cannot carry the cutter better than the samples beside it did.
        if (cell >= 0 && Field.IsInner(cell)) return (inner, true);
        var rim = edge.Rest(x, y);
        return (Math.Max(inner, rim), inner > rim + OffEdge);
    }

    private double Refined(double x, double y, double rough, int cell)
    {
        var (u, v) = (Field.Grid.X(cell % Field.Grid.Columns), Field.Grid.Y(cell / Field.Grid.Columns));
        double F(double a, double b) => surface.Z(a, b) - cutter.Height(Math.Sqrt((a - x) * (a - x) + (b - y) * (b - y)));
        var best = F(u, v);
        if (double.IsNegativeInfinity(best)) return rough;   // the cell lies on the rim, within rounding of it
        var checkZone = !Field.IsInner(cell);
        for (var (step, turn) = (Field.Grid.Cell, 0); turn < 3; turn++, step /= 4)
        {
            var (l, r, d, up, corner) = (F(u - step, v), F(u + step, v), F(u, v - step), F(u, v + step), F(u + step, v + step));
            var (a, b) = (u, v);
            if (double.IsFinite(l + r + d + up + corner))
            {
                // The parabola through the six values; its top solves H δ = −g.
                var (gu, gv) = ((r - l) / 2, (up - d) / 2);
                var (huu, hvv, huv) = (l + r - 2 * best, d + up - 2 * best, corner - r - up + best);
                var det = huu * hvv - huv * huv;
                if (huu < 0 && det > 0)
                    (a, b) = (u + step * Math.Clamp((huv * gv - hvv * gu) / det, -1.5, 1.5), v + step * Math.Clamp((huv * gu - huu * gv) / det, -1.5, 1.5));
            }
            ReadOnlySpan<(double, double)> trials = [(a, b), (u - step, v), (u + step, v), (u, v - step), (u, v + step)];
            foreach (var (p, q) in trials)
            {
                var value = F(p, q);
                if (value > best && (!checkZone || zone.Contains(new(p, q)))) (best, u, v) = (value, p, q);
            }
        }
        return best;
    }
}
