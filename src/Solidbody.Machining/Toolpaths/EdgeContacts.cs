using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>An edge's surface as rails along it, each at one distance inside the edge, and where a ball that touches them stands.</summary>
internal sealed class EdgeContacts
{
    /// <summary>Step for the face's slope, mm.</summary>
    private const double Probe = 0.01;

    private readonly EdgeStretch stretch;
    private readonly EdgeForm form;
    private readonly IHeight face;
    private readonly Point2[] inward;
    private readonly double steepest;

    public EdgeContacts(EdgeStretch stretch, EdgeForm form, IHeight face)
    {
        (this.stretch, this.form, this.face) = (stretch, form, face);
        inward = EdgeStretch.Mitres(stretch);
        steepest = stretch.Path.Max(p => SlopeAt(p).Length);
    }

    /// <summary>Tips of the ball, pass by pass from the face down the side, each run backwards along the edge.</summary>
    /// <param name="ball">A ball-end.</param>
    /// <param name="scallop">Greatest ridge, mm.</param>
    public List<WorkPoint[]> Tips(Cutter ball, double scallop)
    {
        var leans = Contacts(ball.Radius, scallop).ToList();
        var rails = leans.Select(c => Rail(c.Inside)).ToList();
        // The face behind the edge carries the ball too.
        rails.Add(Rail(form.Width + ball.Radius / 2));
        rails.Add(Rail(form.Width + ball.Radius));
        return [.. leans.Select((c, k) => Tips(rails, k, c.Lean, ball))];
    }

    /// <summary>Where the passes touch: distance inside the edge, and the lean of the form there (0 on the face, π/2 on an upright side).</summary>
    /// <remarks>Over a face that falls toward the edge with slope m a pass lies further from the next by up to √(1 + m + m²) on a rounded edge (its contact angles are those of a sheared circle), and by
    /// √((1 + (t + m)²) / (1 + t²)) ≤ 1 + m on a chamfer of slope t; ridges go with the square.</remarks>
    private IEnumerable<(double Inside, double Lean)> Contacts(double ball, double scallop)
    {
        var m = steepest;
        switch (form)
        {
            case EdgeForm.Rounded(var r):
                var n = (int)Math.Ceiling(Math.PI / 2 / Scallop.AngleAround(r, ball, scallop / (1 + m + m * m)));
                for (var i = 1; i <= n; i++) yield return (r - r * Math.Sin(Math.PI / 2 * i / n), Math.PI / 2 * i / n);
                break;
            case EdgeForm.Chamfered(var w, var angle):
                var steps = (int)Math.Ceiling(w / Math.Cos(angle) * (1 + m) / Scallop.Spacing(ball, scallop));
                for (var i = 0; i <= steps; i++) yield return (w - w * i / steps, angle);
                break;
        }
    }

    private WorkPoint[] Rail(double inside) => [.. stretch.Path.Select((p, i) =>
    {
        var at = p + inside * inward[i];
        return new WorkPoint(at.X, at.Y, face.Z(at.X, at.Y) - form.TakenAt(Math.Max(0, inside)));
    })];

    private WorkPoint[] Tips(List<WorkPoint[]> rails, int k, double lean, Cutter ball)
    {
        var (sin, cos) = Math.SinCos(lean);
        var rail = rails[k];
        var tips = new WorkPoint[rail.Length];
        for (var i = 0; i < rail.Length; i++)
        {
            var slope = SlopeAt(rail[i].Plan);
            var normal = -(cos * slope + sin * inward[i]);
            var length = Math.Sqrt(slope.Dot(slope) * cos * cos + 2 * sin * cos * slope.Dot(inward[i].Unit) + 1);
            var plan = rail[i].Plan + ball.Radius / length * normal;
            var z = rail[i].Z + ball.Radius * (cos / length - 1);
            tips[tips.Length - 1 - i] = new(plan.X, plan.Y, Math.Max(z, Rest(rails, i, plan, ball)));
        }
        return tips;
    }

    private Point2 SlopeAt(Point2 p) => 1 / (2 * Probe) * new Point2(face.Z(p.X + Probe, p.Y) - face.Z(p.X - Probe, p.Y), face.Z(p.X, p.Y + Probe) - face.Z(p.X, p.Y - Probe));

    /// <summary>Tip height at which the ball rests on the rails near station i.</summary>
    private double Rest(List<WorkPoint[]> rails, int i, Point2 plan, Cutter ball)
    {
        var n = stretch.Path.Length;
        var best = double.NegativeInfinity;
        foreach (var way in (ReadOnlySpan<int>)[1, -1])
            for (var k = way > 0 ? 0 : -1; Math.Abs(k) < n / 2; k += way)
            {
                var j = i + k;
                if (stretch.Closed) j = (j % n + n) % n;
                else if (j < 0 || j >= n) break;
                if (stretch.Path[j].DistanceTo(stretch.Path[i]) > 2 * ball.Radius + form.Width) break;
                foreach (var rail in rails)
                {
                    var away = rail[j].Plan.DistanceTo(plan);
                    if (away < ball.Radius) best = Math.Max(best, rail[j].Z - ball.Height(away));
                }
            }
        return best;
    }
}
