using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Machining.Feeds;
using Solidbody.Machining.Toolpaths;
using Solidbody.Shop;

namespace Solidbody.Machining.Planning;

/// <summary>The jobs of one side of a part: one method per kind of feature. What no cutter can do becomes a finding.</summary>
internal sealed class SideJobs
{
    private readonly LaidPart laid;
    private readonly CutterRack rack;
    private readonly Machine machine;
    private readonly bool sparing;
    private readonly List<Job> jobs = [];
    private readonly List<(Region Region, double Floor, Job Job)> rooms = [];
    private readonly List<Region> swept = [];
    private readonly List<(EdgeStretch Stretch, double Below)> followed = [];
    private readonly List<Finding> findings = [];
    /// <summary>Least radius of a hollow in a carved zone, mm.</summary>
    private double leastHollow = double.PositiveInfinity;
    /// <summary>The ball-end that makes the whole face; null where none does.</summary>
    private Cutter? surfacing;

    /// <param name="laid">The part with this side up.</param>
    /// <param name="shop">Rack and machine.</param>
    /// <param name="sparing">Whether cutters must keep near the outline, for a bed that is short: the thinnest ball-end instead of the widest.</param>
    public SideJobs(LaidPart laid, ShopDefinition shop, bool sparing)
    {
        this.laid = laid;
        rack = new(shop);
        machine = shop.Machine;
        this.sparing = sparing;
        Lowest = -Math.Min(PlanPractice.Overshoot, machine.SpoilboardAllowance);
    }

    public IReadOnlyList<Job> Jobs => jobs;
    public IReadOnlyList<Finding> Findings => findings;
    /// <summary>Z of through-cuts: a little into the spoilboard.</summary>
    public double Lowest { get; }
    /// <summary>How far beyond the outline this side's features take wood away, mm; the outline's own groove apart.</summary>
    public double Sweep { get; private set; }
    /// <summary>How far beyond the outline the tip goes for that, mm.</summary>
    public double Reach { get; private set; }
    /// <summary>Rooms that run out of the outline, and what is swept round carved zones, part frame: cutters go there too.</summary>
    public IEnumerable<Region> Mouths => swept.Select(laid.Region).Concat(RoomMouths);
    private IEnumerable<Region> RoomMouths => rooms.Select(r => laid.Region(r.Region)).Where(r => r.Loops.SelectMany(l => l.Points).Any(p => !Part.Outline.Contains(p)));

    /// <summary>How far below the edge a ball-end that followed it has hollowed the waste beside a point of the outline, mm; 0 where none did.</summary>
    /// <param name="at">Part frame.</param>
    /// <param name="near">What counts as beside, mm.</param>
    public double BelowEdge(Point2 at, double near) =>
        followed.Where(f => f.Stretch.Path.Any(p => laid.Point(p).DistanceTo(at) <= near)).Select(f => f.Below).DefaultIfEmpty(0).Max();

    private Part Part => laid.Part;
    private string Place(string feature) => $"{Part.Name}, {feature}";

    /// <summary>Everything on this side but registration and outline.</summary>
    public void AddFeatures()
    {
        if (laid.Finish != FaceFinish.AsPlaned) AddFace();
        else
        {
            foreach (var flat in Part.Flats.Where(f => f.From == laid.Up)) AddFlat(flat, laid.Region(flat.Region), laid.Top);
            foreach (var zone in Part.CarvedZones.Where(z => z.From == laid.Up))
                foreach (var region in Offsets.Intersection(laid.Region(zone.Region), laid.Outline)) AddZone(zone.Name, region);
        }
        foreach (var pocket in Nested(Part.Pockets.Where(p => p.From == laid.Up))) AddPocket(pocket);
        foreach (var holes in Part.Holes.Where(h => h.From == laid.Up).GroupBy(h => (Family(h.Name), h.Diameter))) AddHoles(holes.Key.Item1, [.. holes]);
        foreach (var ledge in Part.Ledges.Where(l => l.From == laid.Up)) AddLedge(ledge);
        foreach (var edge in Part.Edges.Where(e => e.From == laid.Up)) AddEdge(edge);
        if (laid.Up == Side.Front && !Part.Slots.IsEmpty) AddSlots();
    }

    /// <summary>Dowel holes through the blank into the spoilboard.</summary>
    /// <returns>How deep the tip goes below the spoilboard, mm.</returns>
    public double AddRegistration(Blank blank, HoldDowns holdDowns)
    {
        var diameter = holdDowns.DowelDiameter;
        var bottom = -holdDowns.DowelDepth;
        ImmutableArray<RoundHole> At(double tip) => [.. new[] { blank.First, blank.Second }.Select(p => new RoundHole(laid.Point(p), diameter, laid.Top, tip))];
        var drills = Drills(diameter, laid.Top, bottom, double.PositiveInfinity);
        if (!drills.IsEmpty)
        {
            var tip = bottom - drills[0].ConeHeight;
            Add("registration holes", Stage.Registration, [drills[0]], (c, f) => [new("", new Work.Drill(At(tip), f.StepDown))]);
            return -tip;
        }
        var borers = Borers(diameter, laid.Top - bottom, laid.Top - bottom);
        if (borers.IsEmpty)
            findings.Add(CutterFindings.NoHole(Place("registration holes"), diameter, laid.Top - bottom + PlanPractice.ColletRoom));
        else
            Add("registration holes", Stage.Registration, borers, (c, f) => [new("", new Work.Bore(At(bottom)))]);
        return -bottom;
    }

    /// <summary>The outline's cut on this side: roughed a little proud, then one finishing pass.</summary>
    /// <param name="cutters">Those that can, best first.</param>
    /// <param name="bottom">Tip height of the last pass.</param>
    /// <param name="bridges">Tabs; none where the part stays in thick wood.</param>
    /// <param name="way">Of the finishing pass.</param>
    public void AddOutline(ImmutableArray<Cutter> cutters, double bottom, ImmutableArray<Bridge> bridges, OutlineWay way)
    {
        var loops = laid.Outline.Loops.Where(l => l.SignedArea > 0).ToImmutableArray();
        Add("outline", Stage.Outline, cutters, (_, _) => loops.SelectMany(loop => new Job.Step[]
        {
            new("rough", new Work.Outline(loop, laid.Top, bottom, PlanPractice.RoughLeave, bridges)),
            new("finish", new Work.FinishOutline(loop, laid.Top, bottom, bridges, way), new Bite(laid.Top - bottom, PlanPractice.RoughLeave)),
        }));
    }

    private void AddFace()
    {
        var carve = new Carving(laid.Face, laid.Outline, laid.Top, machine);
        var what = laid.Finish == FaceFinish.CarvedAcross ? "carved back" : "playing face";
        if (laid.Finish == FaceFinish.CarvedAcross && laid.Up == Side.Front) what = "carved front";
        if (BallFor(what, carve) is not { } ball) return;
        var outline = laid.Outline;
        var cleared = Cleared(ball, carve);
        var zone = Offsets.Of(outline, cleared)[0];
        Sweep = Math.Max(Sweep, cleared);
        Reach = Math.Max(Reach, ball.Radius);
        var lowest = Math.Min(carve.Tip(ball), carve.LowestEdge);
        var surface = laid.Face;
        if (AddRough(what, outline, carve, ball) is { IsEmpty: false } roughers) Reach = Math.Max(Reach, cleared - roughers.Min(c => c.Radius));
        var flats = Part.Flats.Where(f => f.From == laid.Up).Select(f => (Flat: f, Zones: Offsets.Intersection(laid.Region(f.Region), zone))).ToList();
        var made = new List<Region>();
        foreach (var (flat, zones) in flats)
            foreach (var z in zones)
                if (AddFlat(flat, z, Math.Min(laid.Top, laid.Z(flat.Z) + PlanPractice.CarveLeave)) is { IsEmpty: false } able)
                {
                    Reach = Math.Max(Reach, cleared - able.Min(c => c.Radius));
                    // What the flat cutter's edge reaches, less a little, so that no step shows where ball and flat meet.
                    made.AddRange(Offsets.Of(z, -able[0].Radius).SelectMany(core => Offsets.Of(core, able[0].Radius - PlanPractice.CarveLeave)));
                }
        var skip = made.Count == 0 ? null : new Region(Offsets.Union(made).SelectMany(r => r.Loops));
        surfacing = ball;
        Add(what, Stage.Surface, [ball], (_, _) =>
            [new("", new Work.FinishFace(surface, outline, laid.Finish == FaceFinish.SurfacedAlong, PlanPractice.Scallop, lowest, skip))]);
    }

    /// <summary>A carved stretch of a planed face, within the outline.</summary>
    private void AddZone(string name, Region zone)
    {
        var surface = laid.Face;
        if (Carving.EdgeFault(surface, zone, laid.Outline, laid.Top) is var (at, off))
        {
            findings.Add(PlanFindings.ZoneEdge(Place(name), laid.Point(at), off));
            return;
        }
        var carve = new Carving(surface, zone, laid.Top, machine);
        leastHollow = Math.Min(leastHollow, carve.LargestRadius);
        if (BallFor(name, carve) is not { } ball) return;
        AddRough(name, zone, carve, ball);
        swept.AddRange(Offsets.Of(zone, Cleared(ball, carve)));
        // The planed face beside the zone carries the ball too, or it would roll over the zone's edge into it; it has no need of passes, up to where nothing carries.
        Region Within(double by) => Offsets.Intersection(Offsets.Of(zone, by)[0], laid.Outline).First(r => !Offsets.Intersection(r, zone).IsEmpty);
        var (wide, planed) = (Within(ball.Diameter), Offsets.Difference(Within(2 * ball.Diameter), zone));
        var skip = planed.IsEmpty ? null : new Region(planed.SelectMany(r => r.Loops));
        var along = zone.Bounds.Width >= zone.Bounds.Height;
        Add(name, Stage.Surface, [ball], (_, _) =>
            [new("", new Work.FinishFace(surface, wide, along, PlanPractice.Scallop, Math.Min(carve.Tip(ball), carve.LowestEdge), skip))]);
    }

    /// <summary>The ball-end for a curved face; null, with a finding, when none suits.</summary>
    private Cutter? BallFor(string what, Carving carve)
    {
        var balls = rack.Balls.Where(b => carve.Suits(b) && CutterRack.Reaches(b, laid.Top - carve.LowestEdge, laid.Top - carve.Tip(b))).ToList();
        if (balls.Count > 0) return sparing ? balls[^1] : balls[0];
        findings.Add(CutterFindings.NoBall(Place(what), carve.LargestRadius, laid.Top - carve.LowestEdge + PlanPractice.ColletRoom));
        return null;
    }

    /// <summary>Roughing clears past the edge by the whole ball, so that the ball never meets a wall of raw wood there. Its rows leave an edge that runs aslant to them in steps,
    /// which matters where that wall is higher than the ball's edges: then by such a step more.</summary>
    private double Cleared(Cutter ball, Carving carve) => ball.Diameter + PlanPractice.CarveLeave
        + (laid.Top - carve.LowestEdge > ball.FluteLength ? rack.Flat.Select(c => c.Radius).DefaultIfEmpty(0).Max() : 0);

    /// <returns>The cutters that bring the face near; none where the ball-end takes the little wood there is.</returns>
    private ImmutableArray<Cutter> AddRough(string what, Region zone, Carving carve, Cutter ball)
    {
        if (carve.MostWood <= ball.Radius / 2) return [];
        var (surface, cleared, depth) = (laid.Face, Cleared(ball, carve), laid.Top - carve.LowestEdge);
        var cutters = CutterRack.Widest(rack.Flat.Where(c => CutterRack.Reaches(c, depth, depth)));
        if (cutters.IsEmpty)
        {
            findings.Add(CutterFindings.TooShort(Place(what), depth, depth + PlanPractice.ColletRoom, rack.Flat));
            return [];
        }
        Add($"{what}, rough", Stage.Rough, cutters, (c, _) =>
            [new("", new Work.RoughFace(surface, Offsets.Of(zone, Math.Max(0, cleared - c.Radius))[0], laid.Top, PlanPractice.CarveLeave, carve.LowestEdge))]);
        return cutters;
    }

    /// <returns>The cutters that may make it, widest first.</returns>
    private ImmutableArray<Cutter> AddFlat(Flat flat, Region zone, double top)
    {
        var floor = laid.Z(flat.Z);
        if (top - floor < Tolerances.Output) return [];   // the planed face itself
        var cutters = CutterRack.NotMuchThinner(rack.Flat.Where(c => CutterRack.Reaches(c, top - floor, laid.Top - floor) && RegionFit.Holds(zone, c.Radius)));
        if (cutters.IsEmpty)
        {
            findings.Add(CutterFindings.TooShort(Place(flat.Name), top - floor, laid.Top - floor + PlanPractice.ColletRoom, rack.Flat));
            return [];
        }
        // The cutter's edge stays inside the flat: what lies beside it may be higher.
        var job = Add(flat.Name, Stage.Flats, cutters, (c, _) => Offsets.Of(zone, -c.Radius).Select(core => new Job.Step("", new Work.LevelFace(core, top, floor, laid.Top))));
        rooms.Add((zone, floor, job));
        return cutters;
    }

    private void AddPocket(Pocket pocket)
    {
        var region = RegionFit.Opened(laid.Region(pocket.Region), laid.Outline, rack.Flat.Select(c => c.Radius).DefaultIfEmpty(0).Max() + PlanPractice.RoughLeave);
        if (pocket is { Through: false, Floor: SlopedHeight { Slope: not 0 } slope }) { AddSloped(pocket, new(region, laid.Sloped(slope), laid.Outline)); return; }
        var floor = pocket.Through ? Lowest : laid.Z(LevelFloor(pocket));
        var (top, after) = WoodOver(region, floor);
        if (top - floor < Tolerances.Output) return;
        if (Reaching(pocket, region, top - floor, floor) is not { Count: > 0 } reaching) return;
        var candidates = CutterRack.NotMuchThinner(CutterRack.FlutesFirst(reaching, top - floor));
        var job = Add(pocket.Name, Stage.Rooms, candidates, (c, _) => PocketSteps(pocket, region, top, floor, c), after, Wider(region, candidates, top - floor, floor));
        rooms.Add((region, floor, job));
    }

    /// <summary>Flat cutters too wide for a room's corners that get down to its floor and have room to work.</summary>
    private ImmutableArray<Cutter> Wider(Region region, ImmutableArray<Cutter> fitting, double depth, double floor) =>
        [.. rack.Flat.Where(c => c.Diameter >= PlanPractice.MuchWider * fitting.Max(f => f.Diameter) && CutterRack.Reaches(c, depth, laid.Top - floor) && RegionFit.Holds(region, 2 * c.Radius))];

    private static double LevelFloor(Pocket pocket) => pocket.Floor switch
    {
        LevelHeight level => level.At,
        SlopedHeight { Slope: 0 } level => level.At,
        _ => throw new ArgumentException($"The floor of '{pocket.Name}' is neither level nor evenly sloping along x.", nameof(pocket)),
    };

    /// <summary>Roughed by as wide a cutter as fits, then its floor and the feet of its walls by one that leaves little on the slope.</summary>
    private void AddSloped(Pocket pocket, SlopedRoom room)
    {
        var (top, after) = WoodOver(room.Region, room.Lowest);
        var depth = top - room.Lowest;
        if (Reaching(pocket, room.Region, depth, room.Lowest) is not { Count: > 0 } reaching) return;
        var suited = reaching.Where(room.Suits).ToList();
        if (suited.Count == 0) { findings.Add(PlanFindings.SlopeTooSteep(Place(pocket.Name), room, reaching.MinBy(c => c.Diameter)!, depth)); return; }
        var roughers = CutterRack.NotMuchThinner(CutterRack.FlutesFirst(reaching, depth));
        var (spring, skin) = (pocket.Fit ? PlanPractice.SpringPasses : 0, room.SkinAfter(roughers));
        var rough = Add(pocket.Name, Stage.Rooms, roughers, (_, _) => room.Roughed(top, spring), after);
        rooms.Add((room.Region, room.Highest, rough));
        var finish = Add(pocket.Name, Stage.Rooms, CutterRack.NotMuchThinner(CutterRack.FlutesFirst(suited, depth)), (_, _) => room.Finished(skin, spring), [rough]);
        rooms.Add((room.Region, room.Highest, finish));
    }

    /// <summary>Flat cutters that get everywhere in a room and down to its floor; none, with a finding, when there is none.</summary>
    private List<Cutter> Reaching(Pocket pocket, Region region, double depth, double floor)
    {
        var fitting = rack.Flat.Where(c => RegionFit.Inside(region, c.Radius, laid.Outline)).ToList();
        var reaching = fitting.Where(c => CutterRack.Reaches(c, depth, laid.Top - floor)).ToList();
        if (reaching.Count == 0)
            findings.Add(fitting.Count == 0
                ? CutterFindings.TooWide(Place(pocket.Name), RegionFit.WidestInside(region, laid.Outline), rack.Flat)
                : CutterFindings.TooShort(Place(pocket.Name), depth, laid.Top - floor + PlanPractice.ColletRoom, fitting));
        return reaching;
    }

    private static IEnumerable<Job.Step> PocketSteps(Pocket pocket, Region region, double top, double floor, Cutter cutter)
    {
        if (RegionFit.Channel(region, cutter.Radius) is { } line) return [new("", new Work.Channel(line.A, line.B, top, floor))];
        var depth = top - floor;
        // A neck sits on its pocket's floor; nothing rests on the others', whose roughing goes right down.
        var floorLeave = pocket.Fit ? Math.Min(PlanPractice.FloorLeave, depth / 4) : 0;
        return
        [
            new("rough", new Work.Clear(region, top, floor, PlanPractice.RoughLeave, floorLeave)),
            .. pocket.Fit ? [new("floor", new Work.Clear(region, floor + floorLeave, floor, PlanPractice.RoughLeave, 0))] : Array.Empty<Job.Step>(),
            new("walls", new Work.Walls(region, top, floor, pocket.Fit ? PlanPractice.SpringPasses : 0), new Bite(depth, PlanPractice.RoughLeave)),
        ];
    }

    private void AddHoles(string name, ImmutableArray<Hole> holes)
    {
        var spots = holes.Select(h => (Hole: h, Centre: laid.Point(h.Centre), Mouth: laid.Z(h.Mouth), Reach: Math.Max(laid.Z(h.Reach), Lowest), Tip: laid.Z(h.Tip))).ToList();
        var lowest = spots.Min(s => s.Reach);
        var diameter = holes[0].Diameter;
        var depth = spots.Max(s => s.Mouth - s.Reach);
        var cone = spots.Min(s => s.Hole.Through ? s.Reach + machine.SpoilboardAllowance : s.Reach - s.Tip);
        ImmutableArray<Job> after = [.. spots.SelectMany(s => rooms.Where(r => r.Region.Contains(s.Centre)).Select(r => r.Job)).Distinct()];
        var title = holes.Length == 1 ? holes[0].Name : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Several(name)}, {holes.Length} of {diameter:0.##} mm");

        var drills = Drills(diameter, spots.Max(s => s.Mouth), lowest, cone, depth);
        if (!drills.IsEmpty)
        {
            Add(title, Stage.Rooms, [drills[0]], (c, f) =>
                [new("", new Work.Drill([.. spots.Select(s => new RoundHole(s.Centre, diameter, s.Mouth, s.Reach - c.ConeHeight))], f.StepDown))], after);
            return;
        }
        var borers = Borers(diameter, depth, laid.Top - lowest);
        if (borers.IsEmpty) { findings.Add(CutterFindings.NoHole(Place(title), diameter, laid.Top - lowest + PlanPractice.ColletRoom)); return; }
        Add(title, Stage.Rooms, borers, (_, _) => [new("", new Work.Bore([.. spots.Select(s => new RoundHole(s.Centre, diameter, s.Mouth, s.Reach))]))], after);
    }

    /// <summary>A cutter of the edge's form where the face is level, a ball-end where it is carved; the ball-end alone where the rack has no such cutter.</summary>
    private void AddEdge(ShapedEdge edge)
    {
        var whole = new EdgeStretch(laid.Path(edge.Path), edge.Closed);
        var formers = rack.Formers(edge.Form);
        if (formers.IsEmpty) { AddFollowedEdge(edge, edge.Name, [whole], formed: false); return; }
        var places = formers.Select(c => (Cutter: c, Place: EdgeForming.PlaceOf(c, edge.Form)!.Value)).ToList();
        Sweep = Math.Max(Sweep, places.Max(p => p.Place.Out + p.Cutter.Radius));
        Reach = Math.Max(Reach, places.Max(p => p.Place.Out));
        Add(edge.Name, Stage.Edges, formers, (_, _) => [new("", new Work.FormEdge(whole.Path, whole.Closed, edge.Form, laid.Top))]);
        var carved = EdgeStretch.WhereCarved(whole, laid.Face, laid.Top, edge.Form.Width, formers.Max(c => c.Radius));
        if (!carved.IsEmpty) AddFollowedEdge(edge, $"{edge.Name} over the contour", carved, formed: true);
    }

    private void AddFollowedEdge(ShapedEdge edge, string name, ImmutableArray<EdgeStretch> stretches, bool formed)
    {
        var face = laid.Face;
        // The ball's middle comes down to the edge's lower end, its tip a radius lower; waste stands beside it.
        var depth = laid.Top - stretches.SelectMany(s => s.Path).Min(p => face.Z(p.X, p.Y)) + edge.Form.Height;
        var balls = rack.Balls.Where(b => b.Radius <= leastHollow && depth + b.Radius <= laid.Top - Lowest && RegionFit.Around(laid.Outline, b.Radius)
            && CutterRack.Reaches(b, depth + b.Radius, depth + b.Radius)).ToList();
        if (balls.Count == 0) { findings.Add(CutterFindings.NoEdgeCutter(Place(name), edge.Form, formed, depth, leastHollow, rack)); return; }
        var ball = sparing ? balls[^1] : balls[0];
        Sweep = Math.Max(Sweep, ball.Diameter);
        Reach = Math.Max(Reach, ball.Radius);
        var below = ball.Radius * (edge.Form is EdgeForm.Chamfered(_, var angle) ? 1 - Math.Cos(angle) : 1);
        followed.AddRange(stretches.Select(s => (s.Divided(), below)));
        Add(name, Stage.Edges, [ball], (_, _) => [new("", new Work.FollowEdge(stretches, edge.Form, face, laid.Top, PlanPractice.Scallop))]);
    }

    /// <summary>Laps round the ledge's wall from its outer rim inward, then one along the wall, climbing. The waste beyond the outline goes with it.</summary>
    private void AddLedge(Ledge ledge)
    {
        var (inside, floor) = (laid.Region(ledge.Inside), laid.Z(ledge.Floor));
        var depth = laid.Top - floor;
        var fitting = rack.Flat.Where(c => RegionFit.Around(inside, c.Radius)).ToList();
        var reaching = fitting.Where(c => CutterRack.Reaches(c, depth, depth)).ToList();
        if (reaching.Count == 0)
        {
            findings.Add(fitting.Count == 0
                ? CutterFindings.TooWideAround(Place(ledge.Name), RegionFit.WidestAround(inside), rack.Flat)
                : CutterFindings.TooShort(Place(ledge.Name), depth, depth + PlanPractice.ColletRoom, fitting));
            return;
        }
        var cutters = CutterRack.NotMuchThinner(CutterRack.FlutesFirst(reaching, depth));
        var width = laid.Outline.Loops.SelectMany(l => l.Points).Max(p => inside.SignedDistance(p));
        var loops = inside.Loops.Where(l => l.SignedArea > 0).ToImmutableArray();
        foreach (var cutter in cutters)
        {
            var furthest = RoughLeaves(width, cutter)[0];
            Sweep = Math.Max(Sweep, furthest + cutter.Diameter);
            Reach = Math.Max(Reach, furthest + cutter.Radius);
        }
        Add(ledge.Name, Stage.Edges, cutters, (cutter, _) => loops.SelectMany(loop => RoughLeaves(width, cutter)
            .Select(leave => new Job.Step("rough", new Work.Outline(loop, laid.Top, floor, leave, [])))
            .Append(new("finish", new Work.FinishOutline(loop, laid.Top, floor, [], OutlineWay.Climb), new Bite(depth, PlanPractice.RoughLeave)))));
    }

    /// <summary>What each roughing lap leaves on the wall of a ledge so wide, the outermost first.</summary>
    private static ImmutableArray<double> RoughLeaves(double width, Cutter cutter)
    {
        var laps = 1 + (int)Math.Max(0, Math.Ceiling((width - PlanPractice.RoughLeave - cutter.Diameter) / (PlanPractice.LedgeStepOver * cutter.Diameter)));
        return [.. Enumerable.Range(0, laps).Reverse().Select(i => PlanPractice.RoughLeave + i * PlanPractice.LedgeStepOver * cutter.Diameter)];
    }

    private void AddSlots()
    {
        foreach (var slots in Part.Slots.GroupBy(s => (s.Width, s.Scribed)))
        {
            var deepest = slots.Max(s => s.Depth);
            if (slots.Key.Scribed) { AddLines([.. slots], slots.Key.Width, deepest); continue; }
            var cutters = rack.Slotters.Where(c => Math.Abs(c.Diameter - slots.Key.Width) <= PlanPractice.FormMatch && c.FluteLength >= deepest).ToImmutableArray();
            if (cutters.IsEmpty) { findings.Add(CutterFindings.NoSlotter(Place("fret slots"), slots.Key.Width, deepest, rack.Slotters)); continue; }
            ImmutableArray<ThinSlot> lines = [.. slots.Select(Thin)];
            Add("fret slots", Stage.Slots, cutters, (_, _) => [new("", new Work.ThinSlots(lines, laid.Face, laid.Top))]);
        }
    }

    private ThinSlot Thin(Slot slot)
    {
        var (a, b) = (laid.Point(slot.A), laid.Point(slot.B));
        return new(a, b, slot.Depth, Math.Max(WoodPastEdge(a, b), WoodPastEdge(b, a)));
    }

    /// <summary>How high wood may stand over the face's continuation where a slot runs out past the edge, mm: what the ball that made the face left beside itself.</summary>
    /// <remarks>Its axis came within a spacing of where the slot crosses the edge. There it rests no higher than on a plane of the face's slope g, R (√(1 + g²) − 1) over it.</remarks>
    private double WoodPastEdge(Point2 end, Point2 other)
    {
        var here = laid.Face.Z(end.X, end.Y);
        if (laid.Outline.Contains(end)) return PlanPractice.OverRidge;
        if (surfacing is not { } ball) return Math.Max(0, laid.Top - here);
        var (outside, inside) = (0.0, 0.5);   // along the slot; its middle lies on the board
        while (inside - outside > 1e-6)
            if ((outside + inside) / 2 is var middle && laid.Outline.Contains(end + middle * (other - end))) inside = middle;
            else outside = middle;
        var edge = end + inside * (other - end);
        var away = end.DistanceTo(edge) + Toolpaths.Scallop.Spacing(ball.Radius, PlanPractice.Scallop);
        if (away >= ball.Radius) return Math.Max(0, laid.Top - here);
        var (gx, gy) = ((laid.Face.Z(edge.X + 0.1, edge.Y) - laid.Face.Z(edge.X - 0.1, edge.Y)) / 0.2, (laid.Face.Z(edge.X, edge.Y + 0.1) - laid.Face.Z(edge.X, edge.Y - 0.1)) / 0.2);
        var rest = laid.Face.Z(edge.X, edge.Y) + ball.Radius * (Math.Sqrt(1 + gx * gx + gy * gy) - 1);
        return Math.Max(0, Math.Min(laid.Top, rest + ball.Height(away)) - here);
    }

    /// <summary>Lines to saw by: the cutter whose groove at that depth is the narrowest.</summary>
    private void AddLines(ImmutableArray<Slot> slots, double width, double depth)
    {
        var cutters = rack.Scribers.Where(c => c.WidthAt(depth) <= width + Tolerances.Output).OrderBy(c => c.WidthAt(depth)).ToImmutableArray();
        if (cutters.IsEmpty) { findings.Add(CutterFindings.NoScriber(Place("fret lines"), width, depth, rack.Scribers)); return; }
        ImmutableArray<ThinSlot> lines = [.. slots.Select(Thin)];
        Add("fret lines", Stage.Slots, [cutters[0]], (_, _) => [new("", new Work.ThinSlots(lines, laid.Face, laid.Top), StepDown: depth)]);
    }

    /// <summary>Highest wood over a room when it starts, and the jobs that lowered it.</summary>
    private (double Top, ImmutableArray<Job> After) WoodOver(Region region, double floor)
    {
        var under = rooms.Where(r => r.Floor > floor - Tolerances.Output && Lies(region, r.Region)).ToList();
        ImmutableArray<Job> touched = [.. rooms.Where(r => region.Loops[0].Points.Any(r.Region.Contains)).Select(r => r.Job)];
        var open = laid.Finish == FaceFinish.AsPlaned ? laid.Top : Math.Min(laid.Top, Carving.Highest(laid.Face, region));
        return under.Count == 0 ? (open, touched) : (Math.Min(open, under.Min(r => r.Floor)), touched);
    }

    private static bool Lies(Region inner, Region outer) => inner.Loops.SelectMany(l => l.Points).All(p => outer.SignedDistance(p, 1) <= 0.05);

    /// <summary>Rooms that hold others come first; the rest keep the design's order.</summary>
    private static IEnumerable<Pocket> Nested(IEnumerable<Pocket> pockets)
    {
        var all = pockets.ToList();
        return all.OrderBy(p => all.Count(other => other != p && Lies(p.Region, other.Region) && !Lies(other.Region, p.Region)));
    }

    private ImmutableArray<Cutter> Drills(double diameter, double mouth, double bottom, double coneRoom, double? depth = null) =>
        [.. rack.Drills.Where(d => Math.Abs(d.Diameter - diameter) <= PlanPractice.DrillMatch && d.ConeHeight <= coneRoom + Tolerances.Output
            && d.FluteLength >= (depth ?? mouth - bottom) + d.ConeHeight && d.StickOut >= laid.Top - bottom + d.ConeHeight + PlanPractice.ColletRoom)
            .OrderBy(d => Math.Abs(d.Diameter - diameter))];

    private ImmutableArray<Cutter> Borers(double diameter, double depth, double belowTop) =>
        CutterRack.NotMuchThinner(CutterRack.FlutesFirst(rack.Flat.Where(c => c.Diameter <= PlanPractice.BoreShare * diameter && CutterRack.Reaches(c, depth, belowTop)), depth));

    private Job Add(string name, Stage stage, ImmutableArray<Cutter> candidates, Func<Cutter, CutFeeds, IEnumerable<Job.Step>> steps, ImmutableArray<Job> after = default, ImmutableArray<Cutter> wider = default)
    {
        var job = new Job { Name = name, Stage = stage, Candidates = candidates, After = after.IsDefault ? [] : after, Wider = wider.IsDefault ? [] : wider, Steps = steps };
        jobs.Add(job);
        return job;
    }

    private static string Several(string family) =>
        family.IndexOf(',', StringComparison.Ordinal) is var comma and >= 0 ? family.Insert(comma, "s") : family + "s";

    /// <summary>A hole's name without its number and what tells its kind apart by place: "string hole 3, back" and "dot 12 bass" belong to "string hole, back" and "dot".</summary>
    private static string Family(string name)
    {
        var comma = name.IndexOf(',', StringComparison.Ordinal);
        var (kind, side) = comma < 0 ? (name, "") : (name[..comma], name[comma..]);
        return string.Join(' ', kind.Split(' ').TakeWhile(word => !char.IsAsciiDigit(word[0]))) + side;
    }
}
