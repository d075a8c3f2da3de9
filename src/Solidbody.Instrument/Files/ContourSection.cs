using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The tables <c>[body.arm_contour]</c> and <c>[body.belly_contour]</c>; drawn for the offset outline, other outlines want places of their own.</summary>
static class ContourSection
{
    public static ArmContourDefinition? ReadArm(TableReader arm)
    {
        var fitted = arm.Flag("fitted", false, "true lets the front fall away under the arm");
        var definition = new ArmContourDefinition(
            arm.Length("x", 200, 1100, 655, "a point on the middle of the bend, from the nut"),
            arm.Length("y", -250, 250, -98, "from the centre line toward the treble side"),
            arm.Angle("direction", -180, 180, -66, "the way it falls, counter-clockwise from the strings' direction seen from the front"),
            arm.Angle("angle", 2, 30, 14, "of the slope below the front"),
            arm.Length("half_blend", 5, 60, 18, "half the length of the bend"),
            arm.Length("bend_radius", 0, 5000, 900, "of the bend's line in the plan; 0 is straight"));
        if (definition.BendRadius > 0 && definition.BendRadius < LeastBendRadius && arm.IsSound)
            arm.Refuse("bend_radius", $"`body.arm_contour.bend_radius` is {arm.Show(definition.BendRadius)}", $"0, or {arm.Show(LeastBendRadius)} and more", "write 0 for a straight bend: a tighter curve would come round to the body's other side");
        return fitted ? definition : null;
    }

    public static BellyContourDefinition? ReadBelly(TableReader belly)
    {
        var fitted = belly.Flag("fitted", false, "true hollows the back for the player's body");
        var definition = new BellyContourDefinition(
            belly.Length("x", 200, 1100, 492, "a point on the middle of the bend, from the nut"),
            belly.Length("y", -250, 250, -66, "from the centre line toward the treble side"),
            belly.Angle("direction", -180, 180, -94, "the way it deepens, counter-clockwise from the strings' direction seen from the front"),
            belly.Angle("angle", 2, 30, 19, "of the slope into the back"),
            belly.Length("half_blend", 5, 60, 26, "half the length of the bend"),
            belly.Length("window_half", 0, 150, 22, "half the width that keeps the full depth"),
            belly.Length("window_blend", 20, 200, 84, "over which it runs out to both sides of that"));
        return fitted ? definition : null;
    }

    /// <summary>The longest body is well inside a circle of this radius.</summary>
    const double LeastBendRadius = 600;
}
