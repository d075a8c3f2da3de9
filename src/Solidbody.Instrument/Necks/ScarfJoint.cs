namespace Solidbody.Instrument.Necks;

/// <summary>The scarf joint of an angled headstock, laid out. Lengths mm; u runs from the board's end toward the tip, negative under the board.</summary>
/// <param name="Place">Where its line comes out in front.</param>
/// <param name="CutAngle">Between the saw's cut and the board's face, radians: the headstock's own angle.</param>
/// <param name="CutLength">Of the slope sawn through the stock, along it: stock / sin A.</param>
/// <param name="LineAt">u of the line in front, in the plan.</param>
/// <param name="GlueLength">Of the glue face left in the finished neck, on the centre line, along it.</param>
/// <param name="GlueArea">Of the whole glue face left in the finished neck, mm².</param>
/// <param name="ShaftPiece">Length of the piece with the heel, along it, without waste.</param>
/// <param name="HeadPiece">Length of the headstock's piece, along it, without waste.</param>
/// <remarks>Trigonometry of one plane. With the line under the board the headstock, t thick, lies on the slope: the slope meets the glue plane t / sin A before the face does.
/// With the line on the face the headstock hangs under the shaft, whose stock is s thick: the joint lies level, s below the glue plane, and comes out s / tan A behind the face's beginning.</remarks>
public sealed record ScarfJoint(ScarfPlace Place, double CutAngle, double CutLength, double LineAt, double GlueLength, double GlueArea, double ShaftPiece, double HeadPiece)
{
    /// <summary>Steps of the measuring of the glue face, mm.</summary>
    private const double Step = 1;

    /// <summary>Depth of the glue face below the glue plane at u, in the plan.</summary>
    public required Func<double, double> Depth { get; init; }

    /// <param name="neck">The finished neck, right-handed.</param>
    /// <param name="heelEnd">x of the heel's end.</param>
    /// <returns>Null where nothing is scarfed.</returns>
    public static ScarfJoint? Of(InstrumentDefinition d, Part neck, double heelEnd)
    {
        ArgumentNullException.ThrowIfNull(d);
        ArgumentNullException.ThrowIfNull(neck);
        if (d.Headstock is not { Angle: > 0 and var angle, Scarf: { } scarf } h) return null;
        var (sine, cosine, tangent) = (Math.Sin(angle), Math.Cos(angle), Math.Tan(angle));
        var (begin, stock) = (HeadFace.Of(d).Begin, scarf.Stock);
        var tip = begin + (-neck.Bounds.X0 - begin) / cosine;   // along the face
        if (scarf.Place == ScarfPlace.UnderBoard)
        {
            var line = begin - h.Thickness / sine;
            double Slope(double u) => (u - line) * tangent;
            var (length, area) = Measured(neck, Slope, line, double.PositiveInfinity);
            return new(scarf.Place, angle, stock / sine, line, length / cosine, area / cosine, heelEnd + line + stock / tangent, tip - begin + (begin - line) * cosine) { Depth = Slope };
        }
        var level = begin + stock / tangent;
        var (glued, face) = Measured(neck, _ => stock, level - stock / sine, level);
        return new(scarf.Place, angle, stock / sine, level, glued, face, heelEnd + level, tip - begin - stock / sine + stock / tangent) { Depth = _ => stock };
    }

    /// <summary>Plan of the joint that lies inside the finished wood: its length on the centre line, and its area.</summary>
    private static (double Length, double Area) Measured(Part neck, Func<double, double> depth, double from, double to)
    {
        var (length, cells) = (0.0, 0);
        for (var u = from + Step / 2; u < Math.Min(to, -neck.Bounds.X0); u += Step)
        {
            bool Inside(double y) => -depth(u) < neck.Front.Z(-u, y) && -depth(u) > neck.Back.Z(-u, y) && neck.Outline.Contains(new(-u, y));
            if (Inside(0)) length += Step;
            for (var y = neck.Bounds.Y0 + Step / 2; y < neck.Bounds.Y1; y += Step)
                if (Inside(y)) cells++;
        }
        return (length, cells * Step * Step);
    }
}
