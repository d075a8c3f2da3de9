using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument.Fretboards;
using Solidbody.Instrument.Outlines;

namespace Solidbody.Instrument.Bodies;

/// <summary>The body as a part: outline, rooms, holes and shaped edges. Datum: its front, z = 0; wood down to −thickness.</summary>
internal static class BodyMaker
{
    /// <summary>The pocket's mouth reaches this far beyond the shoulder line, mm: room for a cutter to run out.</summary>
    private const double RunOut = 15;

    /// <returns>The body, and what keeps its wires from their ways.</returns>
    public static (Part Body, ImmutableArray<Finding> Findings) Make(InstrumentDefinition d, BodyPlan seen)
    {
        var (body, joint, plan) = (d.Body, NeckJoint.Of(d), seen.Region);
        var box = plan.Bounds;
        ImmutableArray<Pocket> rooms = [.. d.Neck.Joint == JointKind.Through ? [] : (Pocket[])[NeckPocket(d, joint)], .. body.Pickups.SelectMany(PickupRooms.Of), .. TremoloRooms.Of(d), .. ControlRooms.Of(body)];
        ImmutableArray<Hole> holes =
        [
            .. d.Neck.Joint == JointKind.BoltOn ? NeckScrews(d, joint) : [],
            .. BridgeHoles.Of(d), .. body.Pickups.SelectMany(PickupRooms.Holes), .. TremoloRooms.Holes(d), .. ControlRooms.Holes(body, plan),
        ];
        var wires = WireWays.Of(d, plan, rooms, holes);
        ImmutableArray<Ledge> ledges = [.. BindingLedges.Of(body, plan)];
        var arm = body.ArmContour is { } a ? new ArmContour(a) : null;
        var belly = body.BellyContour is { } b ? new BellyContour(b, body.Thickness) : null;
        var part = new Part
        {
            Name = "body",
            Wood = body.Wood,
            Outline = plan,
            Front = arm is null ? new LevelHeight(0) : arm,
            Back = belly is null ? new LevelHeight(-body.Thickness) : belly,
            FrontFinish = FaceFinish.AsPlaned,
            BackFinish = FaceFinish.AsPlaned,
            Bounds = new(box.X0, box.Y0, -body.Thickness, box.X1, box.Y1, 0),
            CarvedZones =
            [
                .. arm is null ? ImmutableArray<CarvedZone>.Empty : [new("arm contour", Side.Front, arm.Zone(box))],
                .. belly is null ? ImmutableArray<CarvedZone>.Empty : [new("belly contour", Side.Back, belly.Zone(box))],
            ],
            Pockets = rooms,
            Holes = holes,
            Edges = [.. BodyEdges.Of(body, plan, joint)],
            Ledges = ledges,
            HandBores = [.. wires.Bores, .. JackBore.PlatePilots(body, plan), .. TremoloRooms.ClawPilots(d), .. StrapButtons.Pilots(body, plan)],
            Measures = BodyMeasures.Of(d, plan, rooms, holes, ledges),
            TabPlaces = seen.TabPlaces,
        };
        return (part with { Measures = [.. part.Measures, .. EdgeMeasures.Of(part)] }, wires.Findings);
    }

    /// <summary>Half width of the pocket at x: the heel's, moved out square to its tapered edge by the clearance.</summary>
    public static double PocketHalfWidth(InstrumentDefinition d, double x)
    {
        if (d.BoughtNeck is { } bought) return bought.HalfWidth(x) + d.Body.Pocket.Clearance * Math.Sqrt(1 + bought.HalfWidthGain * bought.HalfWidthGain);
        if (Tenon.HalfWidth(d) is { } tenon) return tenon + d.Body.Pocket.Clearance;
        var gain = FretboardMaker.HalfWidthGain(d);
        return FretboardMaker.HalfWidth(d, x) + d.Body.Pocket.Clearance * Math.Sqrt(1 + gain * gain);
    }

    private static Pocket NeckPocket(InstrumentDefinition d, NeckJoint joint)
    {
        var (mouth, end) = (joint.ShoulderX - RunOut, joint.HeelEnd + joint.Clearance);
        var (atMouth, atEnd) = (PocketHalfWidth(d, mouth), PocketHalfWidth(d, end));
        var region = new Region(Tenon.HalfWidth(d) is null
            ? RoundedPolygon.Of((new(mouth, -atMouth), 0), (new(end, -atEnd), joint.PocketCorner), (new(end, atEnd), joint.PocketCorner), (new(mouth, atMouth), 0))
            : Mortise(joint, mouth, end, atEnd));
        var seat = NeckSeat.Of(d);
        IHeight floor = seat.FloorSlope == 0 ? new LevelHeight(-d.Body.Pocket.Depth) : new SlopedHeight(-d.Body.Pocket.Depth, seat.HeelEnd, seat.FloorSlope);
        return new(RoomNames.NeckPocket, Side.Front, region, floor, Fit: true) { IsOpenAtSide = true };
    }

    /// <summary>A tenon's room: its mouth rounded beside the tenon, where the neck has a hollow.</summary>
    private static Loop Mortise(NeckJoint joint, double mouth, double end, double half)
    {
        var (x, corner, wide) = (joint.ShoulderX - Tenon.BeforeShoulder, Tenon.Hollow - joint.Clearance, half + 2 * Tenon.Hollow);
        return RoundedPolygon.Of((new(mouth, -wide), 0), (new(x, -wide), 0), (new(x, -half), corner), (new(end, -half), joint.PocketCorner),
            (new(end, half), joint.PocketCorner), (new(x, half), corner), (new(x, wide), 0), (new(mouth, wide), 0));
    }

    /// <summary>From the back through the pocket's floor, with a recess for the ferrule.</summary>
    private static IEnumerable<Hole> NeckScrews(InstrumentDefinition d, NeckJoint joint)
    {
        var (screws, back) = (d.Neck.Heel.Screws, -d.Body.Thickness);
        var hasRecess = screws.Recess > 0 && screws.RecessDepth > 0;
        var seat = NeckSeat.Of(d);
        foreach (var (p, i) in HeelScrews.Of(screws, joint).Select((p, i) => (p, i + 1)))
        {
            var reach = seat.FloorZ(p.X) + Drilling.Overlap;
            if (hasRecess) yield return new($"neck screw recess {i}", Side.Back, p, screws.Recess, back, back + screws.RecessDepth, back + screws.RecessDepth);
            yield return new($"neck screw {i}", Side.Back, p, screws.Clearance, hasRecess ? back + screws.RecessDepth : back, reach, reach + Drilling.Cone(screws.Clearance)) { Into = RoomNames.NeckPocket };
        }
    }
}
