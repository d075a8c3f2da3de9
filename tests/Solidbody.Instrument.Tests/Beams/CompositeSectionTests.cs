using CsCheck;
using Solidbody.Instrument.Beams;

namespace Solidbody.Instrument.Tests.Beams;

/// <summary>Worked examples of a maple neck, 43 × 20 mm, figured apart from this code from the same textbook formulas; heights from the back.</summary>
public class CompositeSectionTests
{
    private const double Maple = 12_600, Rosewood = 12_300, Steel = 200_000, Width = 43;

    private static AreaMoments Box(double from, double to) => AreaMoments.Rectangle(Width, from, to);

    [Fact]
    public void Solid_maple()
    {
        Assert.Equal(28666.666667, Box(0, 20).AboutCentroid, 1e-6);
        Assert.Equal(3.612e8, CompositeSection.Of(new Member(Maple, Box(0, 20))).BendingStiffness, 1e-2);
    }

    [Fact] // Back half of an ellipse: half width 21.5, depth 20; heights from the flat down.
    public void Half_an_ellipse()
    {
        var area = AreaMoments.Between(21.5, y => (0, 20 * Math.Sqrt(1 - y * y / (21.5 * 21.5))));
        Assert.Equal(675.442421, area.Area, 1e-6);
        Assert.Equal(8.488264, area.Centroid, 1e-6);
        Assert.Equal(18878.197231, area.AboutCentroid, 1e-6);
    }

    [Fact] // Area R²/2 (2α − sin 2α), α half the angle: a board of radius 254 over its chord.
    public void A_crowned_face()
    {
        var alpha = Math.Asin(21.5 / 254);
        var area = AreaMoments.Between(21.5, y => (0, Math.Sqrt(254 * 254 - y * y) - Math.Sqrt(254 * 254 - 21.5 * 21.5)));
        Assert.Equal(254 * 254 / 2.0 * (2 * alpha - Math.Sin(2 * alpha)), area.Area, 1e-9);
    }

    [Fact] // Rod of 5 mm, its middle 6 mm above the back, in place of wood.
    public void Maple_with_a_steel_rod()
    {
        var rod = AreaMoments.Round(5, 6);
        var section = CompositeSection.Of(new Member(Maple, Box(0, 20) - rod), new Member(Steel, rod));
        Assert.Equal(14515590.3955, section.AxialStiffness, 1e-4);
        Assert.Equal(8.98603080, section.Axis, 1e-8);
        Assert.Equal(4.1089884e8, section.BendingStiffness, 5.0);
        Assert.Equal(1.13759369, section.BendingStiffness / 3.612e8, 1e-8);
        Assert.Equal(0.26283841, Sagitta(section.BendingStiffness), 1e-8);
    }

    [Fact] // 14 mm of maple below 6 mm of rosewood.
    public void Maple_with_a_board()
    {
        var section = CompositeSection.Of(new Member(Maple, Box(0, 14)), new Member(Rosewood, Box(14, 20)));
        Assert.Equal(10758600, section.AxialStiffness, 1e-6);
        Assert.Equal(9.94964029, section.Axis, 1e-8);
        Assert.Equal(3.5714792e8, section.BendingStiffness, 5.0);
    }

    [Fact] // A channel 6 wide, 9 deep below the board: open, and with 6 × 6 of steel on its floor.
    public void Maple_with_a_board_and_a_channel()
    {
        var (wood, board) = (new Member(Maple, Box(0, 14) - AreaMoments.Rectangle(6, 5, 14)), new Member(Rosewood, Box(14, 20)));
        var open = CompositeSection.Of(wood, board);
        Assert.Equal(9.97999643, open.Axis, 1e-8);
        Assert.Equal(3.5240837e8, open.BendingStiffness, 5.0);
        var filled = CompositeSection.Of(wood, board, new Member(Steel, AreaMoments.Rectangle(6, 5, 11)));
        Assert.Equal(9.15491197, filled.Axis, 1e-8);
        Assert.Equal(3.9047276e8, filled.BendingStiffness, 5.0);
    }

    /// <summary>However a section is cut level by level, it bends the same; and where z is counted from does not matter.</summary>
    [Fact]
    public void Stiffness_adds_up() => Gen.Select(Gen.Double[1, 19], Gen.Double[-50, 50], Gen.Double[5_000, 20_000]).Sample((cut, zero, modulus) =>
    {
        var whole = CompositeSection.Of(new Member(modulus, AreaMoments.Rectangle(Width, zero, zero + 20)));
        var parts = CompositeSection.Of(new Member(modulus, AreaMoments.Rectangle(Width, zero, zero + cut)), new Member(modulus, AreaMoments.Rectangle(Width, zero + cut, zero + 20)));
        var expected = modulus * Width * 8000 / 12;
        return Near(whole.BendingStiffness, expected) && Near(parts.BendingStiffness, expected) && Near(whole.Axis - zero, 10) && Near(parts.Axis - zero, 10);
    });

    [Fact] // σ = M c / I on both faces, and N / A: 5400 N mm and 450 N on 43 × 20 mm.
    public void Strain_of_push_and_bending()
    {
        var section = CompositeSection.Of(new Member(Maple, Box(0, 20)));
        Assert.Equal(5400 * 10 / 28666.666667 - 450 / 860.0, Maple * section.Strain(0, 450, 5400), 8);
        Assert.Equal(-5400 * 10 / 28666.666667 - 450 / 860.0, Maple * section.Strain(20, 450, 5400), 8);
    }

    private static double Sagitta(double stiffness) => 5400.0 * 400 * 400 / (8 * stiffness);
    private static bool Near(double a, double b) => Math.Abs(a - b) < 1e-6 * Math.Abs(b);
}
