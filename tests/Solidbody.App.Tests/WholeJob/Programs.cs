using Solidbody.Programs;

namespace Solidbody.App.Tests.WholeJob;

/// <summary>What holds for every program of every job.</summary>
internal static class Programs
{
    /// <summary>Resolution of the text, mm.</summary>
    private const double Rounding = 0.001;

    public static void StayInside(Job job)
    {
        foreach (var setUp in job.Made.SetUps)
            foreach (var entry in setUp.Programs)
            {
                var read = ProgramReader.Read(job.Made.Texts[entry.File], entry.File).Good;
                var (b, t) = (read.Bounds!.Value, setUp.Travel);
                Assert.True(b.X0 >= t.X0 - Rounding && b.X1 <= t.X1 + Rounding && b.Y0 >= t.Y0 - Rounding && b.Y1 <= t.Y1 + Rounding
                    && b.Z0 >= t.Z0 - Rounding && b.Z1 <= t.Z1 + Rounding, $"{entry.File}: {b} in {t}");
                Assert.All(read.Motions.Where(m => m.To.Z < -setUp.BedAllowance - Rounding), m => Assert.Contains(setUp.Registration, r =>
                    setUp.Placement.ToWork(new(r.Centre.X, r.Centre.Y, 0)).Plan.DistanceTo(m.To.Plan) < Rounding && m.To.Z >= -r.Depth - Rounding));
            }
    }
}
