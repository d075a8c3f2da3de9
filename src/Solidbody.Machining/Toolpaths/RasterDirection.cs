namespace Solidbody.Machining.Toolpaths;

/// <summary>Which way the passes of a raster run in the laid frame.</summary>
public enum RasterDirection
{
    /// <summary>Along y: across the part.</summary>
    Across,
    /// <summary>Along x: along the part.</summary>
    Along,
}
