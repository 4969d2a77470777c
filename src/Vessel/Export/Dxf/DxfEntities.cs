using Vessel.Geometry;

namespace Vessel.Export.Dxf;

/// <summary>The entities of model space, each in the words of its edition.</summary>
internal sealed class DxfEntities(DxfTags tags, DxfRelease release)
{
    public void Write(IEnumerable<DxfEntity> entities)
    {
        var handle = DxfHandles.FirstEntity;
        foreach (var entity in entities)
        {
            switch (entity)
            {
                case DxfLine line:
                    Head("LINE", handle, line.Layer, "AcDbLine");
                    tags.WriteSpatial(10, line.A);
                    tags.WriteSpatial(11, line.B);
                    break;
                case DxfCircle circle:
                    Head("CIRCLE", handle, circle.Layer, "AcDbCircle");
                    tags.WriteSpatial(10, circle.Center);
                    tags.Write(40, circle.Radius);
                    break;
                case DxfPolyline polyline when release == DxfRelease.R12:
                    WriteOldPolyline(polyline);
                    break;
                case DxfPolyline polyline:
                    WritePolyline(polyline, handle);
                    break;
                case DxfText text:
                    WriteText(text, handle);
                    break;
                default:
                    throw new ArgumentException($"no such entity: {entity}");
            }

            handle++;
        }
    }

    private void Head(string type, int handle, string layer, string className)
    {
        tags.Write(0, type);
        if (release == DxfRelease.R2000)
        {
            tags.Handle(5, handle);
            tags.Handle(330, DxfHandles.ModelSpace);
            tags.Write(100, "AcDbEntity");
        }

        tags.Write(8, layer);
        if (release == DxfRelease.R2000)
            tags.Write(100, className);
    }

    private void WritePolyline(DxfPolyline polyline, int handle)
    {
        Head("LWPOLYLINE", handle, polyline.Layer, "AcDbPolyline");
        tags.Write(90, polyline.Vertices.Length);
        tags.Write(70, polyline.Closed ? 1 : 0);
        foreach (var vertex in polyline.Vertices)
        {
            tags.Write(10, vertex.At);
            tags.Bulge(vertex.Value);
        }
    }

    private void WriteOldPolyline(DxfPolyline polyline)
    {
        Head("POLYLINE", 0, polyline.Layer, string.Empty);
        tags.Write(66, 1);
        tags.WriteSpatial(10, new(0, 0));
        tags.Write(70, polyline.Closed ? 1 : 0);
        foreach (var vertex in polyline.Vertices)
        {
            Head("VERTEX", 0, polyline.Layer, string.Empty);
            tags.WriteSpatial(10, vertex.At);
            tags.Bulge(vertex.Value);
        }

        Head("SEQEND", 0, polyline.Layer, string.Empty);
    }

    private void WriteText(DxfText text, int handle)
    {
        Head("TEXT", handle, text.Layer, "AcDbText");
        tags.WriteSpatial(10, text.At);
        tags.Write(40, text.Height);
        tags.Words(1, text.Words);
        if (release == DxfRelease.R2000)
            tags.Write(100, "AcDbText");
    }
}
