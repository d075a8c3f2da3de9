namespace Solidbody.Geometry;

/// <summary>How the edge between a face and an upright side is shaped: what comes off the face, by the distance inside the edge.</summary>
public abstract record EdgeForm
{
    private EdgeForm() { }

    /// <summary>How far in from the edge the face is taken, mm.</summary>
    public abstract double Width { get; }
    /// <summary>How far down the side it reaches, mm.</summary>
    public abstract double Height { get; }

    /// <summary>What comes off the face, mm, measured along z.</summary>
    /// <param name="inside">Distance inside the edge in the plan, mm; ≥ 0.</param>
    /// <returns>0 from <see cref="Width"/> on, <see cref="Height"/> at the edge itself.</returns>
    public abstract double TakenAt(double inside);

    /// <summary>A quarter circle between face and side.</summary>
    public sealed record Rounded(double Radius) : EdgeForm
    {
        public override double Width => Radius;
        public override double Height => Radius;

        /// <remarks>r − √(r² − (r − d)²), evaluated so that no digits cancel near the face.</remarks>
        public override double TakenAt(double inside)
        {
            var into = Math.Clamp(Radius - inside, 0, Radius);
            return into * into / (Radius + Math.Sqrt((Radius - into) * (Radius + into)));
        }
    }

    /// <summary>A flat bevel.</summary>
    /// <param name="Width">On the face, mm.</param>
    /// <param name="Angle">Between the bevel and the face it begins on, radians; 45° takes as much off the side as off the face.</param>
    public sealed record Chamfered(double Width, double Angle) : EdgeForm
    {
        public override double Width { get; } = Width;
        public override double Height => Width * Math.Tan(Angle);
        public override double TakenAt(double inside) => Math.Max(0, Width - inside) * Math.Tan(Angle);
    }
}
