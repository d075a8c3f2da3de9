using Solidbody.Geometry;
using Solidbody.Materials;
using Solidbody.Shop;

namespace Solidbody.Machining.Feeds;

/// <summary>One cutter in one wood on one machine: how fast it turns, how fast any bite may be fed, and what a bite asks of it. Drills, which only go down, are not meant.</summary>
/// <remarks>All limits are kept with the upper end of the wood's range of cutting force.</remarks>
public sealed class DrivenCutter
{
    private readonly CutterBeam beam;
    private readonly CutterMaterial material;

    private readonly ShopDefinition shop;
    private readonly WoodOnHand wood;

    /// <param name="cutter">No drill.</param>
    /// <param name="wood">As the shop works it: its chip-load factor and cutting force.</param>
    /// <param name="shop">Its machine, and the settings it holds its cutters to.</param>
    public DrivenCutter(Cutter cutter, WoodOnHand wood, ShopDefinition shop)
    {
        ArgumentNullException.ThrowIfNull(cutter);
        ArgumentNullException.ThrowIfNull(wood);
        ArgumentNullException.ThrowIfNull(shop);
        (Cutter, this.wood, this.shop, beam, material) = (cutter, wood, shop, new(cutter), CutterMaterial.Of(cutter.Material));
        Usual = ChipLoads.For(EdgeDiameter);
        WantedChip = wood.ChipLoad * Usual.Middle;
        CuttingForce = wood.Force;
        SpindleSpeed = SpindleSpeeds.For(this);
    }

    public Cutter Cutter { get; }
    public Machine Machine => shop.Machine;
    /// <summary>The diameter that makes the chip, mm, and the widest bite.</summary>
    public double EdgeDiameter => EdgeDiameterOf(Cutter);
    /// <summary>Usual chip loads for that diameter.</summary>
    public ChipLoadRange Usual { get; }
    /// <summary>How thick a chip is wanted, mm.</summary>
    public double WantedChip { get; }
    /// <summary>Of the wood.</summary>
    public CuttingForceRange CuttingForce { get; }
    /// <summary>Turns a second: one for all bites, since a program turns at one speed.</summary>
    public double SpindleSpeed { get; }

    /// <summary>Thickness under which an edge rubs and burns instead of cutting, mm.</summary>
    public double LeastChip => Math.Min(FeedPractice.LeastChip, Usual.Least / 2);

    /// <summary>What the person holds it to; null when that is to be worked out.</summary>
    /// <param name="pass">A pass; null asks only for what holds for all passes.</param>
    public double? Pinned(Pass? pass, Func<PinnedFeeds, double?> value) => shop.PinnedFor(Cutter, wood.Wood, pass, value);

    /// <summary>The feed in a bite: the pinned one, or that of the pinned chip load as far as the axes go, or the greatest inside every limit.</summary>
    /// <param name="bite">Its width at most <see cref="EdgeDiameter"/>.</param>
    /// <returns>mm/s, whole mm/min, at least 1 mm/min.</returns>
    public double Feed(Bite bite, Pass pass) => FeedAt(bite.Depth, Engagement.Angle(bite.Width, EdgeDiameter), pass);

    /// <summary>The feed in a bite of this engagement angle, as <see cref="Feed"/>.</summary>
    /// <param name="depth">ap, mm; &gt; 0.</param>
    /// <param name="angle">φ, radians, in (0, π]; π is a slot.</param>
    public double FeedAt(double depth, double angle, Pass pass) => PinnedFeed(pass) ?? FeedWithin(depth, angle, pass);

    /// <summary>Greatest feed at which a bite of this engagement angle stays inside every limit: thickest chip as wanted (chip thinning) and chip load not over the usual;
    /// axes; spindle power; side force of the machine; bending and stress of the cutter.</summary>
    /// <returns>mm/s, whole mm/min, at least 1 mm/min. Never grows with depth or angle.</returns>
    public double FeedWithin(double depth, double angle, Pass pass)
    {
        var chip = Math.Min(WantedChip * Engagement.Thinning(angle), Math.Max(WantedChip, Usual.Most));
        chip = Math.Min(chip, ForceLimit(depth, pass) / (CuttingForce.Most * depth * Engagement.Together(angle, Cutter.Flutes)));
        var feed = Math.Min(CuttingPhysics.Feed(chip, SpindleSpeed, Cutter.Flutes), Machine.FeedMostXY);
        var powered = PowerLimit / CuttingPhysics.Power(CuttingForce.Most, Engagement.Width(angle, EdgeDiameter), depth, 1);
        return WholeMillimetresAMinute(Math.Min(feed, powered));
    }

    /// <summary>The roughing step-down, mm: the pinned one, or the deepest slot inside every limit at the feed the chip asks for. Where that is very shallow the feed must fall instead.</summary>
    public double StepDown => Pinned(Pass.Roughing, p => p.StepDown) ?? DeepestStep();

    private double DeepestStep()
    {
        var feed = PinnedFeed(Pass.Roughing) ?? Math.Min(CuttingPhysics.Feed(WantedChip, SpindleSpeed, Cutter.Flutes), Machine.FeedMostXY);
        var usual = Math.Min(FeedPractice.StepDown * Cutter.Diameter, Cutter.FluteLength);
        var powered = PowerLimit / CuttingPhysics.Power(CuttingForce.Most, EdgeDiameter, 1, feed);
        // As if all the force came at the tip: a little more than in the middle of the bite.
        var forced = ForceLimit(0, Pass.Roughing) / Force(1, Math.PI, feed);
        return Math.Min(usual, Math.Max(FeedPractice.ShallowestStep * Cutter.Diameter, Math.Min(powered, forced)));
    }

    private double? PinnedFeed(Pass pass) => Pinned(pass, p => p.Feed)
        ?? (Pinned(pass, p => p.ChipLoad) is { } chip ? WholeMillimetresAMinute(Math.Min(Machine.FeedMostXY, CuttingPhysics.Feed(chip, SpindleSpeed, Cutter.Flutes))) : null);

    /// <summary>Thickest chip at a feed, mm.</summary>
    public double Chip(double angle, double feed) => ChipLoad(feed) * Engagement.Thickest(angle);

    /// <summary>Feed a tooth, mm.</summary>
    public double ChipLoad(double feed) => CuttingPhysics.ChipLoad(feed, SpindleSpeed, Cutter.Flutes);

    /// <summary>Power at the edge, watts.</summary>
    public double Power(double depth, double angle, double feed) =>
        CuttingPhysics.Power(CuttingForce.Most, Engagement.Width(angle, EdgeDiameter), depth, feed);

    /// <summary>Greatest push on the cutter in a turn, N: kc·ap·fz, times the chips of all teeth that are in the wood together. What a sharp edge is pushed across the cut is less, and left out.</summary>
    public double Force(double depth, double angle, double feed) => CuttingForce.Most * depth * ChipLoad(feed) * Engagement.Together(angle, Cutter.Flutes);

    /// <summary>How far the tip gives way, mm; the push spread over the bite.</summary>
    public double Bending(double depth, double angle, double feed) => Force(depth, angle, feed) * beam.SpreadCompliance(depth);

    /// <summary>Greatest bending stress in the cutter, N/mm².</summary>
    public double Stress(double depth, double angle, double feed) => Force(depth, angle, feed) * beam.Stress(depth / 2);

    /// <summary>Whether power, push, bending and stress of a bite at a feed are all inside their limits.</summary>
    /// <param name="thicker">By how much its chips are thicker, from a slower spindle or fewer flutes.</param>
    public bool Bears(double depth, double angle, double feed, Pass pass, double thicker = 1) =>
        Power(depth, angle, feed) <= PowerLimit && thicker * Force(depth, angle, feed) <= ForceLimit(depth, pass);

    /// <summary>Watts a plan may ask for.</summary>
    public double PowerLimit => FeedPractice.PowerShare * Machine.SpindlePower;

    /// <summary>N/mm² the cutter may bear.</summary>
    public double StressLimit => FeedPractice.StrengthShare * material.Strength.Value;

    /// <summary>How far the tip may give way, mm.</summary>
    public static double BendLimit(Pass pass) => pass == Pass.Finishing ? FeedPractice.FinishBend : FeedPractice.RoughBend;

    /// <summary>Greatest side force, N, that machine and cutter take in a bite of this depth.</summary>
    private double ForceLimit(double depth, Pass pass) =>
        Math.Min(Machine.SideForce, Math.Min(BendLimit(pass) / beam.SpreadCompliance(depth), StressLimit / beam.Stress(depth / 2)));

    /// <summary>The diameter that makes the chip: a roundover's and a tapered ball's tip is thinner than its widest part.</summary>
    internal static double EdgeDiameterOf(Cutter cutter) => cutter.Kind switch
    {
        CutterKind.Roundover => 2 * (cutter.TipRadius + cutter.EdgeRadius / 2),
        CutterKind.TaperedBallEnd => 2 * cutter.TipRadius,
        _ => cutter.Diameter,
    };

    /// <summary>Programs say F in whole mm/min: what is said is what is planned.</summary>
    internal static double WholeMillimetresAMinute(double feed) => Math.Max(1, Math.Floor(feed * 60 + 1e-6)) / 60;
}
