using System.Collections.Immutable;
using System.Globalization;
using Vessel.Design;
using Vessel.Export.Drawing;
using Vessel.Export.Paper;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Export.General;

/// <summary>The tables of the drawing: parts by the numbers of the balloons, ports by where they stand.</summary>
internal static class SheetLists
{
    private const double Letter = 2;

    public static IEnumerable<Item> Parts(Build build, Box2 room)
    {
        var units = new TwoUnits(build.Assembly.Design.Units);
        var unit = units.Names.First;
        return Fitted(
            "Parts",
            new(
                ["no", "part", "off", "material", $"thick {unit}", "from", $"size {unit}"],
                [.. build.Parts.Select((built, i) => Part(i + 1, built.Part, units))],
                Letter),
            room);
    }

    public static IEnumerable<Item> Ports(Build build, Box2 room)
    {
        var units = new TwoUnits(build.Assembly.Design.Units);
        var unit = units.Names.First;
        return Fitted(
            "Ports",
            new(
                ["port", "for", "in", "deg", $"height {unit}", $"radius {unit}", $"offset {unit}", "tilt", $"tube {unit}", $"length {unit}",
                    "joint"],
                [.. build.Assembly.Sites.Select(site => Port(site.Port, units))],
                Letter),
            room);
    }

    /// <summary>Rows of the table, as many as there is room for; the last tells of the others.</summary>
    private static IEnumerable<Item> Fitted(string name, PaperTable table, Box2 room)
    {
        var most = (int)Math.Floor((room.Height - 7) / table.RowHeight) - 1;
        if (most < 1)
            return [];
        var rows = table.Rows.Length <= most
            ? table.Rows
            : [.. table.Rows.Take(most - 1), [.. table.Header.Select((_, i) => i == 1 ? "... see cut list and summary" : string.Empty)]];
        return
        [
            Text.Left(name, new(room.Min.U + 1, room.Max.V - 4), 2.5),
            .. table.Items(new(room.Min.U, room.Max.V - 5.5), room.Width, rows),
        ];
    }

    private static ImmutableArray<string> Part(int number, Part part, TwoUnits units) =>
    [
        number.ToString(CultureInfo.InvariantCulture),
        part.Name,
        part.Quantity.ToString(CultureInfo.InvariantCulture),
        part.Material.Name,
        part.Stock.Form == "bar" ? string.Empty : units.Of(part.Thickness).First,
        part.Stock.Form,
        part.Stock.Form == "sheet"
            ? $"{units.Of(part.Stock.Length).First} x {units.Of(part.Stock.Width).First}"
            : $"dia {units.Of(part.Stock.Width).First} x {units.Of(part.Stock.Length).First}",
    ];

    private static ImmutableArray<string> Port(PortDesign port, TwoUnits units)
    {
        var (place, onShell) = (port.Place, port.Host == PortHost.Shell);
        return
        [
            port.Name,
            port.Purpose?.Word() ?? string.Empty,
            Names.Of(port.Host),
            TwoUnits.Degrees(place.Angle),
            onShell ? units.Of(place.Height).First : string.Empty,
            onShell ? string.Empty : units.Of(place.Radius).First,
            onShell ? units.Of(place.Offset).First : string.Empty,
            onShell ? TwoUnits.Degrees(place.Tilt) : string.Empty,
            $"{units.Of(port.OutsideDiameter).First} x {units.Of(port.Wall).First}",
            port.Elbow is null ? units.Of(port.Length).First : $"{units.Of(port.Length).First} elbow",
            port.Joint == PortJoint.SetOn ? "set on" : "set in",
        ];
    }
}
