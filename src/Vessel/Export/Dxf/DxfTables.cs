using Vessel.Geometry;

namespace Vessel.Export.Dxf;

/// <summary>
/// The sections that stand round the drawing itself: always the same but for the view. The tables, the blocks and
/// the root dictionary have fixed handles below <see cref="DxfHandles.FirstEntity"/>.
/// </summary>
internal sealed class DxfTables(DxfTags tags, bool withHandles)
{
    // Text in the reader's plainest typeface.
    private const string Typeface = "txt";

    public void Write(Box2 view)
    {
        Begin("TABLES");
        if (withHandles)
            Table("VPORT", 0x8, "AcDbViewportTableRecord", ("*Active", 0x20, () => View(view)));
        Table("LTYPE", 0x5, "AcDbLinetypeTableRecord", LineTypes());
        Table("LAYER", 0x2, "AcDbLayerTableRecord",
            [.. DxfLayer.All.Select((layer, i) => (layer.Name, 0x30 + i, (Action)(() => Layer(layer))))]);
        Table("STYLE", 0x3, "AcDbTextStyleTableRecord", ("Standard", 0x24, Style));
        if (withHandles)
            WriteHandledTables();
        End();
    }

    public void WriteBlocks()
    {
        Begin("BLOCKS");
        if (withHandles)
        {
            Block("*Model_Space", DxfHandles.ModelSpace, 0x40, onPaper: false);
            Block("*Paper_Space", DxfHandles.PaperSpace, 0x42, onPaper: true);
        }

        End();
    }

    public void WriteObjects()
    {
        Begin("OBJECTS");
        Dictionary(DxfHandles.Root, 0);
        tags.Write(3, "ACAD_GROUP");
        tags.Handle(350, DxfHandles.Groups);
        Dictionary(DxfHandles.Groups, DxfHandles.Root);
        End();
    }

    public void Begin(string section)
    {
        tags.Write(0, "SECTION");
        tags.Write(2, section);
    }

    public void End() => tags.Write(0, "ENDSEC");

    private void WriteHandledTables()
    {
        Table("VIEW", 0x6, string.Empty);
        Table("UCS", 0x7, string.Empty);
        Table("APPID", 0x9, "AcDbRegAppTableRecord", ("ACAD", 0x25, () => tags.Write(70, 0)));
        Table("DIMSTYLE", 0xA, "AcDbDimStyleTableRecord", ("Standard", 0x26, () => tags.Write(70, 0)));
        Table("BLOCK_RECORD", 0x1, "AcDbBlockTableRecord",
            ("*Model_Space", DxfHandles.ModelSpace, () => { }
        ), ("*Paper_Space", DxfHandles.PaperSpace, () => { }
        ));
    }

    private void Table(string name, int handle, string recordClass, params (string Name, int Handle, Action Write)[] records)
    {
        tags.Write(0, "TABLE");
        tags.Write(2, name);
        if (withHandles)
        {
            Owned(handle, 0);
            tags.Write(100, "AcDbSymbolTable");
        }

        tags.Write(70, records.Length);
        if (withHandles && name == "DIMSTYLE")
            tags.Write(100, "AcDbDimStyleTable");
        foreach (var record in records)
        {
            tags.Write(0, name);
            if (withHandles)
            {
                Owned(record.Handle, handle, name == "DIMSTYLE" ? 105 : 5);
                tags.Write(100, "AcDbSymbolTableRecord");
                tags.Write(100, recordClass);
            }

            tags.Write(2, record.Name);
            record.Write();
        }

        tags.Write(0, "ENDTAB");
    }

    private void Owned(int handle, int owner, int code = 5)
    {
        tags.Handle(code, handle);
        tags.Handle(330, owner);
    }

    private void View(Box2 view)
    {
        tags.Write(70, 0);
        foreach (var (i, at) in new Point2[] { new(0, 0), new(1, 1), 0.5 * (view.Min + view.Max), new(0, 0), new(10, 10), new(10, 10),
            new(0, 0) }.Index())
            tags.Write(10 + i, at);
        tags.Write(36, 1);
        tags.WriteSpatial(17, new(0, 0));

        // Height of what is seen, with a margin, and its width as a share of that.
        tags.Write(40, 1.1 * Math.Max(Math.Max(view.Height, view.Width / 1.5), 1));
        tags.Write(41, 1.5);
        tags.Write(42, 50);
        foreach (var code in new[] { 43, 44, 50, 51, 71 })
            tags.Write(code, 0);
        tags.Write(72, 100);
        tags.Write(73, 1);
        tags.Write(74, 3);
        foreach (var code in new[] { 75, 76, 77, 78 })
            tags.Write(code, 0);
    }

    private (string Name, int Handle, Action Write)[] LineTypes()
    {
        // The two that stand for "as the block" and "as the layer" are entries of later editions only.
        (string Name, int Handle, Action Write) solid = ("Continuous", 0x23, () => LineType("Solid line"));
        return withHandles
            ? [("ByBlock", 0x21, () => LineType(string.Empty)), ("ByLayer", 0x22, () => LineType(string.Empty)), solid]
            : [solid];
    }

    private void LineType(string description)
    {
        tags.Write(70, 0);
        tags.Write(3, description);
        tags.Write(72, 65);
        tags.Write(73, 0);
        tags.Write(40, 0);
    }

    private void Layer(DxfLayer layer)
    {
        tags.Write(70, 0);
        tags.Write(62, layer.Colour);
        tags.Write(6, "Continuous");
    }

    private void Style()
    {
        tags.Write(70, 0);
        tags.Write(40, 0);
        tags.Write(41, 1);
        tags.Write(50, 0);
        tags.Write(71, 0);
        tags.Write(42, 2.5);
        tags.Write(3, Typeface);
        tags.Write(4, string.Empty);
    }

    private void Block(string name, int record, int handle, bool onPaper)
    {
        tags.Write(0, "BLOCK");
        BlockHead(handle, record, onPaper, "AcDbBlockBegin");
        tags.Write(2, name);
        tags.Write(70, 0);
        tags.WriteSpatial(10, new(0, 0));
        tags.Write(3, name);
        tags.Write(1, string.Empty);
        tags.Write(0, "ENDBLK");
        BlockHead(handle + 1, record, onPaper, "AcDbBlockEnd");
    }

    private void BlockHead(int handle, int record, bool onPaper, string className)
    {
        Owned(handle, record);
        tags.Write(100, "AcDbEntity");
        if (onPaper)
            tags.Write(67, 1);
        tags.Write(8, "0");
        tags.Write(100, className);
    }

    private void Dictionary(int handle, int owner)
    {
        tags.Write(0, "DICTIONARY");
        Owned(handle, owner);
        tags.Write(100, "AcDbDictionary");
        tags.Write(281, 1);
    }
}

/// <summary>Handles that other sections refer to.</summary>
internal static class DxfHandles
{
    public const int Root = 0xC;
    public const int Groups = 0xD;
    public const int ModelSpace = 0x1B;
    public const int PaperSpace = 0x1E;
    public const int FirstEntity = 0x100;
}
