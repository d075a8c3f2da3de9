using System.Collections.Immutable;
using System.Globalization;
using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Fretboards;
using Solidbody.Instrument.Outlines;

namespace Solidbody.Instrument.Necks;

/// <summary>The neck as a part: shaft, heel and headstock in one plan, glue plane in front, the carved back behind. Datum: the glue plane.</summary>
internal static class NeckMaker
{
    /// <summary>Rooms and flats that are open at the side reach this far beyond the outline, mm: room for a cutter to run out.</summary>
    private const double RunOut = 15;
    /// <summary>The heel is level this far in front of the body's shoulder line, mm, so that its back lies flat in the pocket.</summary>
    private const double HeelLevelBefore = 3;
    /// <summary>Wood kept between the nut's back and the adjuster's access, mm.</summary>
    private const double AccessBehindNut = 1;
    /// <summary>Corner radius of the access, mm: a 6 mm cutter reaches it.</summary>
    private const double AccessCorner = 3.2;

    public static NeckBack Back(InstrumentDefinition d, NeckProfile profile) => new()
    {
        Profile = profile,
        ProfileAt12 = d.Neck.SectionAt12,
        Scale = d.Scale,
        HalfWidthNut = d.Nut.Width / 2,
        HalfWidthGain = FretboardMaker.HalfWidthGain(d),
        DepthAtFret1 = d.Neck.ThicknessAtFret1 - d.Fretboard.Thickness,
        DepthAtFret12 = d.Neck.ThicknessAtFret12 - d.Fretboard.Thickness,
        Bow = d.Neck.Bow,
        Lip = d.Neck.Lip,
        HeelX = NeckJoint.Of(d).ShoulderX - HeelLevelBefore,
        HeelDepth = d.Neck.Heel.Thickness,
        HeelBlendCentre = d.Neck.Heel.BlendCentre,
        HeelBlendEdgeExtra = d.Neck.Heel.BlendEdgeExtra,
        HeadThickness = d.Headstock.Thickness,
        // An angled face passes the glue plane behind the nut, not under it.
        HeadDrop = d.Headstock.Angle > 0 ? -HeadFace.Of(d).Begin * Math.Tan(d.Headstock.Angle) : d.Headstock.Drop,
        HeadAngle = d.Headstock.Angle,
        Head = (HeadBlend.Usual with { VoluteAt = d.Neck.VoluteAt, VoluteHalfLength = d.Neck.VoluteLength / 2 }).Moved(Strings.Of(d).HeadFrom),
        VoluteHeight = d.Neck.VoluteHeight,
    };

    public static HeadstockOutline Headstock(InstrumentDefinition d)
    {
        var layout = FretLayout.Of(d);
        return HeadstockOutline.Build(d.Headstock, layout.Strings, 2 * layout.HalfWidth(-layout.Strings.HeadFrom), layout.HalfWidthGain);
    }

    public static Part Make(InstrumentDefinition d, NeckBack back, HeadstockOutline headstock)
    {
        var (joint, face) = (NeckJoint.Of(d), HeadFace.Of(d));
        var plan = Plan(d, joint, headstock, face);
        var box = plan.Bounds;
        var leans = d.Headstock.Angle > 0;
        var tuners = leans ? [] : Tuners(d, headstock);
        var screws = d.Neck.Joint == JointKind.BoltOn ? ScrewPilots(d, joint) : [];
        return new()
        {
            Name = "neck",
            Wood = d.Neck.Wood,
            Outline = plan,
            Front = leans ? face : new LevelHeight(0),
            Back = back,
            FrontFinish = FaceFinish.AsPlaned,
            BackFinish = FaceFinish.CarvedAcross,
            Bounds = new(box.X0, box.Y0, -Deepest(back, plan), box.X1, box.Y1, 0),
            Pockets = [.. Rooms(d, box)],
            Holes = [.. tuners, .. screws],
            Flats =
            [
                new("heel back", Side.Back, Rectangle(back.HeelX, joint.HeelEnd + RunOut, joint.HeelWidth / 2 + RunOut), -d.Neck.Heel.Thickness),
                .. leans ? (Flat[])[] : [new("headstock back", Side.Back, Rectangle(box.X0 - RunOut, -back.HeadLevelFrom, Math.Max(box.Y1, -box.Y0) + RunOut), -d.Headstock.Drop - d.Headstock.Thickness)],
            ],
            CarvedZones = leans ? [new("headstock face", Side.Front, Rectangle(box.X0 - 2 * RunOut, -face.Begin, Math.Max(box.Y1, -box.Y0) + 2 * RunOut))] : [],
            HandBores = leans ? HandBoredTuners(d, headstock, face) : [],
            Measures = NeckMeasures.Of(d, back, plan, tuners, screws),
            TabPlaces = [.. ((double[])[0.15, 0.5, 0.8]).SelectMany(s =>
            {
                var (x, half) = (s * joint.HeelEnd, Tenon.NeckHalfWidth(d, s * joint.HeelEnd));
                return (Point2[])[new(x, half), new(x, -half)];
            }), new(joint.HeelEnd, 0), new(box.X0, plan.Loops[0].Points.MinBy(p => p.X).Y)],
        };
    }

    /// <summary>Shaft with rounded heel corners, then the headstock from the treble edge round the tip to the bass edge.</summary>
    private static Region Plan(InstrumentDefinition d, NeckJoint joint, HeadstockOutline headstock, HeadFace face)
    {
        var head = -Strings.Of(d).HeadFrom;
        var (nut, heel) = (FretboardMaker.HalfWidth(d, head), joint.HeelWidth / 2);
        var shaft = Tenon.HalfWidth(d) is { } half ? WithTenon(d, joint, head, nut, half)
            : RoundedPolygon.Of((new(head, -nut), 0), (new(joint.HeelEnd, -heel), joint.HeelCorner), (new(joint.HeelEnd, heel), joint.HeelCorner), (new(head, nut), 0));
        return new(Loop.Of(shaft.Points.Concat(headstock.Curve.Flatten().Reverse().Select(face.Plan))));
    }

    /// <summary>The shaft's plan up to its shoulders, then the tenon.</summary>
    private static Loop WithTenon(InstrumentDefinition d, NeckJoint joint, double head, double nut, double half)
    {
        var (x, end) = (Tenon.ShoulderX(joint), joint.HeelEnd);
        var wide = FretboardMaker.HalfWidth(d, x);
        return RoundedPolygon.Of((new(head, -nut), 0), (new(x, -wide), 0), (new(x, -half), Tenon.Hollow), (new(end, -half), joint.HeelCorner),
            (new(end, half), joint.HeelCorner), (new(x, half), Tenon.Hollow), (new(x, wide), 0), (new(head, nut), 0));
    }

    private static IEnumerable<Pocket> Rooms(InstrumentDefinition d, Box2 box)
    {
        var rod = d.Neck.Rod;
        if (d.Headstock.Drop > 0)
        {
            var (shelf, half) = (FretLayout.Of(d).NutBack.Moved(-HeadFace.NutShelf), Math.Max(box.Y1, -box.Y0) + RunOut);
            var tip = Math.Min(box.X0, Math.Min(shelf.X(half), shelf.X(-half))) - RunOut;
            yield return new("headstock face", Side.Front, new(Loop.Of([new(tip, -half), shelf.At(-half), shelf.At(half), new(tip, half)])), new LevelHeight(-d.Headstock.Drop));
        }
        if (AccessSpan(d) is var (from, to))
            yield return new("rod access", Side.Front, new(Shapes.Rectangle(new((from + to) / 2, 0), to - from, rod.AccessWidth, AccessCorner)), new LevelHeight(-rod.Depth));
        var r = rod.Width / 2;
        yield return new("rod channel", Side.Front, new(Shapes.Capsule(new(rod.Start + r, 0), new(rod.End - r, 0), r)), new LevelHeight(-rod.Depth));
        var bars = d.Neck.Bars;
        foreach (var y in bars.Sides)
            yield return new($"{Bar(y)} channel", Side.Front, new(Shapes.Capsule(new(bars.Start + bars.Width / 2, y), new(bars.End - bars.Width / 2, y), bars.Width / 2)), new LevelHeight(-bars.Depth));
    }

    /// <summary>What a bar is called, by its side.</summary>
    public static string Bar(double y) => y < 0 ? "bass bar" : "treble bar";

    /// <summary>x from and to of the adjuster's access, behind the nut; null without one.</summary>
    public static (double From, double To)? AccessSpan(InstrumentDefinition d)
    {
        var back = FretLayout.Of(d).NutBack;
        var to = back.Middle - Math.Abs(back.Slope) * d.Neck.Rod.AccessWidth / 2 - AccessBehindNut;
        return d.Neck.Rod is { AccessLength: > 0, AccessWidth: > 0 } rod ? (to - rod.AccessLength, to) : null;
    }

    private static ImmutableArray<Hole> Tuners(InstrumentDefinition d, HeadstockOutline headstock)
    {
        var h = d.Headstock;
        var (back, head) = (-h.Drop - h.Thickness, -Strings.Of(d).HeadFrom);
        return [.. headstock.Posts.Select((p, i) => new Hole($"tuner hole {i + 1}", Side.Front, new(head - p.X, p.Y), h.TunerHole, -h.Drop,
            back - Drilling.Overlap, back - Drilling.Overlap - Drilling.Cone(h.TunerHole), Through: true))];
    }

    /// <summary>A router lowers upright holes only: those square to a leaning face are bored by hand.</summary>
    private static ImmutableArray<HandBore> HandBoredTuners(InstrumentDefinition d, HeadstockOutline headstock, HeadFace face)
    {
        var h = d.Headstock;
        return [.. headstock.Posts.Select((p, i) => new HandBore($"tuner hole {i + 1}", face.Under(p, 0), face.Under(p, h.Thickness), h.TunerHole, string.Create(CultureInfo.InvariantCulture,
            $"square to the headstock's face, its centre {face.From + p.X:0.0} mm from the nut line along the face and {Math.Abs(p.Y):0.0} mm to the {(p.Y < 0 ? "bass" : "treble")} side of the centre line"))
        { FromFace = Side.Front })];
    }

    private static ImmutableArray<Hole> ScrewPilots(InstrumentDefinition d, NeckJoint joint)
    {
        var (screws, mouth) = (d.Neck.Heel.Screws, -d.Neck.Heel.Thickness);
        var reach = mouth + screws.PilotDepth;
        return [.. HeelScrews.Of(screws, joint).Select((p, i) => new Hole($"heel screw pilot {i + 1}", Side.Back, p, screws.Pilot, mouth, reach, reach + Drilling.Cone(screws.Pilot)))];
    }

    private static Region Rectangle(double x0, double x1, double halfWidth) => new(Shapes.Rectangle(new((x0 + x1) / 2, 0), x1 - x0, 2 * halfWidth));

    /// <summary>Greatest depth of the back, sampled finely along the deepest line and the centre line: the back bulges nowhere between.</summary>
    private static double Deepest(NeckBack back, Region plan)
    {
        var deepest = Math.Max(back.HeelDepth, back.HeadDrop + back.HeadThickness);
        for (var x = plan.Bounds.X0; x <= plan.Bounds.X1; x += 0.25)
            deepest = Math.Max(deepest, Math.Max(back.Depth(x, back.ApexY(x)), back.Depth(x, 0)));
        return deepest;
    }
}
