namespace Solidbody.Packet.Sheets;

/// <summary>What stands on every page of every sheet. Common practice, no source, save the last line, which says what it defers to.</summary>
internal static class Cautions
{
    public const string Text =
        "Every time: eye and ear protection on; no gloves, no loose sleeves, hair tied back. Extraction running: fine wood dust harms the lungs. "
        + "Hands outside the room the cutter moves in while the spindle has power. Never leave it running alone; stand within reach of the stop. "
        + "No cutter faster than the turns marked on it. Something sounds wrong: stop, do not reach in.";

    public const string Defers = "defers to your machine's manual, local codes and licensed practice";
}
