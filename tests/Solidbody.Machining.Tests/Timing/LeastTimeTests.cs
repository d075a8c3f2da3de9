using CsCheck;
using Solidbody.Geometry;
using Solidbody.Machining.Feeds;
using Solidbody.Machining.Making;
using Solidbody.Machining.Planning;
using Solidbody.Machining.Tests.Toolpaths;
using Solidbody.Machining.Timing;
using Solidbody.Machining.Timing.Least;
using Solidbody.Shop;

namespace Solidbody.Machining.Tests.Timing;

/// <summary>The bound against closed forms worked by hand, and under the time of the path that is made.</summary>
public class LeastTimeTests
{
    private const double Clearance = 30;
    private static readonly Machine Machine = Samples.Machine;   // rapids 80 and 40 mm/s, 400 and 250 mm/s²
    private static readonly CutFeeds Feeds = new()
    {
        SpindleSpeed = 300,
        Feed = 40,
        PlungeFeed = 12,
        StepDown = 3,
        StepOver = 2.4,
        Bite = new(3, 6),
        ChipLoad = 0.05,
        Chip = 0.05,
        Power = 100,
        Force = 20,
        Bending = 0.02,
    };

    private static double Bound(Cutter cutter, Work work) => LeastTime.Seconds(Of(cutter, work), Clearance, Machine);
    private static Operation Of(Cutter cutter, Work work) => new("any", Stage.Rooms, cutter, Feeds, work);

    private static double Planned(Cutter cutter, Work work) =>
        MotionTime.Seconds([.. OperationPath.Of(Of(cutter, work), Clearance, Machine).Select(m => FeedLimit.Of(m, Machine))], Machine);

    [Fact] // Area 60 × 40 less the four corners (4 − π)·3², less one disc π·3², twice (5 mm in bites of 3), over 6 mm · 40 mm/s; 2 · 10 mm at 40 mm/s.
    public void A_room_takes_its_floor_for_every_bite() => Assert.Equal(
        2 * (2400 - (4 - Math.PI) * 9 - Math.PI * 9) / 240 + 0.5,
        Bound(Given.Flat(6), new Work.Clear(new(Shapes.Rectangle(new(0, 0), 60, 40)), 20, 15, 0, 0)), 0.01);

    [Fact] // 54 + 34 mm and back, once round at 40 mm/s.
    public void Walls_take_their_length() => Assert.Equal(176 / 40.0 + 0.5, Bound(Given.Flat(6), new Work.Walls(new(Shapes.Rectangle(new(0, 0), 60, 40)), 20, 17, 1)), 1e-6);

    [Fact] // 50 mm, 7 mm deep: three bites.
    public void A_slot_takes_a_pass_for_every_bite() => Assert.Equal(150 / 40.0 + 0.5, Bound(Given.Flat(6), new Work.Channel(new(0, 0), new(30, 40), 20, 13)), 1e-9);

    [Fact] // Sides 2 (60 + 40), corners of the offset 2π·3; two bites; the tab spares its length and two cutters on the lower one.
    public void An_outline_takes_its_length_but_for_tabs() => Assert.Equal(
        (2 * (200 + 6 * Math.PI) - 10 - 12) / 40 + 0.5,
        Bound(Given.Flat(6), new Work.Outline(Shapes.Rectangle(new(0, 0), 60, 40), 20, 14, 0, [new(new(0, 20), 10, 16)])), 0.01);

    [Fact] // 9 mm at 12 mm/s in three even bites; up from 3 and from 6 mm by 2√(d/250) (too short to reach 40 mm/s: d < v²/a = 6.4);
           // down again by all but 0.5 mm, ending at 12 mm/s; out of 9 mm from rest.
    public void A_drilled_hole_takes_its_depth_and_its_bites()
    {
        var up = 2 * Math.Sqrt(3 / 250.0) + 2 * Math.Sqrt(6 / 250.0);
        // From rest to 12 mm/s over d: peak p with (2p² − 144)/(2·250) = d, or 40.
        double Down(double d) => Math.Min(40, Math.Sqrt((500 * d + 144) / 2)) is var p ? (2 * p - 12) / 250 + (d - (2 * p * p - 144) / 500) / p : 0;
        var last = 40 / 250.0 + (9 - 1600 / 500.0) / 40;
        Assert.Equal(9 / 12.0 + up + Down(2.5) + Down(5.5) + last + 0.5, Bound(Given.Drill(4), new Work.Drill([new(new(0, 0), 4, 20, 11)], 4)), 1e-6);
    }

    [Fact] // Four corners of a square and its middle: the least tree is four half diagonals.
    public void Places_are_joined_by_their_least_tree()
    {
        Spot[] spots = [new(new(0, 0), 0), new(new(40, 0), 0), new(new(40, 30), 0), new(new(0, 30), 0), new(new(20, 15), 0)];
        Assert.Equal(100 / 80.0, new LeastTravel(Machine, Clearance).Between(spots), 9);
    }

    [Fact] // Against every tree there is (Prüfer's codes): exhaustive over five places.
    public void No_tree_is_shorter() => Gen.Select(Gen.Double[0, 100], Gen.Double[0, 100]).Array[5].Sample(places =>
    {
        double Apart(int i, int j) => new Point2(places[i].Item1, places[i].Item2).DistanceTo(new(places[j].Item1, places[j].Item2));
        var shortest = Enumerable.Range(0, 125).Min(code => Tree([code / 25, code / 5 % 5, code % 5]).Sum(e => Apart(e.A, e.B)));
        return Math.Abs(LeastTravel.LeastTree(5, Apart) - shortest) < 1e-9;
    }, iter: 60);

    [Fact] // A plane that rises 0.5 along the pass: √1.25 of its plan, 0.02 mm ridges of a 6 mm ball 2√(0.02·5.98) apart.
    public void A_sloping_face_takes_its_length_on_the_slope() => Assert.Equal(
        100 * 50 * Math.Sqrt(1.25) / (2 * Math.Sqrt(0.02 * 5.98)) / 40,
        Bound(Given.Ball(6), new Work.FinishFace(new Slope(0.5), new(Shapes.Rectangle(new(50, 25), 100, 50)), true, 0.02, -100, null)), 0.01);

    [Fact] // The law, over shapes: rooms of any size, holes, slots, outlines.
    public void No_path_is_quicker() => Gen.Select(Gen.Double[14, 90], Gen.Double[14, 50], Gen.Double[3.1, 8], Gen.Double[0.5, 16], Gen.Bool, Gen.Bool).Sample((length, width, corner, depth, plunges, arcs) =>
    {
        var (cutter, machine) = (Given.Flat(6, plunges), Machine with { Arcs = arcs });
        var room = Shapes.Rectangle(new(3, 4), length, width, Math.Min(corner, width / 2 - 0.1), 0.4);
        Work[] works =
        [
            new Work.Clear(new(room), 20, 20 - depth, 0.3, 0.2), new Work.Walls(new(room), 20, 20 - depth, 1), new Work.LevelFace(new(room), 20, 20 - depth, 21),
            new Work.Outline(room, 20, 20 - depth, 0.3, [new(new(3, 4), 8, 20 - depth / 2)]), new Work.Channel(new(0, 0), new(length, width), 20, 20 - depth),
            new Work.Bore([new(new(0, 0), 6.1 + width / 4, 20, 20 - depth), new(new(length, 0), 6.1 + corner, 20, 20 - depth)]),
            new Work.FormEdge(room.Points, true, new EdgeForm.Rounded(4), 20),
        ];
        foreach (var work in works)
        {
            var by = work is Work.FormEdge ? Given.Roundover(4, 2) : cutter;
            Assert.InRange(Bound(by, work), 1e-3, Planned(by, work));
        }
        var drill = new Work.Drill([new(new(0, 0), 4, 20, 20 - depth), new(new(length, width), 4, 20, 20 - depth)], 1 + corner);
        Assert.InRange(Bound(Given.Drill(4), drill), 1e-3, Planned(Given.Drill(4), drill));
    }, iter: 25);

    /// <summary>Edges of the tree a code of n − 2 labels stands for (Prüfer 1918, from memory).</summary>
    private static IEnumerable<(int A, int B)> Tree(int[] code)
    {
        var degree = Enumerable.Range(0, code.Length + 2).Select(i => 1 + code.Count(c => c == i)).ToArray();
        foreach (var label in code)
        {
            var leaf = Array.FindIndex(degree, d => d == 1);
            yield return (leaf, label);
            degree[leaf]--;
            degree[label]--;
        }
        var last = Enumerable.Range(0, degree.Length).Where(i => degree[i] == 1).ToArray();
        yield return (last[0], last[1]);
    }

    private sealed record Slope(double Rise) : IHeight
    {
        public double Z(double x, double y) => Rise * x;
    }
}
