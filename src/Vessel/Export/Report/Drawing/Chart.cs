using Vessel.Export.Drawing;
using Vessel.Geometry;

namespace Vessel.Export.Report.Drawing;

/// <summary>The room of a curve with its axes: x from its left edge, y down from its upper one, page units.</summary>
/// <param name="Left">Room for the figures and the name of the axis that stands.</param>
internal sealed record Chart(double Width, double Height, double Left = 78)
{
    /// <summary>The whole of the picture.</summary>
    public Box2 Frame(double above = 30, double right = 20, double below = 58) =>
        new(new(-Left, -Height - below), new(Width + right, above));

    /// <summary>A place by its shares of either axis.</summary>
    public Point2 At(double along, double up) => new(Width * along, Height * (up - 1));

    public Item Axis => Stroke.Through([At(0, 1), At(0, 0), At(1, 0)], Pens.Axis);

    /// <summary>A line across at a share of the axis below, with its figure.</summary>
    public Item[] Upright(double along, string text) =>
        [Stroke.Line(At(along, 0), At(along, 1), Pens.Grid), Figure(text, At(along, 0) - new Point2(0, 22), Anchor.Middle)];

    /// <summary>A line across at a share of the axis that stands, with its figure.</summary>
    public Item[] Level(double up, string text) => [Stroke.Line(At(0, up), At(1, up), Pens.Grid), Beside(up, text)];

    /// <summary>A figure at a share of the axis that stands.</summary>
    public Text Beside(double up, string text) => Figure(text, At(0, up) - new Point2(8, 6), Anchor.End);

    /// <summary>What the two axes are of.</summary>
    public Item[] Names(string along, string up) =>
    [
        new Text(along, new(Width / 2, -Height - 48), Picture.Letter, Pens.Name, Anchor.Middle),
        new Text(up, new(20 - Left, -Height / 2), Picture.Letter, Pens.Name, Anchor.Middle, Math.PI / 2),
    ];

    public static Text Figure(string text, Point2 at, Anchor anchor) => new(text, at, Picture.Letter, Pens.Figure, anchor);
}
