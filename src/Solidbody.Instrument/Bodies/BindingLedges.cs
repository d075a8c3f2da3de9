using Solidbody.Geometry;

namespace Solidbody.Instrument.Bodies;

/// <summary>The ledges a binding is glued into. They go all round: across the neck pocket's mouth there is no wood to cut, and the strip ends at the pocket's walls.</summary>
internal static class BindingLedges
{
    public static IEnumerable<Ledge> Of(BodyDefinition body, Region plan)
    {
        if (body.Binding is not { } binding) yield break;
        var inside = Offsets.Of(plan, -binding.Width);
        if (inside.IsEmpty) yield break;
        var whole = new Region(inside.SelectMany(r => r.Loops));
        if (binding.Front) yield return new(Name(Side.Front), Side.Front, whole, -binding.Height);
        if (binding.Back) yield return new(Name(Side.Back), Side.Back, whole, -body.Thickness + binding.Height);
    }

    public static string Name(Side side) => side == Side.Front ? "front binding ledge" : "back binding ledge";
}
