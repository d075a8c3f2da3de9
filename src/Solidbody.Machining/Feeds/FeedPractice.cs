namespace Solidbody.Machining.Feeds;

/// <summary>The trade's habits for feeds: common practice, no source, unless a line says otherwise.</summary>
internal static class FeedPractice
{
    /// <summary>Roughing step-down over the diameter; 0.5 to 1 on a stiff machine, 0.25 to 0.5 on a light one.</summary>
    public const double StepDown = 0.5;
    /// <summary>Roughing step-over over the diameter.</summary>
    public const double StepOver = 0.4;
    /// <summary>Plunge feed over feed; usual 0.3 to 0.5.</summary>
    public const double Plunge = 0.4;
    /// <summary>Share of the spindle's power a plan may ask for: the plate's figure is seldom there at every speed.</summary>
    public const double PowerShare = 0.8;
    /// <summary>Spindle speed a router bit is used at where the spindle reaches it, turns a second (18 000 turns a minute).</summary>
    public const double RouterTurns = 300;
    /// <summary>Cutters thinner than this, mm, run at the spindle's fastest: their chips are thin, and slow feeds take hours.</summary>
    public const double ThinCutter = 3;
    /// <summary>Fastest a router bit's rim runs, mm/s: wide bits are turned slower (18 000 turns a minute at 50 mm). The cutter's own marking goes before.</summary>
    public const double CuttingSpeedMost = 50_000;
    /// <summary>Shallowest step-down over the diameter that is worth its passes: below that the feed falls instead.</summary>
    public const double ShallowestStep = 0.1;
    /// <summary>Chip under which an edge that is no longer fresh rubs and burns, mm: the rounding of a used carbide edge; from memory, 0.01 to 0.03. Thin cutters go down to half their least usual chip load.</summary>
    public const double LeastChip = 0.02;
    /// <summary>How far the tip may give way in roughing, mm: a third of the skin that is left for the finishing pass.</summary>
    public const double RoughBend = 0.1;
    /// <summary>How far the tip may give way in a finishing pass, mm: a fifth of what the proof lets a measure be off by.</summary>
    public const double FinishBend = 0.02;
    /// <summary>Share of its material's strength a cutter may be stressed to, for shocks, run-out and ever new turns.</summary>
    public const double StrengthShare = 0.25;
    /// <summary>Cutting speed of a drill in wood, mm/s.</summary>
    public const double DrillCuttingSpeed = 3000;
    /// <summary>Drill feed a turn over its diameter.</summary>
    public const double DrillFeedPerTurn = 0.02;
    /// <summary>Peck depth over the drill's diameter.</summary>
    public const double Peck = 2;
}
