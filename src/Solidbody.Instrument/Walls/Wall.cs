using Solidbody.Geometry;

namespace Solidbody.Instrument;

/// <summary>What a wall stands against.</summary>
public enum WallSide { Void, Edge, Front, Back }

/// <summary>Wood between a void and another one, the body's edge, or a face, where it is least.</summary>
/// <param name="Of">The void: a room, a hole or a bore by its name.</param>
/// <param name="To">The other one's name; <c>edge</c>, <c>front</c> or <c>back</c>.</param>
/// <param name="Against">What the other one is.</param>
/// <param name="Wood">mm; negative when they meet, by how far they overlap.</param>
/// <param name="At">Where, part frame.</param>
public sealed record Wall(string Of, string To, WallSide Against, double Wood, PartPoint At);
