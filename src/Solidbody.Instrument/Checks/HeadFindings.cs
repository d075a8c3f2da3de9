using System.Globalization;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument.Playing;

namespace Solidbody.Instrument.Checks;

/// <summary>What can be wrong with the headstock.</summary>
public static class HeadFindings
{
    private const string Place = "headstock";

    public static Finding TunerCount(int bass, int treble, int strings) =>
        new("HEAD-01", Severity.Stops, Place, $"{bass} and {treble} tuners", $"{strings} tuners for {strings} strings", Limits.OwnFile, "give each string one tuner: change tuners_bass or tuners_treble.") { Title = "tuners and strings differ in number" };

    public static Finding HollowTooTight(string side, double edge, double least) =>
        new("HEAD-02", Severity.Stops, $"{Place}, {side} side", $"the edge beside the first post begins {Say.Mm(edge)} from the nut", Say.AtLeast(least), Limits.OwnShapes, "move the first post out, or take less edge distance.") { Title = "the hollow at the nut is too tight" };

    public static Finding OppositePosts(Point2 a, double distance, double least) =>
        new("HEAD-03", Severity.Stops, $"{Place}, posts at {Say.At(a)}", $"{Say.Mm(distance)} between posts of opposite sides", Say.AtLeast(least), Limits.OwnShapes, "raise the splay, or lessen the tuner pitch.") { Title = "tuners of opposite sides are in each other's way" };

    public static Finding StringAtPost(int text, int post, double gap) =>
        new("HEAD-04", Severity.Warns, $"{Place}, string {text} at post {post}", $"{Say.Mm(gap)} between them", Say.AtLeast(Limits.StringToPost), Limits.OwnShapes, "raise the splay, or move the posts.") { Title = "a string rubs on another string's post" };

    public static Finding PostAtEdge(int post, Point2 at, double distance) =>
        new("HEAD-05", Severity.Stops, $"{Place}, tuner {post} at {Say.At(at)}", $"{Say.Mm(distance)} from post to edge", Say.AtLeast(Limits.PostToEdge), Limits.OwnShapes, "raise the edge distance or the tip length.") { Title = "a tuner hole is too near the edge" };

    public static Finding Crosses() =>
        new("HEAD-06", Severity.Stops, Place, "the outline crosses itself", "no crossing", Limits.OwnShapes, "lessen the ogees and the tip leg, or lengthen the tip.") { Title = "the headstock's outline crosses itself" };

    public static Finding CrowdedTuners(double pitch, double least) =>
        new("HEAD-07", Severity.Warns, Place, $"tuners {Say.Mm(pitch)} apart", Say.AtLeast(least), Limits.Practice, "raise the tuner pitch, or hold the tuners' casings side by side first.") { Title = "no room for a tuner behind its neighbour" };

    public static Finding NoPlaceForPosts(double pitch) =>
        new("HEAD-08", Severity.Stops, Place, $"no place along its string for a post {Say.Mm(pitch)} from the one before", "a tuner pitch longer than the strings lie apart", Limits.OwnShapes, "raise the tuner pitch.") { Title = "the tuner posts cannot be placed" };

    public static Finding ShortGrain(double angle, HeadGrain grain)
    {
        ArgumentNullException.ThrowIfNull(grain);
        return new("HEAD-09", Severity.Warns, Place, string.Create(CultureInfo.InvariantCulture,
            $"grain runs out of the leaning headstock over {Say.Mm(grain.RunOut)}, 1 in {1 / Math.Tan(angle):0.0}: about {100 * grain.Strength:0} % of the bending strength stays; the neck comes out of {Say.Mm(grain.Blank)} of wood"),
            "a slope of 1 in 10", "common practice, no source; strength by Hankinson's formula, Wood Handbook chapter 5, from memory", "glue the headstock on with a scarf joint, add a volute, or lean it back less.")
        { Title = "short grain in the headstock" };
    }
}
