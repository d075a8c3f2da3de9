using CsCheck;
using Solidbody.Geometry;
using Solidbody.Machining.Making;
using Solidbody.Programs;

namespace Solidbody.Machining.Tests.Making;

/// <summary>A divided program cuts what the whole one cuts, in the same order, and every piece fits.</summary>
public class ProgramDivisionTests
{
    private const double Clearance = 40, Plunge = 7;
    private static readonly ProgramStyle Style = new();

    private static readonly Gen<(double X, double Y, double Z, int Kind)[]> Steps =
        Gen.Select(Gen.Double[0, 300], Gen.Double[0, 300], Gen.Double[1, 30], Gen.Int[0, 30]).Array[100, 600];

    /// <summary>Long runs of lines, now and then a way over clearance, over two sections.</summary>
    private static ProgramDraft Draft((double X, double Y, double Z, int Kind)[] steps)
    {
        var sections = new[] { new List<Motion>(), new List<Motion>() };
        var at = new WorkPoint(0, 0, Clearance);
        for (var i = 0; i < steps.Length; i++)
        {
            var (x, y, z, kind) = steps[i];
            var own = sections[i < steps.Length / 2 ? 0 : 1];
            void Go(MotionKind how, WorkPoint to)
            {
                own.Add(new(how, at, to, default, how == MotionKind.Rapid ? 0 : 20));
                at = to;
            }
            if (kind == 0)
            {
                Go(MotionKind.Rapid, at with { Z = Clearance });
                Go(MotionKind.Rapid, new(x, y, Clearance));
            }
            Go(MotionKind.Line, new(x, y, z));
        }
        sections[1].Add(new(MotionKind.Rapid, at, at with { Z = Clearance }, default, 0));
        return new()
        {
            Header = new("neck", "4, Neck, back up: long", "ball-end", "first dowel", ProgramHeader.UsualCaution),
            ClearanceHeight = Clearance,
            SpindleSpeed = 300,
            Sections = [new("rough", sections[0]), new("finish", sections[1])],
        };
    }

    [Fact]
    public void Every_piece_fits_starts_and_ends_at_clearance_and_nothing_is_lost() => Steps.Select(Gen.Int[1500, 6000]).Sample((steps, most) =>
    {
        var draft = Draft(steps);
        var pieces = new ProgramDivision(draft, Style, Plunge).Into(most);
        var cut = new List<Motion>();
        foreach (var piece in pieces)
        {
            var text = ProgramWriter.Write(draft with { Sections = piece }, Style);
            Assert.InRange(text.Length, 1, most);
            Assert.True(ProgramReader.Read(text, "t.nc").IsGood);
            var motions = piece.SelectMany(s => s.Motions).ToList();
            Assert.Equal(Clearance, motions[0].From.Z);
            Assert.Equal(Clearance, motions[^1].To.Z);
            cut.AddRange(motions);
        }
        // Without the ways down to where it was and up again, the motions are the whole program's, one by one.
        var whole = draft.Sections.SelectMany(s => s.Motions).ToList();
        Assert.Equal(whole.Where(IsCut), cut.Where(m => IsCut(m) && m.Feed != Plunge));
        Assert.All(cut.Where(m => m.Feed == Plunge), m => Assert.True(m.From.Plan == m.To.Plan && m.To.Z < m.From.Z));
        // No more pieces than the text needs, within the share given away for a better place.
        Assert.InRange(pieces.Length, 1, 2 + (int)(ProgramWriter.Write(draft, Style).Length / (0.6 * (most - 700))));
    }, iter: 60);

    private static bool IsCut(Motion m) => m.Kind != MotionKind.Rapid;

    [Fact]
    public void A_program_that_fits_stays_whole()
    {
        var draft = Draft([(1, 1, 5, 0), (2, 5, 5, 1), (9, 9, 5, 1)]);
        Assert.Equal(draft.Sections.Select(s => s.Title), Assert.Single(new ProgramDivision(draft, Style, Plunge).Into(100_000)).Select(s => s.Title));
    }
}
