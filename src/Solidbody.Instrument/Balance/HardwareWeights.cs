using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Necks;

namespace Solidbody.Instrument.Balance;

/// <summary>Everything bought, where it sits. Heights are its seat's, near enough for a centre of gravity.</summary>
internal static class HardwareWeights
{
    public static IEnumerable<Weighed> Of(InstrumentDefinition d, Part body, PartPoint bodyCentre)
    {
        var (w, joint, glue) = (d.Weights, NeckJoint.Of(d), WoodWeights.DatumAboveBody(d, "neck"));
        var face = glue - d.Headstock.Drop;
        var posts = TunerPosts.Of(d.Headstock, Strings.Of(d)).Select(p => new PartPoint(-p.X, p.Y, face - d.Headstock.Thickness / 2)).ToArray();
        var strings = glue + d.Fretboard.Thickness;
        yield return Weighed.Each("tuners", w.Tuner, posts);
        yield return new("nut", w.Nut, new(-d.Nut.Thickness / 2, 0, strings));
        yield return Weighed.Each("frets", w.Fret, Enumerable.Range(1, d.Frets).Select(n => new PartPoint(FretTable.Position(d.Scale, n), 0, strings)));
        yield return new("rod", w.Rod, new((d.Neck.Rod.Start + d.Neck.Rod.End) / 2, 0, glue - d.Neck.Rod.Depth / 2));
        yield return Weighed.Each("strings", w.String, posts.Select(p => new PartPoint((p.X + d.Scale) / 2, p.Y / 2, strings)));
        if (d.Neck.Joint == JointKind.BoltOn)
            yield return Weighed.Each("neck screws", w.NeckScrews / 4, HeelScrews.Of(d.Neck.Heel.Screws, joint).Select(p => new PartPoint(p.X, p.Y, -d.Body.Thickness)));
        yield return new("bridge", w.Bridge, new(d.Scale + (d.Body.Bridge.PlateFrom + d.Body.Bridge.PlateTo) / 2, 0, 0));
        yield return Weighed.Each("pickups", w.Pickup, d.Body.Pickups.Select(p => new PartPoint(p.CentreX, 0, -p.Depth / 2)));
        yield return Weighed.Each("strap buttons", w.StrapButton, StrapButtons.Of(d.Body, body.Outline).Select(b => b.Foot));
        foreach (var binding in BodyBinding.Of(d, body.Outline)) yield return new(binding.Name, binding.Mass, binding.Centre);
        yield return new("finish", w.Finish, bodyCentre);
        if (d.Body.Jack is { } jack && d.Body.Controls is { } near) yield return new("jack", w.Jack, new(jack.X, near.CentreY, -d.Body.Thickness / 2));
        if (d.Body.Controls is not { } c) yield break;
        var middle = new Point2(c.CentreX, c.CentreY);
        yield return Weighed.Each("controls", w.Control, c.Shafts.Select(s => middle + new Point2(s.Along, s.Across).Turned(c.Angle)).Select(p => new PartPoint(p.X, p.Y, -c.Floor)));
        yield return new("cover", w.Cover, new(c.CentreX, c.CentreY, -d.Body.Thickness));
    }
}
