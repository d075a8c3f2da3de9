using Solidbody.Geometry;

namespace Solidbody.Packet.Pictures;

/// <summary>A part looked at square onto one face: part frame to picture, true size. Seen from the back, y runs the other way, as when the part is turned over along its length.</summary>
/// <param name="Seen">The face that looks at the reader.</param>
/// <param name="Shown">What is shown of the plan, part frame.</param>
/// <param name="Corner">Where its upper left corner lies in the picture.</param>
internal sealed record PictureView(Side Seen, Box2 Shown, Point2 Corner)
{
    public Box2 Box => new(Corner.X, Corner.Y, Corner.X + Shown.Width, Corner.Y + Shown.Height);

    public Point2 At(Point2 p) => new(Corner.X + p.X - Shown.X0, Corner.Y + (Seen == Side.Front ? Shown.Y1 - p.Y : p.Y - Shown.Y0));

    public string Words => Seen == Side.Front ? "from the front" : "from the back";
}
