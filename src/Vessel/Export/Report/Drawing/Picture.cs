using System.Text;
using Vessel.Export.Drawing;
using Vessel.Export.Svg;
using Vessel.Geometry;

namespace Vessel.Export.Report.Drawing;

/// <summary>
/// A picture is a drawing on the page, in units of which a line of text is <see cref="TextHeight"/> high, so that it can be read on a phone
/// whatever is drawn; y up, zero at its upper edge. The style sheet knows pens by their names.
/// </summary>
/// <param name="Description">Description of what is to be seen, for those who do not see it.</param>
internal sealed record Picture(string Id, string Title, string Description, Box2 Frame, IEnumerable<Item> Items)
{
    public const double TextHeight = 17;

    /// <summary>Height of a capital of such text: seven tenths of the size of most typefaces.</summary>
    public const double Letter = Capital * TextHeight;

    private const double Capital = 0.7;

    private static readonly SvgPath _path = new(0, 2);

    /// <param name="under">What is written before the items.</param>
    public void Write(Html html, Action? under = null) => html.Tag(
        "svg",
        () =>
        {
            html.Tag("title", Title, ("id", $"{Id}-title"));
            html.Tag("desc", Description, ("id", $"{Id}-desc"));
            under?.Invoke();
            WriteItems(html);
        },
        ("viewBox", $"{_path.T(Frame.Min.U)} {_path.T(-Frame.Max.V)} {_path.T(Frame.Width)} {_path.T(Frame.Height)}"),
        ("width", _path.T(Frame.Width)),
        ("height", _path.T(Frame.Height)),
        ("role", "img"),
        ("aria-labelledby", $"{Id}-title {Id}-desc"));

    /// <summary>Outlines of one pen that follow each other are one path.</summary>
    private void WriteItems(Html html)
    {
        var path = new StringBuilder();
        Pen? pen = null;
        void End()
        {
            if (path.Length > 0)
                html.Mark("path", ("class", pen!.Name), ("d", path.ToString()));
            path.Clear();
        }

        foreach (var item in Items)
        {
            if (item is Text or Pattern || item.Pen != pen)
                End();
            pen = item.Pen;
            if (item is Text text)
                Write(text, html);
            else if (item is Pattern { Motif: [Circle hole] } dots)
                html.Mark("path", ("class", Pens.Dots.Name), ("stroke-width", _path.T(2 * hole.Radius)), ("d", _path.Of(dots)));
            else
                path.Append(_path.Of(item));
        }

        End();
    }

    private static void Write(Text text, Html html) => html.Tag(
        "text",
        text.Words,
        ("class", text.Pen.Name),
        ("x", _path.T(text.At.U)),
        ("y", _path.T(-text.At.V)),
        ("text-anchor", text.Anchor == Anchor.Start ? null : text.Anchor == Anchor.Middle ? "middle" : "end"),
        ("font-size", text.Height == Letter ? null : _path.T(text.Height / Capital)),
        ("transform", text.Angle == 0 ? null : $"rotate({_path.T(-Turns.ToDegrees(text.Angle))} {_path.P(text.At)})"));
}
