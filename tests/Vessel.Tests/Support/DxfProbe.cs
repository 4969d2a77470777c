using Vessel.Geometry;
using Xunit;

namespace Vessel.Tests.Support;

/// <summary>
/// A strict reader of our own that demands everything the published DXF reference asks of a file, where common readers
/// forgive. Throws an assertion where the file breaks a rule.
/// </summary>
internal sealed class DxfProbe
{
    private static readonly string[] _layers = ["0", "CUT", "BEND", "MARK", "NOTE"];
    private static readonly string[] _oldEntities = ["LINE", "CIRCLE", "POLYLINE", "VERTEX", "SEQEND", "TEXT"];
    private static readonly string[] _allTables = ["VPORT", "LTYPE", "LAYER", "STYLE", "VIEW", "UCS", "APPID", "DIMSTYLE", "BLOCK_RECORD"];

    private readonly Dictionary<string, List<DxfNode>> _sections;
    private readonly bool _old;

    private DxfProbe(byte[] file)
    {
        var nodes = DxfNode.Split(DxfTag.Read(file));
        Assert.Equal("EOF", nodes[^1].Type);
        _sections = Sections(nodes[..^1]);
        Header = ReadHeader();
        _old = Header["$ACADVER"][0].Value == "AC1009";
        Polylines = _old ? [] : [.. Entities.Where(entity => entity.Type == "LWPOLYLINE").Select(ReadPolyline)];
        if (_old)
            Polylines = ReadOldPolylines();
    }

    public Dictionary<string, List<DxfTag>> Header { get; }

    public List<DxfNode> Entities => _sections["ENTITIES"];

    public List<(string Layer, bool Closed, List<Bulge> Vertices)> Polylines { get; }

    public static DxfProbe Check(byte[] file)
    {
        var probe = new DxfProbe(file);
        if (probe._old)
            probe.CheckOld();
        else
            probe.CheckNew();
        probe.CheckLayers();
        probe.CheckCut();
        probe.CheckPolylines();
        probe.CheckDuplicates();
        return probe;
    }

    public IEnumerable<DxfNode> On(string layer, string type) => Entities.Where(entity => entity.Type == type && entity[8] == layer);

    public Point2 HeaderPoint(string name) => new(Header[name][0].AsReal(), Header[name][1].AsReal());

    private static Dictionary<string, List<DxfNode>> Sections(List<DxfNode> nodes)
    {
        var sections = new Dictionary<string, List<DxfNode>>();
        List<DxfNode>? open = null;
        foreach (var node in nodes)
        {
            if (node.Type == "SECTION")
            {
                Assert.Null(open);
                open = node[2] == "HEADER" ? [node] : [];
                sections.Add(node[2]!, open);
            }
            else if (node.Type == "ENDSEC")
            {
                Assert.NotNull(open);
                open = null;
            }
            else
            {
                Assert.NotNull(open);
                open.Add(node);
            }
        }

        Assert.Null(open);
        return sections;
    }

    private Dictionary<string, List<DxfTag>> ReadHeader()
    {
        var header = new Dictionary<string, List<DxfTag>>();
        foreach (var tag in _sections["HEADER"][0].Tags.Skip(1))
        {
            if (tag.Code == 9)
                header.Add(tag.Value, []);
            else
                header[header.Keys.Last()].Add(tag);
        }

        return header;
    }

    private void CheckNew()
    {
        Assert.Equal(["HEADER", "CLASSES", "TABLES", "BLOCKS", "ENTITIES", "OBJECTS"], _sections.Keys);
        Assert.Equal("AC1015", Header["$ACADVER"][0].Value);
        Assert.Equal(new DxfTag(70, "4"), Header["$INSUNITS"].Single());
        Assert.Equal(new DxfTag(70, "1"), Header["$MEASUREMENT"].Single());
        CheckHandles();
        CheckTables(_allTables);
        CheckBlocks();
        CheckObjects();
        var modelSpace = Records("BLOCK_RECORD").Single(record => record[2] == "*Model_Space").Handle(5);
        Assert.All(Entities, entity => CheckEntity(entity, modelSpace));
    }

    private void CheckOld()
    {
        Assert.Equal(["HEADER", "TABLES", "BLOCKS", "ENTITIES"], _sections.Keys);
        Assert.Equal(["$ACADVER", "$EXTMIN", "$EXTMAX"], Header.Keys);
        Assert.Empty(_sections["BLOCKS"]);
        Assert.Equal(["LTYPE", "LAYER", "STYLE"], _sections["TABLES"].Where(node => node.Type == "TABLE").Select(node => node[2]));
        Assert.All(_sections.Values.SelectMany(nodes => nodes),
            node => Assert.DoesNotContain(node.Tags, tag => tag.Code is 5 or 100 or 330));
        Assert.All(Entities, entity => Assert.Contains(entity.Type, _oldEntities));
    }

    private void CheckHandles()
    {
        var owned = _sections.Where(section => section.Key != "HEADER").SelectMany(section => section.Value)
            .Where(node => node.Type != "ENDTAB").ToList();
        var handles = owned.Select(node => node.Handle(node.Type == "DIMSTYLE" ? 105 : 5)).ToList();
        Assert.Equal(handles.Count, handles.Distinct().Count());
        Assert.DoesNotContain(0, handles);
        Assert.True(handles.Max() < Header["$HANDSEED"].Single(tag => tag.Code == 5).AsHandle());
        Assert.All(owned, node => Assert.Contains(node.Handle(330), handles.Append(0)));
    }

    private void CheckTables(string[] names)
    {
        Assert.Equal(names, _sections["TABLES"].Where(node => node.Type == "TABLE").Select(node => node[2]));
        Assert.Equal(names.Length, _sections["TABLES"].Count(node => node.Type == "ENDTAB"));
        foreach (var name in names)
        {
            var table = Head(name);
            Assert.Equal(0, table.Handle(330));
            Assert.Equal(name == "DIMSTYLE" ? ["AcDbSymbolTable", "AcDbDimStyleTable"] : ["AcDbSymbolTable"], table.All(100));
            var records = Records(name);
            Assert.Equal(records.Count, (int)table.Real(70));
            Assert.All(records, record => Assert.Equal(table.Handle(5), record.Handle(330)));
            Assert.All(records, record => Assert.Equal(["AcDbSymbolTableRecord", ClassOf(name)], record.All(100)));
        }

        Assert.Equal(["*Active"], Names("VPORT"));
        Assert.Equal(["ByBlock", "ByLayer", "Continuous"], Names("LTYPE"));
        Assert.Equal(["Standard"], Names("STYLE"));
        Assert.Equal(["ACAD"], Names("APPID"));
        Assert.Equal(["Standard"], Names("DIMSTYLE"));
        Assert.Equal(["*Model_Space", "*Paper_Space"], Names("BLOCK_RECORD"));
        Assert.All(Records("LAYER"), layer => Assert.Null(layer[390]));
    }

    private void CheckBlocks()
    {
        var blocks = _sections["BLOCKS"];
        Assert.Equal(["BLOCK", "ENDBLK", "BLOCK", "ENDBLK"], blocks.Select(node => node.Type));
        Assert.Equal(["*Model_Space", "*Paper_Space"], blocks.Where(node => node.Type == "BLOCK").Select(node => node[2]));
        Assert.All(blocks, node => Assert.Equal(["AcDbEntity", node.Type == "BLOCK" ? "AcDbBlockBegin" : "AcDbBlockEnd"], node.All(100)));
        foreach (var (pair, record) in blocks.Chunk(2).Zip(Records("BLOCK_RECORD")))
            Assert.All(pair, node => Assert.Equal(record.Handle(5), node.Handle(330)));
    }

    private void CheckObjects()
    {
        var root = _sections["OBJECTS"][0];
        Assert.Equal("DICTIONARY", root.Type);
        Assert.Equal(0, root.Handle(330));
        Assert.Equal("ACAD_GROUP", root[3]);
        Assert.Contains(_sections["OBJECTS"], node => node.Handle(5) == root.Handle(350) && node.Handle(330) == root.Handle(5));
    }

    private static void CheckEntity(DxfNode entity, int modelSpace)
    {
        Assert.Equal(modelSpace, entity.Handle(330));
        string[] classes = entity.Type switch
        {
            "LINE" => ["AcDbEntity", "AcDbLine"],
            "CIRCLE" => ["AcDbEntity", "AcDbCircle"],
            "LWPOLYLINE" => ["AcDbEntity", "AcDbPolyline"],
            "TEXT" => ["AcDbEntity", "AcDbText", "AcDbText"],
            _ => throw new InvalidOperationException($"an entity of type {entity.Type}"),
        };
        Assert.Equal(classes, entity.All(100));
        Assert.Equal([5, 330, 100, 8, 100], entity.Tags.Take(5).Select(tag => tag.Code));
    }

    private void CheckLayers()
    {
        var layers = Records("LAYER");
        Assert.Equal(_layers, layers.Select(layer => layer[2]));
        Assert.Equal(["7", "7", "6", "3", "8"], layers.Select(layer => layer[62]));
        Assert.All(layers, layer => Assert.Contains(layer[6], Names("LTYPE")));
        Assert.All(Entities, entity => Assert.Contains(entity[8], _layers[1..]));
    }

    private void CheckCut()
    {
        var cut = Entities.Where(entity => entity[8] == "CUT").Select(entity => entity.Type).Distinct();
        Assert.Empty(cut.Except(_old ? ["CIRCLE", "POLYLINE", "VERTEX", "SEQEND"] : ["CIRCLE", "LWPOLYLINE"]));
        Assert.All(Polylines.Where(polyline => polyline.Layer == "CUT"), polyline => Assert.True(polyline.Closed));
    }

    private void CheckPolylines() => Assert.All(Polylines, polyline =>
    {
        var (_, closed, vertices) = polyline;
        Assert.True(vertices.Count >= 2);
        Assert.All(vertices, vertex => Assert.True(Math.Abs(vertex.Value) <= 1));
        var next = closed ? vertices.Skip(1).Append(vertices[0]) : vertices.Skip(1);
        Assert.All(vertices.Zip(next), pair => Assert.NotEqual(pair.First.At, pair.Second.At));
    });

    private void CheckDuplicates()
    {
        var drawn = Entities.Where(entity => entity.Type is "LINE" or "CIRCLE" or "LWPOLYLINE" or "TEXT")
            .Select(entity => entity.Type + string.Join(' ', entity.Tags.Where(tag => tag.Code is not (5 or 330)))).ToList();
        Assert.Equal(drawn.Count, drawn.Distinct().Count());
        Assert.All(Entities.Where(entity => entity.Type == "LINE"), line => Assert.NotEqual(line.Point(10), line.Point(11)));
        Assert.All(Entities.Where(entity => entity.Type == "CIRCLE"), circle => Assert.True(circle.Real(40) > 0));
    }

    private static (string Layer, bool Closed, List<Bulge> Vertices) ReadPolyline(DxfNode node)
    {
        var vertices = new List<Bulge>();
        foreach (var tag in node.Tags)
        {
            if (tag.Code == 10)
                vertices.Add(new(new(tag.AsReal(), double.NaN), 0));
            else if (tag.Code == 20)
                vertices[^1] = new(new(vertices[^1].At.U, tag.AsReal()), 0);
            else if (tag.Code == 42)
                vertices[^1] = vertices[^1] with { Value = tag.AsReal() };
        }

        Assert.Equal(vertices.Count, int.Parse(node[90]!, System.Globalization.CultureInfo.InvariantCulture));
        return (node[8]!, node[70] == "1", vertices);
    }

    private List<(string Layer, bool Closed, List<Bulge> Vertices)> ReadOldPolylines()
    {
        var polylines = new List<(string Layer, bool Closed, List<Bulge> Vertices)>();
        var open = false;
        foreach (var entity in Entities)
        {
            Assert.Equal(open, entity.Type is "VERTEX" or "SEQEND");
            if (entity.Type == "POLYLINE")
            {
                Assert.Equal("1", entity[66]);
                polylines.Add((entity[8]!, entity[70] == "1", []));
                open = true;
            }
            else if (entity.Type == "VERTEX")
            {
                polylines[^1].Vertices.Add(new(entity.Point(10), entity[42] is null ? 0 : entity.Real(42)));
            }
            else if (entity.Type == "SEQEND")
            {
                open = false;
            }
        }

        return polylines;
    }

    private DxfNode Head(string table) => _sections["TABLES"].Single(node => node.Type == "TABLE" && node[2] == table);

    private List<DxfNode> Records(string table) =>
        [.. _sections["TABLES"].SkipWhile(node => node.Type != "TABLE" || node[2] != table).Skip(1).TakeWhile(node => node.Type == table)];

    private IEnumerable<string?> Names(string table) => Records(table).Select(record => record[2]);

    private static string ClassOf(string table) => table switch
    {
        "VPORT" => "AcDbViewportTableRecord",
        "LTYPE" => "AcDbLinetypeTableRecord",
        "LAYER" => "AcDbLayerTableRecord",
        "STYLE" => "AcDbTextStyleTableRecord",
        "APPID" => "AcDbRegAppTableRecord",
        "DIMSTYLE" => "AcDbDimStyleTableRecord",
        "BLOCK_RECORD" => "AcDbBlockTableRecord",
        _ => throw new InvalidOperationException($"a record in the table {table}"),
    };
}
