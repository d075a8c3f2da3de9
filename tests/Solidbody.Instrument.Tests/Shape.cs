using System.Text.Json;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Tests;

/// <summary>The check figures of our own shape families (docs/shapes.md), worked out apart from this code: data/shapes.json.</summary>
internal static class Shape
{
    public static JsonElement All { get; } = JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "data", "shapes.json"))).RootElement;
    public static JsonElement Body(string name) => All.GetProperty("bodies").GetProperty(name);
    public static JsonElement Headstock(string name) => All.GetProperty("headstocks").GetProperty(name);
    public static JsonElement Neck => All.GetProperty("neck");

    public static double Number(this JsonElement e, string key) => e.GetProperty(key).GetDouble();
    public static double Degrees(this JsonElement e, string key) => double.DegreesToRadians(e.Number(key));
    public static Point2 Point(this JsonElement e) => new(e[0].GetDouble(), e[1].GetDouble());
    public static Point2[] Points(this JsonElement e, string key) => [.. e.GetProperty(key).EnumerateArray().Select(Point)];

    public static OutlineDefinition Outline(string name)
    {
        var p = Body(name).GetProperty("parameters");
        return new()
        {
            BodyLength = p.Number("bodyLength"),
            LowerBoutWidth = p.Number("lowerBoutWidth"),
            LowerBoutAt = p.Number("lowerBoutAt"),
            LowerBoutSkew = p.Number("lowerBoutSkew"),
            LowerBoutOffset = p.Number("lowerBoutOffset"),
            TailOffset = p.Number("tailOffset"),
            TailSquareness = p.Number("tailSquareness"),
            WaistWidth = p.Number("waistWidth"),
            WaistAt = p.Number("waistAt"),
            WaistSkew = p.Number("waistSkew"),
            WaistOffset = p.Number("waistOffset"),
            UpperBoutWidth = p.Number("upperBoutWidth"),
            UpperBoutAt = p.Number("upperBoutAt"),
            UpperBoutSkew = p.Number("upperBoutSkew"),
            UpperBoutOffset = p.Number("upperBoutOffset"),
            Treble = Shoulder(p.GetProperty("treble")),
            Bass = Shoulder(p.GetProperty("bass")),
        };
    }

    private static ShoulderDefinition Shoulder(JsonElement s) => s.GetProperty("kind").GetString() == "horned"
        ? new ShoulderDefinition.Horned(s.Number("hornReach"), s.Number("hornTipRadius"), s.Number("cutawayWidth"), s.Number("cutawayRadius"), s.Number("cutawayFret"), s.Number("shoulderCornerRadius"), s.Number("shoulderMargin"))
        : new ShoulderDefinition.Rounded(s.Number("shoulderMeet"), s.Number("shoulderSlope"));

    public static HeadstockDefinition HeadstockDefinition(string name)
    {
        var p = Headstock(name).GetProperty("parameters");
        return new()
        {
            TunersBass = (int)p.Number("tunersBass"),
            TunersTreble = (int)p.Number("tunersTreble"),
            Thickness = 15,
            Drop = 4,
            TunerHole = 9.5,
            PostRadius = p.Number("postRadius"),
            FirstPost = p.Number("firstPost"),
            TunerPitch = p.Number("tunerPitch"),
            Splay = p.Degrees("splayDeg"),
            EdgeDistance = p.Number("edgeDistance"),
            EdgeLead = p.Number("edgeLead"),
            EdgeTrail = p.Number("edgeTrail"),
            NeckBlend = p.Number("neckBlend"),
            Guard = p.Number("guard"),
            Swell = p.Number("swell"),
            Dip = p.Number("dip"),
            TipLength = p.Number("tipLength"),
            TipLean = p.Number("tipLean"),
            TipRadius = p.Number("tipRadius"),
            TipLeg = p.Number("tipLeg"),
            OgeeBass = p.Number("ogeeBass"),
            OgeeTreble = p.Number("ogeeTreble"),
        };
    }
}
