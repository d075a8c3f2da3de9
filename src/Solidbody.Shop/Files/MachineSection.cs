using Solidbody.Reading;

namespace Solidbody.Shop.Files;

/// <summary>The table <c>[machine]</c>. What the machine is must be given; how programs are written has defaults.</summary>
static class MachineSection
{
    public static Machine Read(TableReader machine)
    {
        var (travel, bed) = (machine.Table("travel"), machine.Table("bed"));
        var (travelX, travelY, travelZ) = (
            travel.Length("x", 100, 5000, null, "of the cutter's tip"),
            travel.Length("y", 100, 5000, null, "of the cutter's tip"),
            travel.Length("z", 30, 1000, null, "of the cutter's tip"));
        var (bedX, bedY) = (
            bed.Length("x", 100, 6000, travelX, "a blank can lie on it; at least the travel"),
            bed.Length("y", 100, 6000, travelY, "a blank can lie on it; at least the travel"));
        if (travel.IsSound && bed.IsSound && bedX < travelX) RefuseBed(bed, "x", bedX, travelX);
        if (travel.IsSound && bed.IsSound && bedY < travelY) RefuseBed(bed, "y", bedY, travelY);

        var spindle = machine.Table("spindle");
        var (least, most) = (
            spindle.Turning("slowest", 100, 60000, null, "least turns a minute under load"),
            spindle.Turning("fastest", 100, 60000, null, "most turns a minute"));
        if (spindle.IsSound && least > most)
            spindle.Refuse("slowest", "the slowest spindle speed is above the fastest", "slowest ≤ fastest", "swap the two, or mend one");

        var changer = machine.Flag("tool_changer", false, "whether it changes cutters by itself; without, one program per cutter");
        var offsets = machine.Flag("length_offsets", false, "with a changer: whether programs take a cutter's length from the controller's table (G43)");
        if (offsets && !changer) machine.Refuse("length_offsets", "there is no changer whose cutters have lengths in a table", "false", "take it out, or say `tool_changer = true`");

        var feed = PerAxis(machine.Table("feed"), (table, axis) => table.Speed(axis, 50, 30000, null, $"fastest cutting feed of the {axis.ToUpperInvariant()} axis"));
        var rapid = PerAxis(machine.Table("rapid"), (table, axis) => table.Speed(axis, 50, 60000, null, $"rapid of the {axis.ToUpperInvariant()} axis"));
        var acceleration = PerAxis(machine.Table("acceleration"), (table, axis) => table.Acceleration(axis, 10, 20000, null, $"of the {axis.ToUpperInvariant()} axis"));
        return new Machine
        {
            TravelX = travelX,
            TravelY = travelY,
            TravelZ = travelZ,
            BedX = bedX,
            BedY = bedY,
            SpoilboardAllowance = machine.Length("spoilboard_allowance", 0, 5, 0.3, "how deep a cutter may go into the spoilboard"),
            SpindleSpeedLeast = least,
            SpindleSpeedMost = most,
            SpindlePower = spindle.Power("power", 50, 15000, null, "at the cutter"),
            FeedMostXY = Math.Min(feed.X, feed.Y),
            FeedMostZ = feed.Z,
            RapidXY = Math.Min(rapid.X, rapid.Y),
            RapidZ = rapid.Z,
            AccelerationXY = Math.Min(acceleration.X, acceleration.Y),
            AccelerationZ = acceleration.Z,
            Arcs = machine.Flag("arcs", true, "whether its controller takes arcs (G2, G3)"),
            ToolChanger = changer,
            LengthOffsets = offsets,
            DrillingCycles = machine.Flag("drilling_cycles", false, "whether its controller takes drilling cycles (G81, G83)"),
            AirWord = machine.Choice("chip_air", [("none", (int?)null), ("M7", 7), ("M8", 8)], "none", "the word that turns air at the cutter on; M9 turns it off"),
            SpindleWait = spindle.Count("wait", 1, 60, 3, "seconds a program waits for it to reach its speed"),
            Terse = machine.Flag("terse", false, "programs without blanks between words, and without zeros before a point"),
            LongestProgram = (int?)(1000 * machine.NumberIfGiven("longest_program", 20, 100_000, "what its controller holds, thousands of characters; longer programs are divided")),
            Decimals = machine.Count("decimals", 2, 5, 3, "of coordinates in millimetres; inch programs get one more"),
            Inches = machine.Choice("program_units", [("mm", false), ("in", true)], "mm", "unit of the programs"),
            LineNumbers = machine.Flag("line_numbers", false, "whether program lines are numbered (N words)"),
            Comments = machine.Flag("comments", true, "whether its controller takes comments in parentheses"),
            SideForce = machine.Force("side_force", 20, 5000, 150, "push sideways at the cutter that its axes take without giving way"),
            ColletDiameter = machine.Length("collet_nut", 8, 80, 26, "diameter of the collet nut, for clearance"),
        };
    }

    static (double X, double Y, double Z) PerAxis(TableReader table, Func<TableReader, string, double> read) => (read(table, "x"), read(table, "y"), read(table, "z"));

    static void RefuseBed(TableReader bed, string axis, double have, double travel) =>
        bed.Refuse(axis, $"the bed is {bed.Show(have)} along {axis.ToUpperInvariant()}, the travel {bed.Show(travel)}", $"at least {bed.Show(travel)}", "give the bed the cutter can reach over, or less travel");
}
