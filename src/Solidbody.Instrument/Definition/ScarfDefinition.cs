namespace Solidbody.Instrument;

/// <summary>Where the line of a scarf joint comes out in front.</summary>
public enum ScarfPlace
{
    /// <summary>Under the fretboard: the headstock lies on the slope sawn at the shaft's end.</summary>
    UnderBoard,
    /// <summary>Across the headstock's face: the headstock is glued under the shaft, whose sawn slope is the face's beginning.</summary>
    OnFace,
}

/// <param name="Place">Where the line comes out.</param>
/// <param name="Stock">Thickness of the board both pieces are sawn from.</param>
public sealed record ScarfDefinition(ScarfPlace Place, double Stock);
