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
    /// <summary>Cutting speed of a drill in wood, mm/s.</summary>
    public const double DrillCuttingSpeed = 3000;
    /// <summary>Drill feed a turn over its diameter.</summary>
    public const double DrillFeedPerTurn = 0.02;
    /// <summary>Peck depth over the drill's diameter.</summary>
    public const double Peck = 2;
}
