using System.Collections.Frozen;

namespace Solidbody.Drawings.Svg;

/// <summary>Draws an SVG's shapes: SVG 1.1's basic shapes and paths, groups, transforms and copies.</summary>
internal sealed class SvgDrawing
{
    /// <summary>Never drawn themselves, only where something names them.</summary>
    private static readonly FrozenSet<string> Unseen = FrozenSet.ToFrozenSet(
        ["defs", "clipPath", "mask", "pattern", "marker", "linearGradient", "radialGradient", "filter", "metadata", "title", "desc", "symbol", "view", "cursor", "font", ""]);

    private static readonly FrozenSet<string> LeftOut = FrozenSet.ToFrozenSet(["text", "image", "foreignObject", "style", "script", "animate", "animateTransform", "animateMotion", "set"]);

    private readonly SvgTree tree;
    private readonly DrawingWish wish;
    private readonly Pen pen;
    private readonly ReadingLog log;
    private bool found;
    private int walked;

    private SvgDrawing(SvgTree tree, DrawingWish wish, Pen pen, ReadingLog log) => (this.tree, this.wish, this.pen, this.log) = (tree, wish, pen, log);

    public static void Draw(DrawingFile file, DrawingWish wish, Pen pen, ReadingLog log)
    {
        var tree = SvgTree.Read(file, log);
        var drawing = new SvgDrawing(tree, wish, pen, log);
        drawing.DrawAll();
    }

    private void DrawAll()
    {
        var start = new Setting(SvgPage.Map(tree.Root, wish, log), "", wish.Pick is null, IsHidden: false, Copies: 0);
        start = Enter(tree.Root, start);
        foreach (var child in tree.Root.Children) Walk(child, start);
        if (!found && wish.Pick is { } pick)
            log.Refuse(tree.Root.At, $"nothing that is drawn has the id {ReadingLog.Quote(pick)}", tree.ById.Count == 0 ? "an id; the drawing has none" : $"one of its ids: {string.Join(", ", tree.ById.Keys.Take(12))}", "choose one of them, or leave the choice out");
    }

    /// <summary>What an element finds: where it lies, what it is called, whether it is wanted and seen, how many copies deep it is.</summary>
    private readonly record struct Setting(Affine Map, string Name, bool IsPicked, bool IsHidden, int Copies);

    /// <summary>The setting inside an element.</summary>
    private Setting Enter(SvgElement element, Setting around)
    {
        var id = element["id"];
        var picked = around.IsPicked || id is not null && id == wish.Pick;
        found |= picked;
        return around with
        {
            Map = around.Map.After(SvgTransform.Of(element, log)),
            Name = id ?? around.Name,
            IsPicked = picked,
            IsHidden = SvgLook.Visibility(element) is { } visible ? !visible : around.IsHidden,
        };
    }

    private void Walk(SvgElement element, Setting around)
    {
        // Copies of copies can be far more than the elements there are.
        if (++walked > 2 * DrawingLimits.Elements)
            throw log.Stop(element.At, $"with its copies (<use>) the drawing holds more than {2 * DrawingLimits.Elements} elements", $"at most {2 * DrawingLimits.Elements}", "turn the copies into shapes of their own");
        if (Unseen.Contains(element.Name) || SvgLook.IsOff(element)) return;
        if (LeftOut.Contains(element.Name))
        {
            if (around.IsPicked) log.Understood(element.At, $"<{element.Name}> was left out");
            return;
        }
        var inside = Enter(element, around);
        // What cuts a shape off would cut the wood differently from what is seen.
        if (inside.IsPicked && (SvgLook.Of(element, "clip-path") ?? SvgLook.Of(element, "mask")) is not (null or "none"))
            log.Refuse(element.At, $"<{element.Name}> is cut off by a clip path or a mask", "shapes that are drawn as they are seen", "cut the shape itself, or take the clip path away");
        switch (element.Name)
        {
            case "g" or "a":
                foreach (var child in element.Children) Walk(child, inside);
                break;
            case "use":
                Copy(element, inside);
                break;
            case "svg" or "switch":
                log.Refuse(element.At, $"<{element.Name}> inside the drawing is not read", "groups, shapes and paths", "ungroup it in the drawing");
                break;
            default:
                Shape(element, inside);
                break;
        }
    }

    private void Copy(SvgElement element, Setting inside)
    {
        var href = element["href"] ?? "";
        if (inside.Copies >= DrawingLimits.CopyNesting)
            throw log.Stop(element.At, $"copies (<use>) lie more than {DrawingLimits.CopyNesting} deep inside one another", $"at most {DrawingLimits.CopyNesting}", "turn the copies into shapes of their own");
        if (!href.StartsWith('#') || !tree.ById.TryGetValue(href[1..], out var original))
            log.Refuse(element.At, $"<use> names {ReadingLog.Quote(href)}", "# and an id of this drawing", "turn the copy into a shape of its own");
        else if (original.Name is "symbol" or "svg")
            log.Refuse(element.At, $"<use> copies a <{original.Name}>, which has a page of its own", "a copy of a group or a shape", "turn the copy into a shape of its own");
        else
            Walk(original, inside with { Map = inside.Map.After(Affine.Shift(new(SvgLength.Of(element, "x", 0, log), SvgLength.Of(element, "y", 0, log)))), Copies = inside.Copies + 1 });
    }

    private void Shape(SvgElement element, Setting inside)
    {
        if (!inside.IsPicked || inside.IsHidden) return;
        pen.Take(inside.Name.Length > 0 ? inside.Name : element.Name, element.At);
        pen.Map = inside.Map;
        if (element.Name == "path") SvgPath.Draw(element, pen, log);
        else if (!SvgShapes.Draw(element, pen, log)) log.Understood(element.At, $"<{element.Name}> was left out");
    }
}
