using System.Collections.Frozen;
using System.Xml;

namespace Solidbody.Drawings.Svg;

/// <summary>Reads the XML of an SVG drawing: no document type, so no entities of its own; nothing is fetched; nothing nests without end.</summary>
internal sealed class SvgTree
{
    private const string SvgNamespace = "http://www.w3.org/2000/svg", LinkNamespace = "http://www.w3.org/1999/xlink";

    private static readonly FrozenSet<string> Known = FrozenSet.ToFrozenSet(
    [
        "id", "d", "points", "transform", "style", "display", "visibility", "clip-path", "mask", "href", "viewBox", "preserveAspectRatio",
        "x", "y", "width", "height", "rx", "ry", "r", "cx", "cy", "x1", "y1", "x2", "y2",
    ]);

    public SvgElement Root { get; }
    /// <summary>The first element of each id.</summary>
    public Dictionary<string, SvgElement> ById { get; } = [];

    private SvgTree(SvgElement root) => Root = root;

    public static SvgTree Read(DrawingFile file, ReadingLog log)
    {
        var settings = new XmlReaderSettings
        {
            DtdProcessing = DtdProcessing.Prohibit,
            XmlResolver = null,
            IgnoreComments = true,
            IgnoreProcessingInstructions = true,
            IgnoreWhitespace = true,
            MaxCharactersInDocument = DrawingLimits.Bytes,
        };
        using var stream = new MemoryStream(file.Content.ToArray(), writable: false);
        using var reader = XmlReader.Create(stream, settings);
        try
        {
            return Read(reader, log);
        }
        catch (XmlException e)
        {
            throw Refusal(e, file, log);
        }
    }

    private static DrawingRefusal Refusal(XmlException e, DrawingFile file, ReadingLog log)
    {
        // The one thing the settings prohibit; it is told without a good place.
        if (e.Message.Contains("DTD", StringComparison.Ordinal))
            return log.Stop(DocumentType(file.Content.Span), "the drawing declares a document type, which could name entities and other files", "an SVG without <!DOCTYPE …>", "take the <!DOCTYPE …> out: a drawing does not need it");
        return log.Stop(new(Math.Max(1, e.LineNumber), Math.Max(1, e.LinePosition)), $"the drawing is not well-formed XML: {ReadingLog.Quote(e.Message)}", "an SVG, whole and in UTF-8 or UTF-16", "save the drawing again; a cut-off file ends like this");
    }

    private static DrawingPlace DocumentType(ReadOnlySpan<byte> text)
    {
        var before = text[..Math.Max(0, text.IndexOf("<!DOCTYPE"u8))];
        return new(before.Count((byte)'\n') + 1, before.Length - before.LastIndexOf((byte)'\n'));
    }

    private static SvgTree Read(XmlReader reader, ReadingLog log)
    {
        var place = (IXmlLineInfo)reader;
        SvgTree? tree = null;
        var open = new Stack<SvgElement>();
        var count = 0;
        while (reader.Read())
        {
            if (reader.NodeType == XmlNodeType.EndElement) open.Pop();
            if (reader.NodeType != XmlNodeType.Element) continue;
            var at = new DrawingPlace(place.LineNumber, place.LinePosition);
            if (++count > DrawingLimits.Elements)
                throw log.Stop(at, $"the drawing holds more than {DrawingLimits.Elements} elements", $"at most {DrawingLimits.Elements}", "keep the outline alone in a file of its own");
            if (open.Count >= DrawingLimits.Nesting)
                throw log.Stop(at, $"elements lie more than {DrawingLimits.Nesting} deep inside one another", $"at most {DrawingLimits.Nesting}", "take the outline out of its groups");
            var element = new SvgElement(IsOurs(reader) ? reader.LocalName : "", at);
            var isEmpty = reader.IsEmptyElement;
            ReadAttributes(reader, element);
            if (tree is null)
            {
                if (element.Name != "svg") throw log.Stop(at, $"the drawing begins with <{reader.LocalName}>", "<svg>", "check that this is an SVG drawing");
                tree = new(element);
            }
            else open.Peek().Children.Add(element);
            if (element["id"] is { } id) tree.ById.TryAdd(id, element);
            if (!isEmpty) open.Push(element);
        }
        return tree ?? throw log.Stop(new(1, 1), "the drawing is empty", "<svg>", "check that this is an SVG drawing");
    }

    /// <summary>By hand people leave the namespace out.</summary>
    private static bool IsOurs(XmlReader reader) => reader.NamespaceURI is SvgNamespace or "";

    private static void ReadAttributes(XmlReader reader, SvgElement element)
    {
        while (reader.MoveToNextAttribute())
            if (reader.NamespaceURI is "" or LinkNamespace && Known.Contains(reader.LocalName)) element.Attributes[reader.LocalName] = reader.Value;
        reader.MoveToElement();
    }
}
