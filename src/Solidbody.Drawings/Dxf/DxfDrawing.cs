using System.Collections.Frozen;
using Solidbody.Geometry;

namespace Solidbody.Drawings.Dxf;

/// <summary>Draws a DXF's entities: lines, arcs, circles, ellipses, polylines with bulges, splines, and blocks where they are inserted.</summary>
internal sealed class DxfDrawing
{
    /// <summary>Marks and words that are no outline.</summary>
    private static readonly FrozenSet<string> LeftOut = FrozenSet.ToFrozenSet(
        ["TEXT", "MTEXT", "ATTRIB", "ATTDEF", "DIMENSION", "ARC_DIMENSION", "LEADER", "MULTILEADER", "TOLERANCE", "POINT", "HATCH", "IMAGE", "WIPEOUT", "VIEWPORT", "UNDERLAY"]);

    private readonly DxfContent content;
    private readonly DrawingWish wish;
    private readonly Pen pen;
    private readonly ReadingLog log;
    private readonly SortedSet<string> layers = new(StringComparer.OrdinalIgnoreCase);
    private bool found;
    private int walked;

    private DxfDrawing(DxfContent content, DrawingWish wish, Pen pen, ReadingLog log) => (this.content, this.wish, this.pen, this.log) = (content, wish, pen, log);

    public static void Draw(DrawingFile file, DrawingWish wish, Pen pen, ReadingLog log)
    {
        var groups = DxfGroups.Read(file, log);
        var unit = DxfUnits.Of(groups, wish, log);
        var drawing = new DxfDrawing(DxfContent.Of(groups, log), wish, pen, log);
        drawing.DrawAll(drawing.content.Entities, Affine.Scale(unit, unit), layer: null, copies: 0);
        if (!drawing.found && wish.Pick is { } pick)
            log.Refuse(new(1, 1), $"nothing is drawn on the layer {ReadingLog.Quote(pick)}", drawing.layers.Count == 0 ? "a layer with lines on it; the drawing has none" : $"one of its layers: {string.Join(", ", drawing.layers.Take(12))}", "choose one of them, or leave the choice out");
    }

    /// <param name="layer">What layer 0 stands for inside a block: the layer the block is inserted on.</param>
    private void DrawAll(List<DxfEntity> entities, Affine map, string? layer, int copies)
    {
        for (var i = 0; i < entities.Count; i++)
        {
            var entity = entities[i];
            if (++walked > DrawingLimits.Elements)
                throw log.Stop(entity.At, $"the drawing holds more than {DrawingLimits.Elements} entities, copies counted each time", $"at most {DrawingLimits.Elements}", "keep the outline alone in a file of its own");
            var type = entity.Type;
            // An old polyline is followed by its corners.
            var corners = i;
            if (type == "POLYLINE") while (corners + 1 < entities.Count && entities[corners + 1].Type == "VERTEX") corners++;
            var own = entities.GetRange(i + 1, corners - i);
            i = corners;
            if (type == "SEQEND") continue;
            var on = layer is not null && entity.Layer == "0" ? layer : entity.Layer;
            if (content.UnseenLayers.Contains(on) || entity.Flags(60) == 1) continue;
            if (entity.Flags(67) == 1)
            {
                log.Understood(entity.At, "what lies on a layout's paper was left out");
                continue;
            }
            if (type == "INSERT") Insert(entity, map, on, copies);
            else if (LeftOut.Contains(type)) LeaveOut(entity, on);
            else if (IsWanted(on)) One(entity, type, own, map, on);
        }
    }

    private bool IsWanted(string layer)
    {
        layers.Add(layer);
        found |= IsPicked(layer);
        return IsPicked(layer);
    }

    private bool IsPicked(string layer) => wish.Pick is null || string.Equals(layer, wish.Pick, StringComparison.OrdinalIgnoreCase);

    private void LeaveOut(DxfEntity entity, string layer)
    {
        if (IsPicked(layer)) log.Understood(entity.At, $"{entity.Type} was left out");
    }

    private void One(DxfEntity entity, string type, List<DxfEntity> corners, Affine map, string layer)
    {
        pen.Take($"{type} on layer {layer}", entity.At);
        // Lines, splines and ellipses are given in the drawing's own coordinates, the others in those of their plane.
        if (entity.Plane() is not { } plane) return;
        pen.Map = type is "LINE" or "SPLINE" or "ELLIPSE" ? map : map.After(plane);
        switch (type)
        {
            case "LINE":
                DxfCurves.Line(entity, pen);
                break;
            case "ARC" or "CIRCLE":
                DxfCurves.Arc(entity, pen);
                break;
            case "ELLIPSE":
                DxfCurves.Ellipse(entity, pen, log);
                break;
            case "LWPOLYLINE":
                DxfPolyline.Light(entity, pen);
                break;
            case "POLYLINE":
                DxfPolyline.Old(entity, corners, pen, log);
                break;
            case "SPLINE":
                DxfSpline.Draw(entity, pen, log);
                break;
            default:
                log.Refuse(entity.At, $"{type} is not read", "LINE, ARC, CIRCLE, ELLIPSE, LWPOLYLINE, POLYLINE, SPLINE and INSERT", "turn it into lines, arcs or polylines, or choose the outline's layer alone");
                break;
        }
    }

    private void Insert(DxfEntity entity, Affine map, string layer, int copies)
    {
        var name = entity.Text(2) ?? "";
        if (copies >= DrawingLimits.CopyNesting)
            throw log.Stop(entity.At, $"blocks lie more than {DrawingLimits.CopyNesting} deep inside one another", $"at most {DrawingLimits.CopyNesting}", "dissolve the blocks");
        if (!content.Blocks.TryGetValue(name, out var block))
        {
            log.Refuse(entity.At, $"the block {ReadingLog.Quote(name)} is not in the drawing", "a block of this drawing", "dissolve the block");
            return;
        }
        var (rows, columns, x, y) = (entity.Number(71, 1), entity.Number(70, 1), entity.Number(41, 1), entity.Number(42, 1));
        if (rows > 1 || columns > 1 || !(Math.Abs(x * y) > Tolerances.Geometry))
        {
            log.Refuse(entity.At, rows > 1 || columns > 1 ? $"the block {name} is inserted in rows and columns" : $"the block {name} is inserted flattened", "one insertion, at a size above 0", "dissolve the block");
            return;
        }
        if (entity.Plane() is not { } plane) return;
        var head = content.BlockHeads[name];
        var place = plane.After(Affine.Shift(entity.Point(10))).After(Affine.Turn(double.DegreesToRadians(entity.Number(50, 0)))).After(Affine.Scale(x, y))
            .After(Affine.Shift(new(-head.Number(10, 0), -head.Number(20, 0))));
        DrawAll(block, map.After(place), layer, copies + 1);
    }
}
