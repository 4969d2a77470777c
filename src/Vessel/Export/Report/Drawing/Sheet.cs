using Vessel.Geometry;

namespace Vessel.Export.Report.Drawing;

/// <summary>
/// A picture on the page: millimetres of the model with y up, brought to units of the page of which text is
/// <see cref="TextHeight"/> high, so that it can be read on a phone whatever the part's size.
/// </summary>
internal sealed record Sheet(Html Html, Box2 Model, double Scale, Box2 Frame)
{
    public const double TextHeight = 17;

    /// <summary>Greatest width and height of what is drawn, page units.</summary>
    private const double Most = 520;

    /// <summary>The whole picture is at least so wide, so that letters are not blown up.</summary>
    private const double LeastWidth = 420;

    public static Sheet For(Html html, Box2 model, (double Left, double Bottom, double Right, double Top) margins)
    {
        var scale = Most / Math.Max(Math.Max(model.Width, model.Height), 1e-9);
        var (width, height) = (scale * model.Width, scale * model.Height);
        var spare = Math.Max(0, LeastWidth - width - margins.Left - margins.Right) / 2;
        return new(html, model, scale, new(
            new(-margins.Left - spare, -margins.Top),
            new(width + margins.Right + spare, height + margins.Bottom)));
    }

    public Point2 At(Point2 model) => new(Scale * (model.U - Model.Min.U), Scale * (Model.Max.V - model.V));

    /// <summary>The element round the picture, with a name and a description for those who do not see it.</summary>
    public void Draw(string id, string title, string description, Action content) => Html.Tag(
        "svg",
        () =>
        {
            Html.Tag("title", title, ("id", $"{id}-title"));
            Html.Tag("desc", description, ("id", $"{id}-desc"));
            content();
        },
        ("viewBox", $"{T(Frame.Min.U)} {T(Frame.Min.V)} {T(Frame.Width)} {T(Frame.Height)}"),
        ("width", T(Frame.Width)),
        ("height", T(Frame.Height)),
        ("role", "img"),
        ("aria-labelledby", $"{id}-title {id}-desc"));

    public void Path(string kind, string path) => Html.Mark("path", ("class", kind), ("d", path));

    public void Line(string kind, Point2 a, Point2 b) => Path(kind, $"M{P(a)}L{P(b)}");

    /// <param name="anchor">start, middle or end.</param>
    /// <param name="turn">Counter-clockwise, degrees.</param>
    public void Text(string kind, Point2 at, string text, string anchor = "middle", double turn = 0, double? size = null) => Html.Tag(
        "text",
        text,
        ("class", kind),
        ("x", T(at.U)),
        ("y", T(at.V)),
        ("text-anchor", anchor == "start" ? null : anchor),
        ("font-size", size is { } height ? T(height) : null),
        ("transform", turn == 0 ? null : $"rotate({T(-turn)} {P(at)})"));

    public static string P(Point2 p) => $"{T(p.U)} {T(p.V)}";

    public static string T(double value) => Numbers.Text(value, 2);
}
