using Solidbody.Findings;
using Solidbody.Geometry;

namespace Solidbody.Programs.Json;

/// <summary>The words packet.json uses for our own kinds.</summary>
internal static class PacketWords
{
    public static readonly (string Word, CutterKind Kind)[] CutterKinds =
    [
        ("upSpiral", CutterKind.UpSpiral), ("downSpiral", CutterKind.DownSpiral), ("straight", CutterKind.Straight), ("ballEnd", CutterKind.BallEnd),
        ("taperedBallEnd", CutterKind.TaperedBallEnd), ("drill", CutterKind.Drill), ("roundover", CutterKind.Roundover),
    ];

    public static readonly (string Word, Severity Severity)[] Severities =
        [("notes", Severity.Notes), ("warns", Severity.Warns), ("stops", Severity.Stops)];
}
