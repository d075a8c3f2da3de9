using Solidbody.Geometry;
using Solidbody.Instrument;

namespace Solidbody.Proof.Comparing;

/// <summary>How much wood may be left where: ridges are allowed only where a ball-end carves.</summary>
internal sealed class LeftoverLimit(Part part, double scallop)
{
    public double At(Point2 p, Side face)
    {
        var finish = face == Side.Front ? part.FrontFinish : part.BackFinish;
        var carved = (finish != FaceFinish.AsPlaned || part.CarvedZones.Any(z => z.From == face && z.Region.Contains(p)))
            && !part.Flats.Any(f => f.From == face && f.Region.Contains(p))
            && !part.Pockets.Any(k => k.From == face && k.Region.Contains(p));
        return carved ? ProofLimits.Leftover + scallop : ProofLimits.Leftover;
    }
}
