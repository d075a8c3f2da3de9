using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Instrument.Necks;

namespace Solidbody.Instrument.Playing;

/// <summary>A string's way over nut and saddle: how far it bends there, and how hard that presses it down.</summary>
/// <param name="String">From 1, the lowest.</param>
/// <param name="NutBreak">Downward bend over the nut, to its tree or its post, radians.</param>
/// <param name="NutTurn">Sideways bend at the nut, radians; positive turns outward to the treble side.</param>
/// <param name="PostBreak">Downward bend over the nut that the post alone would give.</param>
/// <param name="Tree">Where a string tree holds it down, plan, part frame of the neck; null without one.</param>
/// <param name="WindingsLeft">Room between the lowest winding and the headstock's face, mm.</param>
/// <param name="SaddleBreak">Downward bend over the saddle, radians.</param>
/// <param name="NutForce">Into the nut, N; null when the strings are not described.</param>
/// <param name="SaddleForce">Into the saddle, N.</param>
public sealed record StringPath(int String, double NutBreak, double NutTurn, double PostBreak, Point2? Tree, double WindingsLeft, double SaddleBreak, double? NutForce, double? SaddleForce)
{
    /// <summary>Bends within which a string neither rattles in its slot nor frets on it, radians. Common practice, no source.</summary>
    public static readonly double LeastAtNut = double.DegreesToRadians(4), MostAtNut = double.DegreesToRadians(20), MostTurn = double.DegreesToRadians(5);
    public static readonly double LeastAtSaddle = double.DegreesToRadians(8), MostAtSaddle = double.DegreesToRadians(45);
    /// <summary>What a string tree makes of the bend over the nut, and how near it may stand to nut and post, mm. Common practice, no source.</summary>
    private static readonly double TreeBreak = double.DegreesToRadians(6);
    private const double TreeBehindNut = 10, TreeBeforePost = 8;

    /// <summary>Every string's, from the lowest.</summary>
    public static ImmutableArray<StringPath> Of(InstrumentDefinition d, ImmutableArray<StringLay> lays)
    {
        ArgumentNullException.ThrowIfNull(d);
        var (strings, pulls, posts) = (Strings.Of(d), StringPull.All(d), TunerPosts.Of(d.Headstock, Strings.Of(d)));
        var chain = new HeightChain(d, lays);
        return [.. lays.Select((lay, i) => Of(d, strings, i, lay, posts[i], chain, i < pulls.Length ? pulls[i].Tension : null))];
    }

    private static StringPath Of(InstrumentDefinition d, Strings strings, int i, StringLay lay, Point2 post, HeightChain chain, double? tension)
    {
        var (head, bridge) = (d.Headstock, d.Body.Bridge);
        var gauge = d.Tuning is { } t && i < t.Strings.Length ? t.Strings[i].Gauge : 0;
        // Underside in the nut's slot over the glue plane; where the string comes off its post over the headstock's face.
        var nut = d.Fretboard.Thickness + d.Fretboard.FretHeight + lay.Nut - NeckLine.Of(d).Height(lay.NutX);
        var winding = head.PostHeight - head.Windings * gauge;
        var from = new Point2(lay.NutX, strings.NutY(i));
        var off = OverFace(d, strings, post - (i < head.TunersBass ? -1 : 1) * new Point2(0, head.PostRadius), Math.Max(winding, gauge));
        var run = off.Plan - from;
        // The speaking length rises a little toward the saddle, which the bends at both ends have to themselves.
        var rise = Math.Atan((lay.Saddle - lay.Nut) / lay.Length);
        double Break(double distance, double z) => Math.Atan((nut - z) / distance) + rise;

        var toPost = Break(run.Length, off.Z);
        var underTree = head.TreeHeight - head.Drop;
        var tree = toPost < LeastAtNut && head is { Trees: true, Angle: 0 } ? TreeAt(nut - underTree, run.Length, rise) : null;
        var down = tree is { } at ? Break(at, underTree) : toPost;
        var turn = Math.Atan2(run.Y, -run.X) - Math.Atan(strings.Drift(i));
        var behind = Math.Atan((chain.SaddleZ(lay) - bridge.HeldHeight) / bridge.HeldAt) + d.Body.Pocket.Angle + rise;
        return new(i + 1, down, turn, toPost, tree is { } u ? from + u * run.Unit : null, winding - gauge, behind, Pressed(tension, down, turn), Pressed(tension, behind, 0));
    }

    /// <summary>A point a height over the headstock's face, part frame of the neck.</summary>
    /// <param name="face">(u, y) along the face, as the headstock is drawn.</param>
    private static PartPoint OverFace(InstrumentDefinition d, Strings strings, Point2 face, double height) => d.Headstock.Angle > 0
        ? HeadFace.Of(d).Under(face, -height)
        : new(-strings.HeadFrom - face.X, face.Y, height - d.Headstock.Drop);

    /// <summary>How far from the nut a tree stands that gives the bend wanted; null where there is no room for one.</summary>
    private static double? TreeAt(double fall, double toPost, double rise)
    {
        var at = Math.Min(fall / Math.Tan(TreeBreak - rise), toPost - TreeBeforePost);
        return at >= TreeBehindNut ? at : null;
    }

    /// <summary>A string of tension T that bends by φ presses with 2 T sin(φ/2); φ of a bend down by α and aside by β from cos φ = cos α cos β.</summary>
    internal static double? Pressed(double? tension, double down, double aside) =>
        2 * tension * Math.Sin(Math.Acos(Math.Cos(down) * Math.Cos(aside)) / 2);
}
