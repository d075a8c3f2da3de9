using System.Globalization;
using Solidbody.Geometry;

namespace Solidbody.Programs;

/// <summary>What the first comments of a program tell the person at the machine.</summary>
/// <param name="Part">The part, such as <c>body</c>.</param>
/// <param name="SetUp">The set-up's title and the program's name.</param>
/// <param name="Cutter">The cutter with its measures.</param>
/// <param name="Zero">Where X0 Y0 and Z0 are.</param>
/// <param name="Caution">What to be sure of before the start.</param>
public sealed record ProgramHeader(string Part, string SetUp, string Cutter, string Zero, string Caution)
{
    /// <summary>The caution every program carries.</summary>
    public const string UsualCaution =
        "Check zero, cutter and hold-down before the start. Your machine's manual, local codes and licensed practice come first.";

    /// <summary>The header of one program of a set-up.</summary>
    /// <param name="program">The program's short name on the sheet.</param>
    public static ProgramHeader Of(SetUp setUp, Cutter cutter, string program)
    {
        ArgumentNullException.ThrowIfNull(setUp);
        ArgumentNullException.ThrowIfNull(cutter);
        return new(setUp.Part, $"{setUp.Order}, {setUp.Title}: {program}", Measures(cutter), setUp.Zero, UsualCaution);
    }

    internal IEnumerable<string> Lines =>
        [$"Part: {Part}", $"Set-up: {SetUp}", $"Cutter: {Cutter}", $"Zero: {Zero}", $"Caution: {Caution}"];

    private static string Measures(Cutter c)
    {
        var text = string.Create(CultureInfo.InvariantCulture,
            $"{c.Name}, {Word(c.Kind)}, diameter {c.Diameter:0.###} mm, {c.Flutes} {(c.Flutes == 1 ? "flute" : "flutes")} {c.FluteLength:0.##} mm long, stick-out {c.StickOut:0.##} mm");
        if (c.TipRadius > 0) text += string.Create(CultureInfo.InvariantCulture, $", tip radius {c.TipRadius:0.###} mm");
        if (c.EdgeRadius > 0) text += string.Create(CultureInfo.InvariantCulture, $", edge radius {c.EdgeRadius:0.###} mm");
        if (c.Angle > 0) text += string.Create(CultureInfo.InvariantCulture, $", {(c.Kind == CutterKind.Drill ? "point" : "half")} angle {c.Angle * 180 / Math.PI:0.##} degrees");
        return text;
    }

    private static string Word(CutterKind kind) => kind switch
    {
        CutterKind.UpSpiral => "up-spiral",
        CutterKind.DownSpiral => "down-spiral",
        CutterKind.Straight => "straight",
        CutterKind.BallEnd => "ball-end",
        CutterKind.TaperedBallEnd => "tapered ball-end",
        CutterKind.Drill => "drill",
        CutterKind.Roundover => "roundover",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind of cutter."),
    };
}
