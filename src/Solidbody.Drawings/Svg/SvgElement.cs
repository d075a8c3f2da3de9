namespace Solidbody.Drawings.Svg;

/// <summary>An element of an SVG drawing with the attributes this reader knows.</summary>
internal sealed record SvgElement(string Name, DrawingPlace At)
{
    public Dictionary<string, string> Attributes { get; } = [];
    public List<SvgElement> Children { get; } = [];

    public string? this[string attribute] => Attributes.GetValueOrDefault(attribute);
}
