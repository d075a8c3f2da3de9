using System.Globalization;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Programs;
using Solidbody.Proof.Comparing;
using Solidbody.Proof.Cutting;

namespace Solidbody.Proof.Checks;

/// <summary>Whether the dowel holes that carry a flip are cut through the blank where the packet says.</summary>
internal static class RegistrationFindings
{
    /// <summary>How near to the face that lies down the hole is measured, mm.</summary>
    private const double FromFace = 0.1;

    /// <remarks>Measured in the middle and at the face that lies down, as the set-up that bores them leaves the wood: later ones may cut the face away.</remarks>
    public static IEnumerable<Finding> Of(IReadOnlyList<SetUp> setUps, IReadOnlyList<CutProgram> programs)
    {
        foreach (var (setUp, hole) in setUps.SelectMany(s => s.Registration.Select(h => (SetUp: s, Hole: h))).DistinctBy(h => h.Hole.Name))
        {
            var (blank, search) = (setUp.Blank, hole.Diameter);
            var calipers = new CaliperTaker([.. programs.Where(p => p.SetUp == setUp)], blank);
            var down = setUp.Placement.Up == Side.Front ? blank.Z0 + FromFace : blank.Z1 - FromFace;
            foreach (var z in (double[])[(blank.Z0 + blank.Z1) / 2, down])
            {
                var figure = Wrong(hole, z, search, calipers);
                if (figure is null) continue;
                yield return ProofFindings.DowelNotBored(setUp, hole.Name, figure, hole.Diameter);
                break;
            }
        }
    }

    private static string? Wrong(RegistrationHole hole, double z, double search, CaliperTaker calipers)
    {
        foreach (var along in (Point2[])[new(1, 0), new(0, 1)])
        {
            var (width, off) = calipers.Room(hole.Centre, along, search, z);
            if (double.IsNaN(width)) return "no hole of that width there";
            if (Math.Abs(off) > ProofLimits.Dowel) return string.Create(CultureInfo.InvariantCulture, $"its middle {Math.Abs(off):0.00#} mm off");
            if (Math.Abs(width - hole.Diameter) > ProofLimits.Dowel) return string.Create(CultureInfo.InvariantCulture, $"{width:0.00#} mm wide");
        }
        return null;
    }
}
