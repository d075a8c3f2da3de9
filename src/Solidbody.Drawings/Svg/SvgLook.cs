namespace Solidbody.Drawings.Svg;

/// <summary>Whether an element is seen at all: its attributes, and its style attribute, which outweighs them. Style sheets are not read.</summary>
internal static class SvgLook
{
    /// <summary>A property's value, or null.</summary>
    public static string? Of(SvgElement element, string property) => Styled(element, property) ?? element[property]?.Trim();

    /// <summary>A property's value in the style attribute alone.</summary>
    public static string? Styled(SvgElement element, string property)
    {
        if (element["style"] is not { } style) return null;
        foreach (var part in style.Split(';'))
            if (part.Split(':', 2) is [var name, var value] && name.Trim() == property) return value.Replace("!important", "", StringComparison.Ordinal).Trim();
        return null;
    }

    /// <summary>Not drawn, with all below it.</summary>
    public static bool IsOff(SvgElement element) => Of(element, "display") == "none";

    /// <summary>Whether the element says that it is seen; null when it takes over what is said around it.</summary>
    public static bool? Visibility(SvgElement element) => Of(element, "visibility") switch { "hidden" or "collapse" => false, "visible" => true, _ => null };
}
