using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Members.Cups;

/// <summary>Fills the records from their sections; see <see cref="MemberKind.Read"/>.</summary>
internal static class CupBuilder
{
    public static CupDesign Build(Section section, ImmutableArray<PortDesign> ports)
    {
        var wall = section.Number("wall");
        var opens = section.Text("opens") == "down" ? CupOpening.Down : CupOpening.Up;
        var head = InsideReading.Head(section);
        var outlet = opens == CupOpening.Down && !section.IsAtFault("outlet")
            ? InsideNames.Outlet(section.Text("outlet"), head, ports)
            : null;
        var windows = WindowsBuilder.Build(section);
        return new CupDesign(
            section.Path,
            InsideReading.Name(section),
            section.Metal,
            section.Number("outside_diameter"),
            wall,
            // Where plate and skirt lie is not known while the way it opens is at fault.
            section.Has("opens") ? section.Number("skirt") : double.NaN,
            opens,
            head,
            InsideReading.Fixed(section),
            opens == CupOpening.Up ? 0 : section.NumberOr("drop", (outlet?.InsideLength ?? double.NaN) - wall),
            opens == CupOpening.Up ? null : outlet?.Name ?? section.Text("outlet"),
            opens == CupOpening.Up ? 0 : section.Number("clearance"),
            opens == CupOpening.Down ? 0 : section.Has("opens") ? section.Number("drain_hole") : double.NaN,
            section.Text("made_from") == "sheet" ? StockForm.Sheet : StockForm.Tube,
            Turns.From(section.NumberOr("seam_angle", WindowRows.FreeAngle(windows, section.Number("outside_diameter") / 2)), 0),
            windows,
            section.Child("pattern") is { } pattern ? InsideReading.Holes(pattern, wall) : null);
    }
}
