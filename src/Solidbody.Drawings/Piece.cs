using Solidbody.Geometry;

namespace Solidbody.Drawings;

/// <summary>One stroke of a drawing as chords, mm.</summary>
/// <param name="Points">At least two, no neighbours alike; a closed one does not repeat its first.</param>
/// <param name="Closed">Whether the drawing itself closes it.</param>
internal sealed record Piece(List<Point2> Points, bool Closed, string Name, DrawingPlace At)
{
    public double Length
    {
        get
        {
            var sum = 0.0;
            for (var i = 1; i < Points.Count; i++) sum += Points[i].DistanceTo(Points[i - 1]);
            return sum;
        }
    }
}
