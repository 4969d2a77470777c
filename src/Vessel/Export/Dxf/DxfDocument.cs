using Vessel.Export.Drawing;
using System.Globalization;
using Vessel.Geometry;

namespace Vessel.Export.Dxf;

/// <summary>A whole file: the conservative set that every reader of its edition understands; millimetres.</summary>
internal static class DxfDocument
{
    public static void Write(IReadOnlyCollection<Item> items, DxfRelease release, Stream to)
    {
        using var tags = new DxfTags(to);
        var withHandles = release == DxfRelease.R2000;
        var tables = new DxfTables(tags, withHandles);
        var bounds = DxfEntities.Bounds(items) is { IsEmpty: false } around ? around : new(default, default);

        tables.Begin("HEADER");
        WriteHeader(tags, withHandles, bounds, DxfHandles.FirstEntity + items.Sum(DxfEntities.Count));
        tables.End();
        if (withHandles)
        {
            tables.Begin("CLASSES");
            tables.End();
        }

        tables.Write(bounds);
        tables.WriteBlocks();
        tables.Begin("ENTITIES");
        new DxfEntities(tags, release).Write(items);
        tables.End();
        if (withHandles)
            tables.WriteObjects();
        tags.Write(0, "EOF");
    }

    private static void WriteHeader(DxfTags tags, bool withHandles, Box2 bounds, int handleSeed)
    {
        Variable("$ACADVER", 1, withHandles ? "AC1015" : "AC1009");
        if (withHandles)
        {
            // Units: 4 = millimetres; measurement: 1 = metric.
            Variable("$HANDSEED", 5, handleSeed.ToString("X", CultureInfo.InvariantCulture));
            Variable("$INSUNITS", 70, "4");
            Variable("$MEASUREMENT", 70, "1");
        }

        tags.Write(9, "$EXTMIN");
        tags.WriteSpatial(10, bounds.Min);
        tags.Write(9, "$EXTMAX");
        tags.WriteSpatial(10, bounds.Max);

        void Variable(string name, int code, string value)
        {
            tags.Write(9, name);
            tags.Write(code, value);
        }
    }
}
