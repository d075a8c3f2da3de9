using CsCheck;
using Solidbody.Geometry;
using Solidbody.Machining.Toolpaths;

namespace Solidbody.Machining.Tests.Toolpaths;

public class LineKernelTests
{
    /// <summary>Every form whose height grows with the radius: balls, tapered balls, flats, a drill's cone.</summary>
    private static readonly Gen<Cutter> Cutters = Gen.Select(Gen.Int[0, 3], Gen.Double[2, 14]).Select((kind, d) => kind switch
    {
        0 => Given.Ball(d),
        1 => Given.Tapered(0.25 * d, 0.1, d),
        2 => Given.Flat(d),
        _ => Given.Flat(d) with { Kind = CutterKind.Drill, Angle = 2 },
    });

    /// <summary>Noise of every roughness on an arc or a slope, equals in plenty, and holes.</summary>
    private static float[] Field(Random random, int columns, int rows)
    {
        var (noise, arc, tilt, holes) = (random.Next(4) switch { 0 => 0f, 1 => 0.02f, 2 => 0.5f, _ => 5f }, random.NextSingle() * 0.02f, random.NextSingle() - 0.5f, random.Next(5));
        var steps = random.Next(3) == 0;
        var field = new float[columns * rows];
        for (var i = 0; i < field.Length; i++)
        {
            var (c, r) = (i % columns, i / columns - rows / 2);
            var height = noise * random.NextSingle() - arc * r * r * 0.1f + tilt * 0.1f * c;
            field[i] = holes > 0 && random.Next(2 * holes) == 0 ? float.NegativeInfinity : steps ? MathF.Round(height) : height;
        }
        return field;
    }

    [Fact]
    public void The_pruned_kernel_equals_its_plain_statement_bit_for_bit() =>
        Gen.Select(Cutters, Gen.Int[1, 150], Gen.Int[1, 100], Gen.Float[0.12f, 0.6f], Gen.Float[0, 0.999f], Gen.Float[0, 0.999f], Gen.Int[0, 100_000])
        .Sample((cutter, columns, rows, cell, column, row, seed) =>
        {
            var random = new Random(seed);
            var field = Field(random, columns, rows);
            var form = CutterForm.Of(cutter);
            var stamp = new CutterStamp(form, cell, column, row);
            var pyramid = new HeightPyramid(field, columns, stamp.Reach);
            for (var line = 0; line < 3; line++)
            {
                var (r, first) = (random.Next(rows), random.Next(columns));
                var (tips, plain) = (new float[random.Next(columns - first + 1)], new float[columns]);
                LineKernel.Rest(pyramid, stamp, r, first, tips);
                LineKernel.RestPlainly(field, columns, stamp, r, first, plain.AsSpan(0, tips.Length));
                for (var i = 0; i < tips.Length; i++)
                    Assert.True(tips[i].Equals(plain[i]), $"{tips[i]} for {plain[i]} at {i} of {tips.Length} from ({first}, {r}), {cutter.Kind} {cutter.Diameter}");
            }
        }, iter: 400);

    [Fact] // Another road to the same number: the kernel that measures every distance anew.
    public void A_line_rests_where_single_samples_rest() =>
        Gen.Select(Cutters, Gen.Float[0, 0.999f], Gen.Float[0, 0.999f], Gen.Int[0, 100_000])
        .Sample((cutter, column, row, seed) =>
        {
            const int columns = 120, rows = 90;
            const float cell = 0.25f;
            var field = Field(new(seed), columns, rows);
            // The rim in floats: a cell on it may count in one kernel and not in the other. The axis lies where no cell is near the rim.
            var form = CutterForm.Of(cutter);
            var stamp = new CutterStamp(form, cell, column, row);
            if (NearRim(form, stamp, cell, column, row)) return;
            var tips = new float[columns];
            LineKernel.Rest(new(field, columns, stamp.Reach), stamp, rows / 2, 0, tips);
            for (var c = 0; c < columns; c++)
            {
                var alone = ContactKernel.Highest(field, columns, c + column, rows / 2 + row, cell, form).Height;
                Assert.Equal(alone, tips[c], 2e-3f);
            }
        }, iter: 60);

    private static bool NearRim(CutterForm form, CutterStamp stamp, float cell, float column, float row)
    {
        for (var r = -stamp.Reach; r <= stamp.Reach; r++)
            for (var c = -stamp.Reach; c <= stamp.Reach; c++)
                if (Math.Abs(Math.Sqrt(Math.Pow((c - column) * cell, 2) + Math.Pow((r - row) * cell, 2)) - form.Radius) < 1e-3) return true;
        return false;
    }

    [Fact]
    public void The_kernel_allocates_nothing()
    {
        var stamp = new CutterStamp(CutterForm.Of(Given.Ball(6)), 0.1f, 0.25f, 0.5f);
        var (field, tips) = (new HeightPyramid(new float[10_000], 100, stamp.Reach), new float[100]);
        LineKernel.Rest(field, stamp, 50, 0, tips);
        var before = GC.GetAllocatedBytesForCurrentThread();
        LineKernel.Rest(field, stamp, 50, 0, tips);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    [Fact]
    public void Samples_off_the_field_are_refused()
    {
        var stamp = new CutterStamp(CutterForm.Of(Given.Ball(2)), 0.5f, 0, 0);
        var field = new HeightPyramid(new float[200], 20, stamp.Reach);
        Assert.Throws<ArgumentOutOfRangeException>(() => LineKernel.Rest(field, stamp, 10, 0, new float[1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => LineKernel.Rest(field, stamp, 0, 15, new float[6]));
        Assert.Throws<ArgumentOutOfRangeException>(() => LineKernel.Rest(field, stamp, -1, 0, new float[1]));
    }
}
