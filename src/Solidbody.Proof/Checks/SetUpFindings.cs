using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Programs;

namespace Solidbody.Proof.Checks;

/// <summary>Whether a part's set-ups can be true together: one blank that holds the part and lies on the bed, dowels that meet again after a flip.</summary>
internal static class SetUpFindings
{
    /// <summary>What two statements of the same place may differ by, mm: the packet's own rounding and the program's.</summary>
    private const double Same = 2 * Tolerances.Output;

    /// <param name="part">The part as it should be.</param>
    /// <param name="setUps">Its set-ups in their order; at least one.</param>
    public static IEnumerable<Finding> Of(Part part, IReadOnlyList<SetUp> setUps)
    {
        var blank = setUps[0].Blank;
        foreach (var setUp in setUps)
        {
            var apart = Apart(blank, setUp.Blank);
            if (apart > Same) yield return ProofFindings.BlanksDiffer(setUps[0], setUp, apart);
            var bottom = BottomOf(setUp);
            if (Math.Abs(bottom) > Same) yield return ProofFindings.BlankOffTheBed(setUp, bottom);
        }
        var missing = Missing(blank, part.Bounds);
        if (missing > Same) yield return ProofFindings.BlankTooSmall(part.Name, missing);
        foreach (var finding in Meeting(part, setUps)) yield return finding;
    }

    /// <summary>Dowels of one name stand in one hole of the spoilboard, whichever face lies up.</summary>
    private static IEnumerable<Finding> Meeting(Part part, IReadOnlyList<SetUp> setUps)
    {
        var standing = new Dictionary<string, (SetUp SetUp, RegistrationHole Hole)>(StringComparer.Ordinal);
        foreach (var setUp in setUps)
            foreach (var hole in setUp.Registration)
            {
                var inside = hole.Diameter / 2 - part.Outline.SignedDistance(hole.Centre);
                if (inside > 0) yield return ProofFindings.DowelInPart(setUp, hole.Name, inside);
                if (standing.TryAdd(hole.Name, (setUp, hole))) continue;
                var (first, before) = standing[hole.Name];
                var apart = Dowels.OnBed(first, before).DistanceTo(Dowels.OnBed(setUp, hole));
                if (apart > Same) yield return ProofFindings.DowelsApart(first, setUp, hole.Name, apart);
            }
    }

    /// <summary>Work Z of the blank's face that lies down; 0 when it lies on the spoilboard.</summary>
    private static double BottomOf(SetUp setUp) =>
        setUp.Placement.ToWork(new(0, 0, setUp.Placement.Up == Side.Front ? setUp.Blank.Z0 : setUp.Blank.Z1)).Z;

    private static double Apart(Box3 a, Box3 b) =>
        new[] { a.X0 - b.X0, a.Y0 - b.Y0, a.Z0 - b.Z0, a.X1 - b.X1, a.Y1 - b.Y1, a.Z1 - b.Z1 }.Max(Math.Abs);

    /// <summary>How far the part reaches out of its blank.</summary>
    private static double Missing(Box3 blank, Box3 part) =>
        new[] { blank.X0 - part.X0, blank.Y0 - part.Y0, blank.Z0 - part.Z0, part.X1 - blank.X1, part.Y1 - blank.Y1, part.Z1 - blank.Z1 }.Max();
}
