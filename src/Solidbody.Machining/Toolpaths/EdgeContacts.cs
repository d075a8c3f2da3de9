using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>An edge's surface as rails along it, each at one distance inside the edge, and where a ball that touches them stands.</summary>
internal sealed class EdgeContacts
{
    /// <summary>Step for the face's slope, mm.</summary>
    private const double Probe = 0.01;

    /// <summary>A ball that rests on points sinks between them: across the edge by this share of the ridge between passes.</summary>
    private const double Sinking = 1.0 / 8;
    /// <summary>Between points of the face behind the edge, mm: a ball of 6 mm radius sinks 0.005.</summary>
    private const double FaceStep = 0.5;

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
        var carriers = Carriers(ball.Radius, scallop);
        return [.. Contacts(ball.Radius, scallop).Select(c => Tips(Rail(c.Inside), c.Lean, carriers, ball))];
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

    private WorkPoint[] Rail(double inside) => [.. stretch.Path.Select((p, i) => At(p, inward[i], inside))];

    private WorkPoint At(Point2 foot, Point2 inward, double inside)
    {
        var at = foot + inside * inward;
        return new(at.X, at.Y, face.Z(at.X, at.Y) - form.TakenAt(inside));
    }

    /// <summary>What carries the ball at each station and half way to the next: close points of the edge and of the face behind it.</summary>
    private WorkPoint[][] Carriers(double ball, double scallop)
    {
        var behind = (int)Math.Ceiling(ball / FaceStep);
        double[] insides = [.. Contacts(ball, Sinking * scallop).Select(c => c.Inside), .. Enumerable.Range(0, behind + 1).Select(i => form.Width + ball * i / behind)];
        var (path, n) = (stretch.Path, stretch.Path.Length);
        return [.. Enumerable.Range(0, n).Select(i =>
        {
            var next = stretch.Closed ? (i + 1) % n : Math.Min(i + 1, n - 1);
            var (halfWay, between) = (0.5 * (path[i] + path[next]), 0.5 * (inward[i] + inward[next]));
            return (WorkPoint[])[.. insides.Select(d => At(path[i], inward[i], d)), .. insides.Select(d => At(halfWay, between, d))];
        })];
    }

    private WorkPoint[] Tips(WorkPoint[] rail, double lean, WorkPoint[][] carriers, Cutter ball)
    {
        var (sin, cos) = Math.SinCos(lean);
        var tips = new WorkPoint[rail.Length];
        for (var i = 0; i < rail.Length; i++)
        {
            var slope = SlopeAt(rail[i].Plan);
            var normal = -(cos * slope + sin * inward[i]);
            var length = Math.Sqrt(slope.Dot(slope) * cos * cos + 2 * sin * cos * slope.Dot(inward[i].Unit) + 1);
            var plan = rail[i].Plan + ball.Radius / length * normal;
            var z = rail[i].Z + ball.Radius * (cos / length - 1);
            tips[i] = new(plan.X, plan.Y, Math.Max(z, Rest(carriers, i, plan, ball)));
        }
        LiftBetween(tips, carriers, ball);
        Array.Reverse(tips);
        return tips;
    }

    /// <summary>Lifts both ends of every chord by as much as the ball on the way would cut: in a hollow it does not fit, tips of neighbours lie far apart.</summary>
    private void LiftBetween(WorkPoint[] tips, WorkPoint[][] carriers, Cutter ball)
    {
        var lifts = new double[tips.Length];
        for (var i = 0; i < (stretch.Closed ? tips.Length : tips.Length - 1); i++)
        {
            var next = (i + 1) % tips.Length;
            var (a, b) = (tips[i], tips[next]);
            var parts = (int)Math.Ceiling(a.Plan.DistanceTo(b.Plan) / FaceStep);
            for (var k = 1; k < parts; k++)
            {
                var t = (double)k / parts;
                var lift = Rest(carriers, i, a.Plan + t * (b.Plan - a.Plan), ball) - (a.Z + t * (b.Z - a.Z));
                (lifts[i], lifts[next]) = (Math.Max(lifts[i], lift), Math.Max(lifts[next], lift));
            }
        }
        for (var i = 0; i < tips.Length; i++) tips[i] = tips[i] with { Z = tips[i].Z + lifts[i] };
    }

    private Point2 SlopeAt(Point2 p) => 1 / (2 * Probe) * new Point2(face.Z(p.X + Probe, p.Y) - face.Z(p.X - Probe, p.Y), face.Z(p.X, p.Y + Probe) - face.Z(p.X, p.Y - Probe));

    /// <summary>Tip height at which the ball rests on what carries it near station i.</summary>
    private double Rest(WorkPoint[][] carriers, int i, Point2 plan, Cutter ball)
    {
        var n = stretch.Path.Length;
        var best = double.NegativeInfinity;
        foreach (var way in (ReadOnlySpan<int>)[1, -1])
            for (var k = way > 0 ? 0 : -1; Math.Abs(k) < (stretch.Closed ? n / 2 : n); k += way)
            {
                var j = i + k;
                if (stretch.Closed) j = (j % n + n) % n;
                else if (j < 0 || j >= n) break;
                if (stretch.Path[j].DistanceTo(stretch.Path[i]) > 2 * ball.Radius + form.Width) break;
                foreach (var p in carriers[j])
                {
                    var away = p.Plan.DistanceTo(plan);
                    if (away < ball.Radius) best = Math.Max(best, p.Z - ball.Height(away));
                }
            }
        return best;
    }
}
