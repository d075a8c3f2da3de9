namespace Solidbody.Geometry;

/// <summary>A face of a part, and the face that lies up in a set-up.</summary>
public enum Side { Front, Back }
