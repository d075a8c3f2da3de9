using System.Numerics;
using System.Runtime.CompilerServices;

namespace Solidbody.Proof.Cutting;

/// <summary>A flat cutter on a level path: all of it is equally low.</summary>
internal readonly struct WideLevelFlat : IWideProfile
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector<float> Contact(Vector<float> w2) => Vector<float>.Zero;
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector<float> Height(Vector<float> d2) => Vector<float>.Zero;
}

/// <summary>A flat cutter on a slope: its rim is lowest.</summary>
internal readonly struct WideFlat(in CutterProfile c, double g) : IWideProfile
{
    private readonly Vector<float> r2 = new((float)(c.Radius * c.Radius));
    private readonly Vector<float> rim = new((float)(Math.Sign(g) * SweptHeight.RimFactor));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector<float> Contact(Vector<float> w2) => rim * Vector.SquareRoot(Vector.Max(r2 - w2, Vector<float>.Zero));
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector<float> Height(Vector<float> d2) => Vector<float>.Zero;
}

/// <summary>A ball: u = g √((r² − w²)/(1 + g²)), E = r − √(r² − d²). Its disc may be narrower than its ball.</summary>
internal readonly struct WideBall(in CutterProfile c, double g) : IWideProfile
{
    private readonly Vector<float> r = new((float)c.TipRadius);
    private readonly Vector<float> r2 = new((float)(c.TipRadius * c.TipRadius));
    private readonly Vector<float> offset = new((float)(g / Math.Sqrt(1 + g * g)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector<float> Contact(Vector<float> w2) => offset * Vector.SquareRoot(Vector.Max(r2 - w2, Vector<float>.Zero));
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector<float> Height(Vector<float> d2) => r - Vector.SquareRoot(Vector.Max(r2 - d2, Vector<float>.Zero));
}

/// <summary>A cone with or without a ball at its tip.</summary>
internal readonly struct WideCone : IWideProfile
{
    private readonly Vector<float> radius2, tip, tip2, touch, touch2, touchHeight, slope, ballOffset, coneOffset, coneBias, sign;

    public WideCone(in CutterProfile c, double g)
    {
        radius2 = new((float)(c.Radius * c.Radius));
        tip = new((float)c.TipRadius);
        tip2 = new((float)(c.TipRadius * c.TipRadius));
        touch = new((float)c.Touch);
        touch2 = new((float)(c.Touch * c.Touch));
        touchHeight = new((float)c.TouchHeight);
        slope = new((float)c.Slope);
        var steep = Math.Abs(g);
        ballOffset = new((float)(steep / Math.Sqrt(1 + g * g)));
        // A path as steep as the cone touches at the rim: an offset no rim reaches, added rather than multiplied, so that it holds at w = 0 too.
        var touches = steep < c.Slope;
        coneOffset = new(touches ? (float)Math.Min(steep / Math.Sqrt((c.Slope - steep) * (c.Slope + steep)), BeyondAnyRim) : 0);
        coneBias = new(touches ? 0 : BeyondAnyRim);
        sign = new(Math.Sign(g));
    }

    private const float BeyondAnyRim = 1e6f;
    private const float Rim = (float)SweptHeight.RimFactor;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector<float> Contact(Vector<float> w2)
    {
        var cone = coneOffset * Vector.SquareRoot(w2) + coneBias;
        var ball = ballOffset * Vector.SquareRoot(Vector.Max(tip2 - w2, Vector<float>.Zero));
        var rim = Rim * Vector.SquareRoot(Vector.Max(radius2 - w2, Vector<float>.Zero));
        var free = Vector.ConditionalSelect(Vector.GreaterThanOrEqual(w2 + cone * cone, touch2), cone, ball);
        return sign * Vector.Min(free, rim);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector<float> Height(Vector<float> d2)
    {
        var ball = tip - Vector.SquareRoot(Vector.Max(tip2 - d2, Vector<float>.Zero));
        var cone = touchHeight + (Vector.SquareRoot(d2) - touch) * slope;
        return Vector.ConditionalSelect(Vector.LessThan(d2, touch2), ball, cone);
    }
}

/// <summary>A roundover: a flat tip, then a hollow quarter circle. Level paths only.</summary>
internal readonly struct WideHollow(in CutterProfile c) : IWideProfile
{
    private readonly Vector<float> tip2 = new((float)(c.TipRadius * c.TipRadius));
    private readonly Vector<float> edge2 = new((float)(c.EdgeRadius * c.EdgeRadius));
    private readonly Vector<float> outer = new((float)(c.TipRadius + c.EdgeRadius));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector<float> Contact(Vector<float> w2) => Vector<float>.Zero;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector<float> Height(Vector<float> d2)
    {
        var inward = Vector.Max(outer - Vector.SquareRoot(d2), Vector<float>.Zero);
        var rise = Vector.SquareRoot(Vector.Max(edge2 - inward * inward, Vector<float>.Zero));
        return Vector.ConditionalSelect(Vector.LessThanOrEqual(d2, tip2), Vector<float>.Zero, rise);
    }
}
