using CsCheck;
using Solidbody.Machining.Toolpaths;

namespace Solidbody.Machining.Tests.Toolpaths;

public class ContactKernelTests
{
    [Fact]
    public void The_wide_kernel_equals_its_plain_statement_bit_for_bit() =>
        Gen.Select(Gen.Int[1, 70], Gen.Int[1, 40], Gen.Float[-5, 75], Gen.Float[-5, 45], Gen.Float[0.1f, 0.4f], Gen.Int[0, 3], Gen.Int[0, 1000])
        .Sample((columns, rows, column, row, cell, kind, seed) =>
        {
            var random = new Random(seed);
            var field = new float[columns * rows];
            foreach (ref var h in field.AsSpan()) h = random.Next(8) == 0 ? float.NegativeInfinity : random.Next(12);   // many equals
            var form = CutterForm.Of(kind switch { 0 => Given.Ball(6), 1 => Given.Tapered(0.8, 0.1, 4), 2 => Given.Flat(5), _ => Given.Ball(2) });
            Assert.Equal(ContactKernel.HighestPlainly(field, columns, column, row, cell, form), ContactKernel.Highest(field, columns, column, row, cell, form));
        });

    /// <summary>The axis is put so that a cell lies on the rim to the last bit, where r² in floats falls on either side of R².</summary>
    [Theory]
    [InlineData(6, 0.3)]
    [InlineData(3, 0.15)]
    [InlineData(3, 0.1)]
    public void A_cell_on_the_rim_of_a_ball_carries_it_at_the_height_of_its_radius(float radius, float cell)
    {
        var form = CutterForm.Of(Given.Ball(2 * radius));
        var field = new float[80 * 80];
        Array.Fill(field, float.NegativeInfinity);
        for (var row = 0; row * cell < radius; row++)
        {
            field[row * 80 + 70] = 5;
            var dy = row * cell;
            var axis = 70 - MathF.Sqrt(radius * radius - dy * dy) / cell;
            foreach (var column in (float[])[MathF.BitDecrement(axis), axis, MathF.BitIncrement(axis)])
            {
                var (height, at) = ContactKernel.Highest(field, 80, column, 0, cell, form);
                if (at >= 0) Assert.Equal(5 - radius, height, 0.1f);
            }
            field[row * 80 + 70] = float.NegativeInfinity;
        }
    }

    [Fact]
    public void The_kernel_allocates_nothing()
    {
        var (field, form) = (new float[10_000], CutterForm.Of(Given.Ball(6)));
        ContactKernel.Highest(field, 100, 50, 50, 0.1f, form);
        var before = GC.GetAllocatedBytesForCurrentThread();
        ContactKernel.Highest(field, 100, 50, 50, 0.1f, form);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }
}
