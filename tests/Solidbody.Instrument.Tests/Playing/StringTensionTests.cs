using CsCheck;
using Solidbody.Instrument.Playing;

namespace Solidbody.Instrument.Tests.Playing;

public class StringTensionTests
{
    private const double Scale = 647.7;

    private static StringTension At(double gauge, int note, double scale = Scale, double? mass = null, double? core = null) =>
        new StringDefinition(new(note), gauge, mass, core) is var s ? new(1, s, StringPull.Of(s, scale, 440)) : null!;

    /// <summary>Plain steel at 25.5 in, T = μ (2 L f)² with 7850 kg/m³, worked out apart from this code; strength from the A228 table, 0.017 in between two rows.</summary>
    [Theory]
    [InlineData(.009, "E4", 3.2218995e-4, 58.74444, 1431.280, 2709.6, 0.5282, 111.213)]
    [InlineData(.010, "E4", 3.9776537e-4, 72.52401, 1431.280, 2668.3, 0.5364, 135.203)]
    [InlineData(.011, "E4", 4.8129610e-4, 87.75405, 1431.280, 2633.8, 0.5434, 161.482)]
    [InlineData(.011, "B3", 4.8129610e-4, 49.25029, 803.278, 2633.8, 0.3050, 161.482)]
    [InlineData(.012, "B3", 5.7278213e-4, 58.61192, 803.278, 2599.3, 0.3090, 189.662)]
    [InlineData(.013, "B3", 6.7222348e-4, 68.78760, 803.278, 2571.7, 0.3123, 220.228)]
    [InlineData(.014, "B3", 7.7962013e-4, 79.77733, 803.278, 2544.2, 0.3157, 252.673)]
    [InlineData(.016, "G3", 1.0182793e-3, 65.64124, 506.034, 2495.9, 0.2027, 323.761)]
    [InlineData(.017, "G3", 1.1495419e-3, 74.10280, 506.034, 2475.2, 0.2044, 362.467)]
    [InlineData(.018, "G3", 1.2887598e-3, 83.07719, 506.034, 2454.5, 0.2062, 402.969)]
    public void A_plain_string_at_pitch(double inches, string note, double mass, double tension, double stress, double least, double share, double load)
    {
        var s = At(inches * 25.4, NoteName.Read(note)!.Value.Number);
        Assert.Equal(mass, s.Pull.UnitMass, mass * 1e-7);
        Assert.Equal(tension, s.Pull.Tension, 5e-6 + 1e-5);
        Assert.Equal(stress, s.Pull.Stress!.Value, 5e-4 + 1e-4);
        Assert.Equal(least, s.Strength!.Value.Least, 0.0501);
        Assert.Equal(share, s.Share!.Value, 5.1e-5);
        Assert.Equal(load, s.BreakLoad!.Value, 6e-4);
    }

    /// <summary>Worked out apart from this code from the least strengths of the A228 table.</summary>
    [Theory, InlineData(.009, 453.5415, 5.5248), InlineData(.010, 450.0660, 5.3916)]
    public void The_pitch_at_which_it_breaks(double inches, double pitch, double semitones)
    {
        var s = At(inches * 25.4, 64);
        Assert.Equal(pitch, s.BreakPitch!.Value, 1e-4);
        Assert.Equal(semitones, s.SemitonesToBreak!.Value, 1e-4);
    }

    /// <summary>σ = ρ (2 L f)², worked out apart from this code.</summary>
    [Theory, InlineData(24.75, 1348.3248), InlineData(25, 1375.7012), InlineData(25.5, 1431.2795)]
    public void Stress_of_plain_steel_does_not_hang_on_the_gauge(double scale, double stress) =>
        Gen.Double[0.2, 0.7].Sample(gauge => Math.Abs(At(gauge, 64, scale * 25.4).Pull.Stress!.Value - stress) < 1e-4);

    /// <summary>An octave is twice the pitch: four times the pull.</summary>
    [Fact]
    public void The_pull_grows_with_the_square_of_pitch_and_length() => Gen.Select(Gen.Double[0.2, 0.7], Gen.Int[28, 60], Gen.Double[500, 450 + 450]).Sample((gauge, note, scale) =>
    {
        var t = At(gauge, note, scale).Pull.Tension;
        return Near(At(gauge, note + 12, scale).Pull.Tension, 4 * t) && Near(At(gauge, note, 2 * scale).Pull.Tension, 4 * t) && Near(At(2 * gauge, note, scale).Pull.Tension, 4 * t);
    });

    /// <summary>The inch form, T[lbf] = UW[lb/in] (2 L f)² / 386.4: 0.00002215 lb/in at E4 on 25.5 in pulls 16.20033 lbf (unit weight from memory; 386.4 in/s² is rounded from 386.0886).</summary>
    [Fact]
    public void The_inch_form_gives_the_same_pull()
    {
        var t = At(0.254, 64, mass: 0.00002215 * 17.857967322834645).Pull.Tension / 4.4482216152605;
        Assert.Equal(16.20033, t * 386.08858267716535 / 386.4, 5e-5);
    }

    [Fact]
    public void A_wound_string_is_as_strong_as_its_core()
    {
        var s = At(1.1684, 40, mass: 0.0068, core: 0.4064);
        Assert.Equal(s.Pull.Tension / (Math.PI / 4 * 0.4064 * 0.4064), s.Pull.Stress!.Value, 9);
        Assert.Equal(At(0.4064, 55).Strength, s.Strength);
        Assert.Null(At(1.1684, 40, mass: 0.0068).Share);
        Assert.Null(At(1.1684, 40, mass: 0.0068).WholeTone);
    }

    /// <summary>The bend, followed the other way: pushed that far, the string is longer by that much, pulls that much harder, and sounds two semitones higher; the push holds both halves' pull aslant.</summary>
    [Theory, InlineData(0.2286, 64), InlineData(0.3302, 59), InlineData(0.4318, 55)]
    public void A_whole_tone_of_bend_followed_back(double gauge, int note)
    {
        var s = At(gauge, note);
        var (way, push) = (s.WholeTone!.Way, s.WholeTone.Push);
        var half = Math.Sqrt(Scale * Scale / 4 + way * way);
        var pull = s.Pull.Tension + 203_000 * s.Pull.Area!.Value * (2 * half / Scale - 1);
        Assert.Equal(2, 6 * Math.Log2(pull / s.Pull.Tension), 6);
        Assert.Equal(2 * pull * way / half, push, 6);
    }

    /// <summary>A light push at the middle yields L/(4T): the slope of the same statics at no deflection.</summary>
    [Fact]
    public void A_light_push_yields_a_quarter_of_length_over_pull()
    {
        var s = At(0.254, 64);
        const double way = 0.01;
        var push = 2 * s.Pull.Tension * way / (Scale / 2);
        Assert.Equal(way / push, s.Yield, 9);
    }

    [Fact]
    public void The_feel_of_the_band_guitars_strings()
    {
        var strings = StringTension.All(Workshop.Strung);
        var feel = Feel.Of(strings)!;
        Assert.Equal(strings.Sum(s => s.Pull.Tension), feel.Total, 9);
        Assert.All(strings, s => Assert.InRange(s.Pull.Tension, feel.Loosest.Pull.Tension, feel.Tightest.Pull.Tension));
        Assert.Equal(feel.Tightest.Pull.Tension / feel.Loosest.Pull.Tension, feel.TensionSpread, 12);
        // Six strings of a light set pull 400 to 500 N together: common practice, no source.
        Assert.InRange(feel.Total, 400, 500);
        Assert.Null(Feel.Of([]));
    }

    /// <summary>A semitone is 2^(1/12) in pitch, 2^(2/12) in pull: the total follows it, whatever the strings.</summary>
    [Fact]
    public void A_shift_of_tuning_multiplies_every_pull()
    {
        var d = Workshop.Strung with { Tuning = Workshop.SixStrings with { Also = [new("drop D", [new(38), new(45), new(50), new(55), new(59), new(64)])] } };
        var strings = StringTension.All(d);
        var changes = Retuning.All(d, strings);
        Assert.Equal(["2 semitones lower", "1 semitone lower", "as described", "1 semitone higher", "2 semitones higher", "drop D"], changes.Select(c => c.Name));
        for (var shift = -2; shift <= 2; shift++) Assert.Equal(strings.Sum(s => s.Pull.Tension) * Math.Pow(2, shift / 6.0), changes[shift + 2].Total, 9);
        Assert.Equal(strings[0].Pull.Tension * Math.Pow(2, -2 / 6.0), changes[5].Strings[0].Pull.Tension, 9);
        Assert.Equal(strings.Skip(1).Select(s => s.Pull.Tension), changes[5].Strings.Skip(1).Select(s => s.Pull.Tension));
        Assert.Equal([true], changes.Where(c => c.Name == "drop D").Select(c => c.Named));
    }

    private static bool Near(double a, double b) => Math.Abs(a - b) < 1e-9 * b;
}
