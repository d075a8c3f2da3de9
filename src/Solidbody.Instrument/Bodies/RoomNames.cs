namespace Solidbody.Instrument.Bodies;

/// <summary>What rooms are called, in the instrument file and on paper.</summary>
public static class RoomNames
{
    public const string NeckPocket = "neck pocket", Controls = "controls", CoverLedge = "cover ledge", Bridge = "bridge",
        TremoloOpening = "tremolo opening", Springs = "spring cavity", BlockWell = "block well", SpringLedge = "spring cover ledge";
}
