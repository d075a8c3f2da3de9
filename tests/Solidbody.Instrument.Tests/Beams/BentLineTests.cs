using System.Collections.Immutable;
using CsCheck;
using Solidbody.Instrument.Beams;

namespace Solidbody.Instrument.Tests.Beams;

/// <summary>Deflection factors k in k P L³ / EI: Wood Handbook FPL-GTR-190, table 9-1 (p. 9-2), read; end moments as Roark has them, from memory.
/// Worked figures of the maple beam 43 × 20 × 400 mm, EI 3.612e8, were figured apart from this code.</summary>
public class BentLineTests
{
    private const double L = 400, EI = 3.612e8, P = 50;

    /// <summary>Held at x = L; a beam on two supports is the same line seen from the straightedge over them.</summary>
    private static BentLine Bent(Func<double, double> moment, int steps = 40)
    {
        ImmutableArray<double> x = [.. Enumerable.Range(0, steps + 1).Select(i => L * i / steps)];
        return new(x, [.. x.Select(p => moment(p) / EI)]);
    }

    [Fact]
    public void A_cantilever_with_an_end_load()
    {
        Assert.Equal(P * L * L * L / (3 * EI), Bent(x => P * x).At(0), 12);
        Assert.Equal(2.95311923, Bent(x => P * x).At(0), 1e-8);
    }

    [Fact]
    public void A_cantilever_with_an_even_load()
    {
        Assert.Equal(P * L * L * L / (8 * EI), Bent(x => P * x * x / (2 * L), 4000).At(0), 1e-6);
        Assert.Equal(1.10741971, Bent(x => P * x * x / (2 * L), 4000).At(0), 1e-6);
    }

    [Fact]
    public void A_beam_on_two_supports_with_a_load_in_the_middle()
    {
        var bent = Bent(x => P / 2 * Math.Min(x, L - x));
        Assert.Equal(P * L * L * L / (48 * EI), bent.Hollow(0, L, L / 2), 12);
        Assert.Equal(0.18456995, bent.Hollow(0, L, L / 2), 1e-8);
    }

    [Fact]
    public void A_beam_on_two_supports_with_an_even_load() =>
        Assert.Equal(0.11535622, Bent(x => P / (2 * L) * x * (L - x), 4000).Hollow(0, L, L / 2), 1e-6);

    [Fact] // Ends held: end moments P L / 12 of the other sign; 1/384.
    public void A_beam_held_at_both_ends_with_an_even_load() =>
        Assert.Equal(P * L * L * L / (384 * EI), Bent(x => P / (2 * L) * x * (L - x) - P * L / 12, 4000).Hollow(0, L, L / 2), 1e-6);

    [Fact] // Ends held: end moments P L / 8; 1/192.
    public void A_beam_held_at_both_ends_with_a_load_in_the_middle() =>
        Assert.Equal(P * L * L * L / (192 * EI), Bent(x => P / 2 * Math.Min(x, L - x) - P * L / 8).Hollow(0, L, L / 2), 12);

    [Fact] // Half the load at each quarter point; 11/768 in the middle.
    public void A_beam_on_two_supports_with_loads_at_the_quarters() =>
        Assert.Equal(11.0 / 768 * P * L * L * L / EI, Bent(x => P / 2 * Math.Min(Math.Min(x, L - x), L / 4)).Hollow(0, L, L / 2), 12);

    [Fact] // 450 N, 12 mm above the axis: 5400 N mm all along.
    public void A_neck_under_an_even_moment()
    {
        var bent = Bent(_ => 5400);
        Assert.Equal(1.19601329, bent.At(0), 1e-8);
        Assert.Equal(0.29900332, bent.Hollow(0, L, L / 2), 1e-8);
        Assert.Equal(0.005980066, bent.At(-1) - bent.At(0), 1e-9);
    }

    /// <summary>A hollow of s over a chord c is an arc of radius c²/(8 s) + s/2: 0.25 mm over 400 mm is 80000.125 mm.</summary>
    [Fact]
    public void An_even_curvature_is_an_arc() =>
        Assert.Equal(0.25, Bent(_ => EI / 80000.125).Hollow(0, L, L / 2), 1e-6);

    [Fact]
    public void Lifts_of_load_cases_add() => Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[0, L]).Sample((a, b, at) =>
        Math.Abs(Bent(x => a * P * x + b * 5400).At(at) - a * Bent(x => P * x).At(at) - b * Bent(_ => 5400).At(at)) < 1e-9);

    [Fact]
    public void Beyond_the_hold_nothing_moves() => Assert.Equal(0, Bent(_ => 5400).At(L + 50));

    [Fact]
    public void Between_the_nodes_it_is_as_exact_as_on_them() => Gen.Double[0, L].Sample(at =>
        Math.Abs(Bent(x => P * x, 3).At(at) - Bent(x => P * x, 400).At(at)) < 1e-9);
}
