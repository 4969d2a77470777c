using Vessel.Export.Drawing;
using Vessel.Geometry;

namespace Vessel.Export.Dxf;

/// <summary>
/// Items as the entities of model space, each in the words of its edition; arcs stay arcs. Text of the pen <see cref="Pens.Mark"/> is
/// scribed, and goes as lines that a machine can follow; other text goes as text.
/// </summary>
internal sealed class DxfEntities(DxfTags tags, DxfRelease release)
{
    private int _handle = DxfHandles.FirstEntity;

    /// <summary>How many entities an item is: the header tells it before they come.</summary>
    public static int Count(Item item) => item switch
    {
        Area area => area.Outlines.Sum(Count),
        Pattern pattern => pattern.Count * pattern.Motif.Sum(Count),
        Text text when IsScribed(text) => text.Lines.Length,
        _ => 1,
    };

    public static Box2 Bounds(IEnumerable<Item> items) => items.Aggregate(Box2.Empty, (box, item) => box.Join(item switch
    {
        Text text when IsScribed(text) => Placing.Bounds(text.Lines.Select(line => Stroke.Through(line, text.Pen))),
        // Letters of the reader's own typeface: at most about as wide as high.
        Text text => new(text.At, text.At + new Point2(text.Height * text.Words.Length, text.Height)),
        _ => Placing.Bounds(item),
    }));

    /// <exception cref="ArgumentException">A text is set by another place than its left end, or turned, but not scribed.</exception>
    public void Write(Item item)
    {
        switch (item)
        {
            case Stroke { AsLine: { } line }:
                Head("LINE", item.Pen, "AcDbLine");
                tags.WriteSpatial(10, line.A);
                tags.WriteSpatial(11, line.B);
                break;
            case Stroke stroke:
                WritePolyline(stroke);
                break;
            case Circle circle:
                Head("CIRCLE", item.Pen, "AcDbCircle");
                tags.WriteSpatial(10, circle.Center);
                tags.Write(40, circle.Radius);
                break;
            case Area area:
                Write(area.Outlines);
                break;
            case Pattern pattern:
                Write(pattern.Items);
                break;
            case Text text when IsScribed(text):
                foreach (var line in text.Lines)
                    WritePolyline(Stroke.Through(line, text.Pen));
                break;
            case Text { Anchor: Anchor.Start, Angle: 0 } text:
                WriteText(text);
                break;
            default:
                throw new ArgumentException($"no such entity: {item}");
        }
    }

    public void Write(IEnumerable<Item> items)
    {
        foreach (var item in items)
            Write(item);
    }

    private static bool IsScribed(Text text) => text.Pen == Pens.Mark;

    private void Head(string type, Pen pen, string className)
    {
        tags.Write(0, type);
        if (release == DxfRelease.R2000)
        {
            tags.Handle(5, _handle++);
            tags.Handle(330, DxfHandles.ModelSpace);
            tags.Write(100, "AcDbEntity");
        }

        tags.Write(8, DxfLayer.Of(pen));
        if (release == DxfRelease.R2000)
            tags.Write(100, className);
    }

    private void WritePolyline(Stroke stroke)
    {
        if (release == DxfRelease.R12)
        {
            WriteOldPolyline(stroke);
            return;
        }

        Head("LWPOLYLINE", stroke.Pen, "AcDbPolyline");
        tags.Write(90, stroke.Vertices.Length);
        tags.Write(70, stroke.Closed ? 1 : 0);
        foreach (var vertex in stroke.Vertices)
        {
            tags.Write(10, vertex.At);
            tags.Bulge(vertex.Value);
        }
    }

    private void WriteOldPolyline(Stroke stroke)
    {
        Head("POLYLINE", stroke.Pen, string.Empty);
        tags.Write(66, 1);
        tags.WriteSpatial(10, new(0, 0));
        tags.Write(70, stroke.Closed ? 1 : 0);
        foreach (var vertex in stroke.Vertices)
        {
            Head("VERTEX", stroke.Pen, string.Empty);
            tags.WriteSpatial(10, vertex.At);
            tags.Bulge(vertex.Value);
        }

        Head("SEQEND", stroke.Pen, string.Empty);
    }

    private void WriteText(Text text)
    {
        Head("TEXT", text.Pen, "AcDbText");
        tags.WriteSpatial(10, text.At);
        tags.Write(40, text.Height);
        tags.Words(1, text.Words);
        if (release == DxfRelease.R2000)
            tags.Write(100, "AcDbText");
    }
}
