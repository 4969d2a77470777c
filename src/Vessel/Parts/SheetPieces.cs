using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Sites;

namespace Vessel.Parts;

/// <summary>
/// Sheets of a cone, of the shell or of a head of gores that are alike in all: those that nothing is cut in, or a single one with its
/// ports.
/// </summary>
/// <param name="Numbers">Numbers of the sheets; see <see cref="SheetSeams"/>.</param>
/// <param name="Ports">Whose holes it has; of a cone not the one that closes the tip, of gores none of the polar cap's.</param>
public sealed record SheetPiece(string Name, ImmutableArray<int> Numbers, ImmutableArray<PortDesign> Ports)
{
    public string Id => Slug.Of(Name);

    /// <summary>Numbers of the welds along the sides of all sheets that are put together with it.</summary>
    public ImmutableArray<string> Seams { get; init; } = [];

    /// <summary>What its edges are welded to, and by which welds.</summary>
    public string Ends { get; init; } = string.Empty;

    /// <summary>What its flat says of its edges.</summary>
    public ImmutableArray<string> EdgeNotes { get; init; } = [];

    /// <summary>Pieces of a course; of one from tube, the tube.</summary>
    public static ImmutableArray<SheetPiece> Of(ShellCourse course, VesselDesign vessel)
    {
        var seams = course.Seams;
        return Divided(
            course.Name,
            ShellCourse.SheetOf(course.Name),
            seams.Count,
            vessel.Ports.Where(port => port.Host == PortHost.Shell && vessel.Shell.CourseAt(port.Place.Height) == course)
                .ToLookup(port => seams.Count == 1 ? 0
                    : seams.SheetAt(vessel.Shell.ClockAt(port.Place.Height, port.Place.Angle, port.Place.Offset))),
            SlotHole.Of(vessel, course).Select(slot => seams.SheetAt(slot.Place.U)));
    }

    /// <summary>Ids of the parts that the sheets are, in their order.</summary>
    public static ImmutableArray<string> Ids(ImmutableArray<SheetPiece> pieces) =>
        [.. pieces.SelectMany(piece => piece.Numbers.Select(number => (number, piece.Id))).OrderBy(sheet => sheet.number)
            .Select(sheet => sheet.Id)];

    /// <summary>The plain sheets first, then those that something is cut in, each.</summary>
    /// <param name="whole">What a single sheet is called.</param>
    /// <param name="each">What one of several is called.</param>
    /// <param name="ports">Ports by the number of the sheet that they stand in.</param>
    /// <param name="cut">Sheets with other openings than ports'.</param>
    internal static ImmutableArray<SheetPiece> Divided(
        string whole, string each, int count, ILookup<int, PortDesign> ports, IEnumerable<int> cut)
    {
        if (count == 1)
            return [new(whole, [0], [.. ports.SelectMany(own => own)])];
        var own = ports.Select(group => group.Key).Concat(cut).Distinct().Order().ToImmutableArray();
        var plain = Enumerable.Range(0, count).Except(own).ToImmutableArray();
        return
        [
            .. plain.IsEmpty ? [] : new[] { new SheetPiece(SheetSeams.NameOf(each), plain, []) },
            .. own.Select(number => new SheetPiece(SheetSeams.NameOf(each, number), [number], [.. ports[number]])),
        ];
    }
}
