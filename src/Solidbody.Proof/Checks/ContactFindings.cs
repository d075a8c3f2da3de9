using Solidbody.Findings;
using Solidbody.Instrument;
using Solidbody.Proof.Comparing;
using Solidbody.Proof.Cutting;

namespace Solidbody.Proof.Checks;

/// <summary>What is said of the wood that a program met where it must not.</summary>
internal static class ContactFindings
{
    public static IEnumerable<Finding> Of(CutReport report, CutProgram program, Part part, ColumnField field)
    {
        var namer = new PlaceNamer(part);
        var (file, cutter) = (program.Entry.File, program.Entry.Cutter);
        string Place(Reach r) => namer.Place(field.Grid.Centre(r.Index % field.Stride, r.Index / field.Stride), program.Up);
        bool Past(Contact contact, double limit, out Reach reach) => (reach = report[contact]).Depth > limit;

        if (Past(Contact.Rapid, ProofLimits.Rapid, out var rapid)) yield return ProofFindings.RapidThroughWood(file, rapid.Line, Place(rapid), rapid.Depth);
        if (Past(Contact.AboveFlutes, ProofLimits.Touch, out var above)) yield return ProofFindings.AboveFlutes(file, above.Line, Place(above), above.Depth, cutter.FluteLength);
        if (Past(Contact.Shank, ProofLimits.Touch, out var shank)) yield return ProofFindings.ShankInWood(file, shank.Line, Place(shank), shank.Depth, cutter.FluteLength);
        if (Past(Contact.BesideShank, ProofLimits.Touch, out var beside)) yield return ProofFindings.ShankBesideWood(file, beside.Line, Place(beside), beside.Depth, cutter.FluteLength);
        if (Past(Contact.Middle, ProofLimits.Touch, out var middle)) yield return ProofFindings.Plunged(file, middle.Line, Place(middle), middle.Depth, cutter.Name);
        if (Past(Contact.Collet, ProofLimits.Touch, out var collet)) yield return ProofFindings.ColletInWood(file, collet.Line, Place(collet), collet.Depth, cutter.StickOut);
    }
}
