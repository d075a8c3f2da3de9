using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Machining.Tests.Toolpaths;

/// <summary>Wood at one level as a fine bitmap; a flat cutter is stood at close points of every motion, and the part of its rim in wood is counted. Independent of the path code.</summary>
internal sealed class EngagementMeter
{
    private const double Cell = 0.025, Step = 0.05;
    /// <summary>Wood no higher over the tip than this is no bite, mm.</summary>
    private const double Skim = 2;
    /// <summary>Parts of a half turn.</summary>
    private const int Parts = 360;

    private readonly bool[] met = new bool[Parts];
    private readonly bool[] wood;
    private readonly double radius;

    public EngagementMeter(Box2 box, double radius)
    {
        this.radius = radius;
        Grid = Grid.Over(box, Cell);
        wood = new bool[Grid.Count];
        Array.Fill(wood, true);
    }

    public Grid Grid { get; }
    public bool Wood(int i) => wood[i];
    public Point2 At(int i) => Grid.Centre(i % Grid.Columns, i / Grid.Columns);
    /// <summary>Greatest engagement of a level motion, radians, and where.</summary>
    public double Most { get; private set; }
    public Point2 MostAt { get; private set; }
    public Motion MostIn { get; private set; }
    /// <summary>Length of level motions that cut, and that do not, mm.</summary>
    public double Cutting { get; private set; }
    public double Idle { get; private set; }

    /// <summary>Follows the motions whose tip is at <paramref name="level"/>; those that go down to it only clear, from a skim above it on: a helix's last turn is an entry.</summary>
    public EngagementMeter Cut(ImmutableArray<Motion> motions, double level)
    {
        foreach (var m in motions.Where(m => m.Kind != MotionKind.Rapid))
        {
            var isLevel = m.From.Z == m.To.Z && m.To.Z == level;
            if (m.To.Z > level + Skim) continue;
            var n = Math.Max(1, (int)Math.Ceiling(m.Length / Step));
            for (var i = 1; i <= n; i++)
            {
                var (from, to) = (TestBlock.Along(m, (i - 1.0) / n), TestBlock.Along(m, (double)i / n));
                if (!isLevel && to.Z > level + Skim) continue;
                // Within a step the way itself turns, and so may the rim that meets wood.
                var engaged = Clear(from.Plan, to.Plan) - Math.Abs(m.Sweep) / n;
                if (!isLevel) continue;
                if (engaged > Most) (Most, MostAt, MostIn) = (engaged, from.Plan, m);
                if (engaged > 0) Cutting += m.Length / n; else Idle += m.Length / n;
            }
        }
        return this;
    }

    /// <summary>Takes the wood under the cutter after a step. A column w to the left of the way meets the rim first at asin(w/R) from straight ahead; a whole column's width counts.</summary>
    private double Clear(Point2 from, Point2 p)
    {
        Array.Clear(met);
        var left = (p - from).Unit.Left;
        for (var r = (int)Math.Ceiling((p.Y - radius - Grid.Y0) / Cell - 0.5); r <= Math.Floor((p.Y + radius - Grid.Y0) / Cell - 0.5); r++)
        {
            if (r < 0 || r >= Grid.Rows) continue;
            var half = Math.Sqrt(Math.Max(0, radius * radius - (Grid.Y(r) - p.Y) * (Grid.Y(r) - p.Y)));
            var first = Math.Max(0, (int)Math.Ceiling((p.X - half - Grid.X0) / Cell - 0.5));
            var last = Math.Min(Grid.Columns - 1, (int)Math.Floor((p.X + half - Grid.X0) / Cell - 0.5));
            if (last < first) continue;
            var row = wood.AsSpan(r * Grid.Columns, last + 1);
            for (var c = first; row[c..].IndexOf(true) is var next and >= 0; c++)
            {
                row[c += next] = false;
                var w = (Grid.Centre(c, r) - from).Dot(left);
                for (var k = Part(w - Cell / 2); k <= Part(w + Cell / 2); k++) met[k] = true;
            }
        }
        return met.Count(m => m) * Math.PI / Parts;
    }

    private int Part(double w) => Math.Clamp((int)((Math.Asin(Math.Clamp(w / radius, -1, 1)) / Math.PI + 0.5) * Parts), 0, Parts - 1);
}
