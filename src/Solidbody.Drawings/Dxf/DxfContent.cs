namespace Solidbody.Drawings.Dxf;

/// <summary>A DXF's sections as far as they matter here: what is drawn, what can be drawn by name, which layers are not seen.</summary>
internal sealed class DxfContent
{
    public List<DxfEntity> Entities { get; } = [];
    public Dictionary<string, List<DxfEntity>> Blocks { get; } = new(StringComparer.OrdinalIgnoreCase);
    /// <summary>A block's entity BLOCK itself: its base point.</summary>
    public Dictionary<string, DxfEntity> BlockHeads { get; } = new(StringComparer.OrdinalIgnoreCase);
    public HashSet<string> UnseenLayers { get; } = new(StringComparer.OrdinalIgnoreCase);

    public static DxfContent Of(DxfGroups groups, ReadingLog log)
    {
        var content = new DxfContent();
        var (section, block) = ("", (List<DxfEntity>?)null);
        for (var i = 0; i < groups.Count;)
        {
            if (groups[i].Code != 0) { i++; continue; }
            var next = i + 1;
            while (next < groups.Count && groups[next].Code != 0) next++;
            var entity = new DxfEntity(groups, i, next, log);
            i = next;
            switch (entity.Type)
            {
                case "SECTION": section = entity.Text(2) ?? ""; break;
                case "ENDSEC": (section, block) = ("", null); break;
                case "EOF": return content;
                default: block = content.Add(entity, section, block); break;
            }
        }
        return content;
    }

    /// <returns>The block that is open after it.</returns>
    private List<DxfEntity>? Add(DxfEntity entity, string section, List<DxfEntity>? block)
    {
        if (section == "ENTITIES") Entities.Add(entity);
        // Frozen, or switched off: its colour is negative.
        if (section == "TABLES" && entity.Type == "LAYER" && ((entity.Flags(70) & 1) != 0 || entity.Number(62, 7) < 0)) UnseenLayers.Add(entity.Text(2) ?? "");
        if (section != "BLOCKS") return null;
        if (entity.Type == "ENDBLK") return null;
        if (entity.Type != "BLOCK")
        {
            block?.Add(entity);
            return block;
        }
        var name = entity.Text(2) ?? "";
        BlockHeads[name] = entity;
        return Blocks[name] = [];
    }
}
