using Solidbody.Geometry;

namespace Solidbody.Instrument.Necks;

/// <summary>The neck's back as one smooth depth below the glue plane: shaft, blended into heel, headstock and volute. Right-handed; lengths mm.</summary>
/// <remarks>Curvature-continuous: every blend is S(t) = t³(6t² − 15t + 10). Derivation: docs/shapes.md.</remarks>
public sealed record NeckBack : IHeight
{
    public required NeckProfile Profile { get; init; }
    /// <summary>The section at fret 12, when it is another than at fret 1: between the two their depths are blended, so that two convex sections give convex ones.</summary>
    public NeckProfile? ProfileAt12 { get; init; }
    public required double Scale { get; init { field = value; fret1 = FretTable.Position(value, 1); } }
    public required double HalfWidthNut { get; init; }
    /// <summary>Half width gained per mm toward the heel.</summary>
    public required double HalfWidthGain { get; init; }
    /// <summary>Neck wood on the deepest line at frets 1 and 12, without board.</summary>
    public required double DepthAtFret1 { get; init; }
    public required double DepthAtFret12 { get; init; }
    public double Bow { get; init; }
    /// <summary>Upright wood at the board's edge.</summary>
    public required double Lip { get; init; }
    /// <summary>From here on the heel is level.</summary>
    public required double HeelX { get; init; }
    public required double HeelDepth { get; init; }
    public required double HeelBlendCentre { get; init; }
    public required double HeelBlendEdgeExtra { get; init; }
    public required double HeadThickness { get; init; }
    /// <summary>Headstock face below the glue plane (a parallel headstock).</summary>
    public double HeadDrop { get; init; }
    /// <summary>How far the headstock leans back, radians (an angled headstock).</summary>
    public double HeadAngle { get; init { field = value; (headTan, headCos) = (Math.Tan(value), Math.Cos(value)); } }
    public required HeadBlend Head { get; init; }
    public required double VoluteHeight { get; init; }

    /// <summary>x of fret 1: asked for at every point of the back.</summary>
    private readonly double fret1;
    private readonly double headTan, headCos = 1;

    public double HalfWidth(double x) => HalfWidthNut + HalfWidthGain * x;
    /// <summary>The deepest line as a fraction of the half width; exact where the section is one of the two stated, near between them.</summary>
    public double Apex(double x) => ProfileAt12 is { } other ? Profile.Apex + Smooth(FromFret1(x)).Value * (other.Apex - Profile.Apex) : Profile.Apex;
    /// <summary>y of the deepest line.</summary>
    public double ApexY(double x) => Apex(x) * HalfWidth(x);
    /// <summary>Depth of the headstock's back at u, where no volute is.</summary>
    public double HeadDepth(double u) => HeadDrop + HeadThickness / headCos + u * headTan;
    /// <summary>0 at fret 1, 1 at fret 12.</summary>
    private double FromFret1(double x) => (x - fret1) / (Scale / 2 - fret1);
    /// <summary>Toward the head from here (u = −x, mm) the back is level, when the headstock is parallel.</summary>
    public double HeadLevelFrom => Math.Max(Math.Max(Head.EndCentre, Head.EndEdge), VoluteHeight > 0 ? Head.VoluteAt + Head.VoluteHalfLength : 0);
    /// <summary>Where the heel's blend begins, on the centre line and at the edges: the shaft's own section ends here.</summary>
    public double HeelBlendFrom(double e) => HeelX - HeelBlendCentre - HeelBlendEdgeExtra * e * e;

    public double Z(double x, double y) => -At(x, y).Depth;
    public double Depth(double x, double y) => At(x, y).Depth;

    /// <summary>Depth and its slopes along x and y.</summary>
    public (double Depth, double AlongX, double AlongY) At(double x, double y)
    {
        var b = HalfWidth(x);
        var ratio = y / b;
        var e = Math.Clamp(ratio, -1, 1);
        var inside = Math.Abs(ratio) < 1;
        var (ex, ey) = inside ? (-e * HalfWidthGain / b, 1 / b) : (0, 0);

        // The shaft: a section of depth F between the lip and the stated thickness.
        var (f, slope) = Profile.At(e);
        var run = Scale / 2 - fret1;
        var xi = (x - fret1) / run;
        var turning = 0.0;   // what the change of section adds to F along x
        if (ProfileAt12 is { } other)
        {
            var ((f12, slope12), (share, shareX)) = (other.At(e), Smooth(xi));
            (f, slope, turning) = (f + share * (f12 - f), slope + share * (slope12 - slope), shareX / run * (f12 - f));
        }
        var h = DepthAtFret1 + (DepthAtFret12 - DepthAtFret1) * xi + 4 * Bow * xi * (1 - xi);
        var hx = (DepthAtFret12 - DepthAtFret1 + 4 * Bow * (1 - 2 * xi)) / run;
        var z = Lip + (h - Lip) * f;
        var (zx, zy) = (hx * f + (h - Lip) * (slope * ex + turning), (h - Lip) * slope * ey);

        // The heel.
        var l = HeelBlendCentre + HeelBlendEdgeExtra * e * e;
        var le = 2 * HeelBlendEdgeExtra * e;
        var into = x - HeelX + l;
        var t = into / l;
        var (w, ws) = Smooth(t);
        var (tx, ty) = ((1 + le * ex) / l - into * le * ex / (l * l), le * ey / l - into * le * ey / (l * l));
        (zx, zy) = ((1 - w) * zx + ws * tx * (HeelDepth - z), (1 - w) * zy + ws * ty * (HeelDepth - z));
        z = (1 - w) * z + w * HeelDepth;

        // The headstock: u runs from the nut toward the tip.
        var u = -x;
        var start = Head.StartCentre + (Head.StartEdge - Head.StartCentre) * e * e;
        var end = Head.EndCentre + (Head.EndEdge - Head.EndCentre) * e * e;
        var (startE, endE) = (2 * (Head.StartEdge - Head.StartCentre) * e, 2 * (Head.EndEdge - Head.EndCentre) * e);
        var length = end - start;
        t = (u - start) / length;
        (w, ws) = Smooth(t);
        // dt = (du − dstart)/length − t (dend − dstart)/length
        var te = (-startE - t * (endE - startE)) / length;
        (tx, ty) = (-1 / length + te * ex, te * ey);
        var zHead = HeadDepth(u);
        (zx, zy) = ((1 - w) * zx + ws * tx * (zHead - z) - w * headTan, (1 - w) * zy + ws * ty * (zHead - z));
        z = (1 - w) * z + w * zHead;

        // The volute.
        var s = (u - Head.VoluteAt) / Head.VoluteHalfLength;
        if (Math.Abs(s) < 1)
        {
            var (along, across) = (1 - s * s, 1 - e * e);
            var (bump, edge) = (along * along * along, across * across * across);
            var (bumpX, edgeE) = (6 * s * along * along / Head.VoluteHalfLength, -6 * e * across * across);
            z += VoluteHeight * bump * edge;
            zx += VoluteHeight * (bumpX * edge + bump * edgeE * ex);
            zy += VoluteHeight * bump * edgeE * ey;
        }
        return (z, zx, zy);
    }

    /// <summary>S(t) = t³(6t² − 15t + 10) on [0, 1] and its slope: value, first and second derivative meet 0 and 1.</summary>
    private static (double Value, double Slope) Smooth(double t) => t switch
    {
        <= 0 => (0, 0),
        >= 1 => (1, 0),
        _ => (t * t * t * (t * (6 * t - 15) + 10), 30 * t * t * (1 - t) * (1 - t)),
    };
}

/// <summary>Where the shaft turns into the headstock, as distances u from the nut toward the tip (negative: on the shaft), mm.</summary>
/// <param name="StartCentre">Blend begins, on the centre line.</param>
/// <param name="StartEdge">Blend begins, at the edges.</param>
/// <param name="EndCentre">Blend ends, on the centre line.</param>
/// <param name="EndEdge">Blend ends, at the edges.</param>
/// <param name="VoluteAt">Crest of the volute.</param>
/// <param name="VoluteHalfLength">Half its length.</param>
public sealed record HeadBlend(double StartCentre, double StartEdge, double EndCentre, double EndEdge, double VoluteAt, double VoluteHalfLength)
{
    /// <summary>Of our own necks: long enough that a 12.7 mm ball-end reaches every hollow.</summary>
    public static HeadBlend Usual { get; } = new(-12, -24, 28, 16, 9, 24);

    /// <summary>The same, further toward the tip: behind a slanted nut, or one that stands back.</summary>
    public HeadBlend Moved(double u) => new(StartCentre + u, StartEdge + u, EndCentre + u, EndEdge + u, VoluteAt + u, VoluteHalfLength);
}
