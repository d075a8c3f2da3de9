using System.Globalization;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument.Necks;
using Solidbody.Instrument.Playing;
using Solidbody.Materials;

namespace Solidbody.Instrument.Checks;

/// <summary>What can be wrong with shaft, rod and heel.</summary>
public static class NeckFindings
{
    public static Finding UnknownProfile(string name) =>
        new("NECK-01", Severity.Stops, "neck", $"profile {name}", string.Join(", ", NeckProfile.All.Select(p => p.Name)), Limits.OwnFile, "choose one of these profiles.") { Title = "the neck's profile is unknown" };

    public static Finding TooThin(int fret, double thickness, double least) =>
        new("NECK-02", Severity.Stops, $"neck at fret {fret}", $"{Say.Mm(thickness)} with the board", Say.AtLeast(least), Limits.OwnShapes, $"raise the thickness at fret {fret}, or take a thinner board or lip.") { Title = "the neck is thinner than its board and lip" };

    public static Finding NoShaft(double from, double least) =>
        new("NECK-03", Severity.Stops, "neck", $"the heel's blend begins at x {Say.Mm(from)}", Say.AtLeast(least), Limits.OwnShapes, "shorten the heel or its blend.") { Title = "heel and headstock run into each other" };

    public static Finding BlendAtFret12(double from, double fret12) =>
        new("NECK-04", Severity.Warns, "neck", $"the heel's blend begins at x {Say.Mm(from)}", $"beyond fret 12 at x {Say.Mm(fret12)}", Limits.Practice, "shorten the heel or its blend; the thickness at fret 12 is not measured.") { Title = "the heel begins before fret 12" };

    public static Finding HollowTooTight(Point2 at, double radius) =>
        new("NECK-05", Severity.Warns, $"back of the neck at {Say.At(at)}", $"hollow of radius {Say.Mm(radius)}", Say.AtLeast(Limits.HollowRadius), Limits.OwnShapes, "lengthen the heel's blend, or lessen the volute or the headstock's drop.") { Title = "a hollow is too tight for a ball-end" };

    public static Finding RodCover(Point2 at, double cover, double least) =>
        new("ROD-01", Severity.Stops, $"neck at {Say.At(at)}", $"{Say.Mm(cover)} of wood under the rod channel", Say.AtLeast(least), Limits.OwnFile, "thicken the neck, or take a shallower rod.") { Title = "the rod channel comes too near the neck's back" };

    public static Finding RodAtHeelEnd(double left) =>
        new("ROD-02", Severity.Stops, "neck, end of the heel", $"{Say.Mm(left)} from the rod channel to the heel's end", Say.AtLeast(Limits.RodToHeelEnd), Limits.Practice, "end the channel sooner.") { Title = "the rod channel breaks out of the heel" };

    public static Finding RodWithoutAccess(double start, double access) =>
        new("ROD-03", Severity.Warns, "neck, behind the nut", $"the channel begins at x {Say.Mm(start)}", $"in the access, before x {Say.Mm(access)}", Limits.OwnFile, "start the channel further toward the head, or leave the access out.") { Title = "the rod's adjuster cannot be reached" };

    public static Finding ScrewTooLong(double left) =>
        new("SCREW-01", Severity.Stops, "neck, heel screws", $"{Say.Mm(left)} of wood beyond the pilots' tips", Say.AtLeast(Limits.BeyondScrew), Limits.Practice, "lessen the pilot depth, or thicken the heel.") { Title = "the neck's screws come through the heel" };

    public static Finding ScrewAtRod(Point2 at, double gap) =>
        new("SCREW-02", Severity.Stops, $"neck, heel screw at {Say.At(at)}", $"{Say.Mm(gap)} from pilot to rod channel", Say.AtLeast(Limits.HoleToRoom), Limits.Practice, "set the screws further apart, or end the channel sooner.") { Title = "a neck screw meets the rod" };

    public static Finding ScrewOffHeel(Point2 at, double gap) =>
        new("SCREW-03", Severity.Stops, $"neck, heel screw at {Say.At(at)}", $"{Say.Mm(gap)} from pilot to the heel's side", Say.AtLeast(Limits.ScrewToSide), Limits.Practice, "set the screws closer together, or further from the end.") { Title = "a neck screw is too near the heel's side" };

    public static Finding TunerOnBlend(int tuner, double off) =>
        new("NECK-06", Severity.Warns, $"back of the headstock, tuner {tuner}", $"{Say.Mm(off)} off the level back under its hole", Say.AtMost(Limits.TunerSeat), Limits.Practice, "move the first post out, or take a shorter volute nearer to the nut.") { Title = "a tuner does not sit level" };

    public static Finding TipNearGluePlane(double left) =>
        new("SCREW-04", Severity.Stops, "neck, heel screws", $"{Say.Mm(left)} from the tips to the glue plane", Say.AtLeast(Limits.BeyondScrew), Limits.Practice, "take shorter screws, a deeper plate or ferrule, or a thicker heel.") { Title = "the neck's screws reach the fretboard" };

    public static Finding ShortBite(double thread) =>
        new("SCREW-05", Severity.Warns, "neck, heel screws", $"{Say.Mm(thread)} of thread in the heel", Say.AtLeast(Limits.ScrewBite), Limits.Practice, "take longer screws.") { Title = "the neck's screws hardly bite" };

    public static Finding WeakHold(NeckScrewHold hold)
    {
        ArgumentNullException.ThrowIfNull(hold);
        return new("SCREW-06", Severity.Warns, "neck, heel screws", string.Create(CultureInfo.InvariantCulture, $"{hold.Most:0} N pull on each front screw, {hold.Ultimate:0} N pull one out: {hold.Safety:0.0} times over"),
            string.Create(CultureInfo.InvariantCulture, $"at least {WoodScrews.UltimateToAllowable:0.0} times over"), "ultimate over allowable withdrawal, Wood Handbook chapter 8, from memory", "take longer or thicker screws, set the rows further apart, or choose a denser wood for the neck.")
        { Title = "the neck's screws hold too little" };
    }

    public static Finding PlateOffFlat(double edge, double least) =>
        new("SCREW-07", Severity.Warns, "body's back, neck plate", $"{Say.Mm(edge)} from a corner of the plate to the body's edge", $"{Say.AtLeast(least)}, where the back is flat", Limits.OwnFile, "take a shorter plate, a smaller edge behind, or move the screws.") { Title = "the neck plate does not lie flat" };

    public static Finding ShallowPilot(double thread, double pilot) =>
        new("SCREW-08", Severity.Warns, "neck, heel screws", $"{Say.Mm(thread)} of thread in a pilot {Say.Mm(pilot)} deep", "a pilot as deep as the screw goes", Limits.Practice, "drill the pilots deeper, or take shorter screws: they split or strip the heel.") { Title = "the neck's screws go deeper than their pilots" };
}
