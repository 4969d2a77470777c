using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Function;

/// <summary>
/// Finds rooms and openings. Everything inside is coaxial, so a room is a can's space (or the vessel's own) between two
/// discs, less the cans that stand in it.
/// </summary>
internal sealed class CavityBuilder
{
    private const string Own = "vessel";

    private readonly VesselDesign _vessel;
    private readonly ImmutableArray<PortSite> _sites;
    private readonly ImmutableArray<Partition> _partitions;

    /// <summary>Widest first: one stands inside the nearest wider one that spans its height.</summary>
    private readonly ImmutableArray<Enclosure> _cans;
    private readonly Profile _inside;

    private CavityBuilder(VesselDesign vessel, ImmutableArray<PortSite> sites, ImmutableArray<Member> members, ImmutableArray<Part> parts)
    {
        (_vessel, _sites) = (vessel, sites);
        _partitions = [.. members.Select(member => member.Partition(parts)).OfType<Partition>()];
        _cans = [.. members.Select(member => member.Enclosure(parts)).OfType<Enclosure>().OrderByDescending(can => can.OuterRadius)];
        _inside = InsideProfile.Of(vessel);
    }

    /// <param name="position">How the vessel stands, which tells its standpipes.</param>
    public static Cavity Build(
        VesselDesign vessel, ImmutableArray<PortSite> sites, ImmutableArray<Member> members, ImmutableArray<Part> parts, Position position)
    {
        var builder = new CavityBuilder(vessel, sites, members, parts);
        return Standpipes.Marked(vessel, new(
            [.. new Enclosure?[] { null }.Concat(builder._cans).SelectMany(builder.RoomsOf), .. sites.Where(HasWindows).Select(TubeRoom)],
            [.. builder.Ports(), .. sites.Where(HasWindows).SelectMany(builder.IntoTube), .. builder._cans.SelectMany(builder.WaysOf),
                .. builder._partitions.Select(builder.Through).OfType<Opening>()]), position);
    }

    /// <summary>The spaces of a can, or of the vessel itself, parted by its discs.</summary>
    private IEnumerable<Room> RoomsOf(Enclosure? can)
    {
        var discs = DiscsOf(can);
        var heights = can?.Inner ?? OwnHeights;
        var floor = heights.Start;
        for (var i = 0; i <= discs.Count; i++)
        {
            var ceiling = i < discs.Count ? discs[i].Height : heights.End;
            var next = i < discs.Count ? discs[i].Height + discs[i].Thickness : ceiling;
            var span = new Interval(floor, next);
            yield return new(
                RoomName(can, i, discs.Count),
                span,
                [.. Pieces(can, new(floor, ceiling)), .. i < discs.Count ? new[] { OpenPartOf(discs[i], can) } : []],
                [.. Inside(can).Select(child => Taken(child, span)).OfType<RoomPiece>()],
                [.. _sites.Where(site => site.Port is { Joint: PortJoint.SetIn, IsFlush: false }
                    && MouthRoom(site) == RoomName(can, i, discs.Count))
                    .Select(site => new StandingTube(site))])
            {
                Within = can?.Name,
                Standing = [.. from child in Inside(can)
                               let clipped = Clipped(child.Outer, span)
                               where clipped is not null
                               select new StandingEnclosure(child.Name, clipped.Value, child.OuterRadius)],
            };
            floor = next;
        }
    }

    private Interval OwnHeights => new(_inside.Start.V, _inside.End.V);

    private List<RoomPiece> Pieces(Enclosure? can, Interval span)
    {
        if (can is not null)
            return [PrismPiece.Cylinder(span, can.InnerRadius), .. can.InWalls.Where(piece => CountsTo(span, piece, can))];

        return
        [
            .. _inside.Pieces
                .Select(piece => (Piece: piece, From: Math.Max(piece.At(0).V, span.Start),
                    To: Math.Min(piece.At(piece.Length).V, span.End)))
                .Where(part => part.From < part.To)
                .Select(part => new ProfileRoomPiece(new(part.From, part.To), part.Piece)),
        ];
    }

    /// <summary>Whether this is the span of a can that a piece in its walls counts to: the one at the piece's upper end.</summary>
    private static bool CountsTo(Interval span, RoomPiece piece, Enclosure can)
    {
        var end = Math.Clamp(piece.Heights.End, can.Inner.Start, can.Inner.End);
        return (span.Start < end && end <= span.End) || (end == can.Inner.Start && span.Start == end);
    }

    /// <summary>Holes and edge gap of a disc, counted to the room below it.</summary>
    private PrismPiece OpenPartOf(Partition disc, Enclosure? can)
    {
        var bore = BoreAt(disc.Spec, can);
        return new(new(disc.Height, disc.Height + disc.Thickness), (Math.PI * bore * bore) - disc.MetalArea, 0, bore);
    }

    private IEnumerable<Enclosure> Inside(Enclosure? can) => _cans.Where(other => ParentOf(other) == can);

    private Enclosure? ParentOf(Enclosure can) => _cans.LastOrDefault(other => other.Holds(can));

    private static PrismPiece? Taken(Enclosure child, Interval span) =>
        Clipped(child.Outer, span) is { } heights ? PrismPiece.Cylinder(heights, child.OuterRadius) : null;

    /// <summary>Null where nothing is left.</summary>
    private static Interval? Clipped(Interval heights, Interval span)
    {
        var (from, to) = (Math.Max(heights.Start, span.Start), Math.Min(heights.End, span.End));
        return from < to ? new(from, to) : null;
    }

    private List<Partition> DiscsOf(Enclosure? can) =>
        [.. _partitions.Where(disc => disc.Spec.Fits == can?.Name).OrderBy(disc => disc.Height)];

    private static string RoomName(Enclosure? can, int index, int discs) =>
        discs == 0 ? can?.Name ?? Own : $"{can?.Name ?? Own} {index + 1}";

    private string RoomAt(double radius, double height) => RoomIn(_cans.LastOrDefault(can => can.Holds(radius, height)), height);

    private string RoomIn(Enclosure? can, double height)
    {
        var discs = DiscsOf(can);
        return RoomName(can, discs.Count(disc => disc.Height + disc.Thickness <= height), discs.Count);
    }

    private string MouthRoom(PortSite site) => RoomOn(site, site.Port.Joint == PortJoint.SetIn ? site.InnerEnd : site.InsideAxis);

    /// <summary>Name of the room that holds a place on a port's axis.</summary>
    private string RoomOn(PortSite site, double along)
    {
        var at = site.Frame.ToOuter(new(0, 0, along));
        return RoomAt(Math.Sqrt((at.X * at.X) + (at.Y * at.Y)), at.Z);
    }

    private static bool HasWindows(PortSite site) => !site.Port.Windows.IsEmpty;

    private static string TubeOf(PortSite site) => $"tube of {site.Port.Name}";

    /// <summary>
    /// The inside of a tube with windows, to which its end and its windows lead side by side. What it holds is counted to the room where
    /// its inner end lies, as of other tubes.
    /// </summary>
    private static Room TubeRoom(PortSite site) => new(TubeOf(site), InsideOf(site).Along(Vector3.UnitZ), [], [], []);

    /// <summary>All edges by which one comes into a tube with windows.</summary>
    private static PointsEdge InsideOf(PortSite site) =>
        new([.. site.Port.Windows.SelectMany(row => WindowEdges(site, row).Points).Concat(Mouth.Of(site).Points)]);

    private static PointsEdge WindowEdges(PortSite site, WindowsDesign row) =>
        WindowEdges(site.Frame, new(site.Port.BoreRadius, site.Port.OuterRadius), row, site.InnerEnd + row.Up);

    private IEnumerable<Opening> IntoTube(PortSite site)
    {
        var port = site.Port;
        yield return new(WindowRows.EndOf(port.Name), MouthRoom(site), TubeOf(site), false, Math.PI * port.BoreRadius * port.BoreRadius,
            Mouth.Of(site))
        {
            EndOf = port.Name,
            Perimeter = Turns.Full * port.BoreRadius,
            Path = port.Path,
        };
        for (var row = 0; row < port.Windows.Length; row++)
        {
            var windows = port.Windows[row];
            yield return new(
                WindowRows.NameOf(port.Name, row), RoomOn(site, site.InnerEnd + windows.Up + (windows.Height / 2)), TubeOf(site), false,
                windows.Count * windows.AreaOfOne, WindowEdges(site, windows))
            {
                Perimeter = windows.Count * windows.EdgeOfOne,
                Depth = port.Wall,
                Path = windows.Path,
            };
        }
    }

    private IEnumerable<Opening> Ports() => _sites.Select(site => new Opening(
        site.Port.Name, HasWindows(site) ? TubeOf(site) : MouthRoom(site), Opening.Outside, !site.Port.IsOpenToAir,
        Math.PI * site.Port.BoreRadius * site.Port.BoreRadius, HasWindows(site) ? InsideOf(site) : Mouth.Of(site))
    {
        Purpose = site.Port.Purpose,
        IntoTube = HasWindows(site),
        Beyond = [.. Mouth.Beyond(site)],
        Perimeter = Turns.Full * site.Port.BoreRadius,
        Depth = site.Run + (site.Port.Joint == PortJoint.SetIn ? site.Port.InsideLength + site.HostWall : 0),
        Path = site.Port.Path,
    });

    private IEnumerable<Opening> WaysOf(Enclosure can)
    {
        var parent = ParentOf(can);
        if (can.OpenEnd is { } rim)
        {
            yield return new(
                $"rim of {can.Name}", RoomIn(can, rim), RoomIn(parent, rim), false,
                Math.PI * can.InnerRadius * can.InnerRadius, new RoundEdge(can.InnerRadius, rim, rim))
            {
                IsRim = true,
                Perimeter = Turns.Full * can.InnerRadius,
                Path = can.Path,
            };
        }

        if (can.Plate is { } plate)
        {
            var below = plate.Shape.Along(Vector3.UnitZ).Start;
            yield return new($"plate of {can.Name}", RoomIn(can, can.Inner.Start), RoomIn(parent, below), false, plate.Area, plate.Shape)
            {
                Perimeter = plate.Perimeter,
                Depth = can.OuterRadius - can.InnerRadius,
                Path = can.Path,
            };
        }

        for (var row = 0; row < can.Windows.Length; row++)
        {
            var (design, sill) = can.Windows[row];
            var middle = sill + (design.Height / 2);
            yield return new(
                WindowRows.NameOf(can.Name, row), RoomIn(can, middle), RoomIn(parent, middle), false,
                design.Count * design.AreaOfOne, WindowEdges(Frame3.Identity, new(can.InnerRadius, can.OuterRadius), design, sill))
            {
                Perimeter = design.Count * design.EdgeOfOne,
                Depth = can.OuterRadius - can.InnerRadius,
                Path = design.Path,
            };
        }
    }

    /// <summary>Null where it shuts its bore.</summary>
    private Opening? Through(Partition disc)
    {
        var (spec, can) = (disc.Spec, _cans.FirstOrDefault(can => can.Name == disc.Spec.Fits));
        var area = OpenPartOf(disc, can).Area - PassingArea(disc, can) - WeldedArea(spec, can);
        if (disc.Holes is null && area <= Enclosure.LeastOpening)
            return null;
        return new(
            spec.Name, RoomIn(can, disc.Height - 1e-9), RoomIn(can, disc.Height + disc.Thickness), false, Math.Max(0, area),
            HolesOf(disc, can))
        {
            Perimeter = Gap(spec, can) + disc.HoleEdges + (Math.PI * spec.Bore),
            Depth = disc.Thickness,
            Path = spec.Path,
        };
    }

    /// <summary>What stands through a disc's bore fills it, but for the gap.</summary>
    private double PassingArea(Partition disc, Enclosure? can)
    {
        bool Passes(Interval heights) => heights.Start < disc.Height && heights.End > disc.Height;
        return Inside(can).Where(child => Passes(child.Outer)).Sum(child => Math.PI * child.OuterRadius * child.OuterRadius)
            + _sites.Where(site => site.Port is { Joint: PortJoint.SetIn, Host: not PortHost.Shell } && Passes(Standing(site)))
                .Sum(site => Math.PI * site.Port.OuterRadius * site.Port.OuterRadius);
    }

    /// <summary>A weld all round shuts the gap at the disc's edge.</summary>
    private double WeldedArea(DividerSpec disc, Enclosure? can) =>
        disc.Fixed == Fixing.Weld && BoreAt(disc, can) is var bore && disc.OutsideDiameter < 2 * bore
        ? Math.PI * ((bore * bore) - (disc.OutsideDiameter * disc.OutsideDiameter / 4))
        : 0;

    private double BoreAt(DividerSpec disc, Enclosure? can) => can?.InnerRadius ?? _vessel.Shell.InnerAt(disc.Height);

    /// <summary>Heights of a head's set-in port from its inner end to its foot.</summary>
    private static Interval Standing(PortSite site)
    {
        var (end, foot) = (site.Frame.ToOuter(new(0, 0, site.InnerEnd)).Z, site.Frame.Origin.Z);
        return new(Math.Min(end, foot), Math.Max(end, foot));
    }

    /// <summary>Length of both edges of the gap round it, mm.</summary>
    private double Gap(DividerSpec disc, Enclosure? can) =>
        2 * BoreAt(disc, can) is var bore && disc.Fixed != Fixing.Weld && disc.OutsideDiameter < bore
            ? Math.PI * (bore + disc.OutsideDiameter) : 0;

    /// <summary>The gap round it is left out where there are holes: oil or gas takes those first.</summary>
    private OpeningShape HolesOf(Partition disc, Enclosure? can) => disc.Holes
        ?? new RoundEdge(
            disc.Spec.Fixed == Fixing.Weld ? disc.Spec.Bore / 2 : BoreAt(disc.Spec, can), disc.Height, disc.Height + disc.Thickness);

    /// <summary>Edge of windows in the middle of the wall; sizes are measured on its outside.</summary>
    /// <param name="frame">Frame of the tube, Z along it.</param>
    /// <param name="wall">Wall from bore to outside, by their radii.</param>
    private static PointsEdge WindowEdges(Frame3 frame, Interval wall, WindowsDesign windows, double sill)
    {
        const int Steps = 16;
        var middle = wall.At(0.5);
        var (u, v) = ((windows.Width / 2) - windows.Corner, (windows.Height / 2) - windows.Corner);
        // A quarter of the outline; the level edges are curved with the wall, so points on them may be the outermost.
        var quarter = Enumerable.Range(0, Steps + 1)
            .Select(step => new Point2(u, v) + Point2.Polar(windows.Corner, Math.PI / 2 * step / Steps))
            .Concat(Enumerable.Range(0, Steps).Select(step => new Point2(u * step / Steps, windows.Height / 2)))
            .ToList();
        var points =
            from window in Enumerable.Range(0, windows.Count)
            from at in quarter
            from side in new[] { -1, 1 }
            from end in new[] { -1, 1 }
            let angle = windows.Angle + (Turns.Full * window / windows.Count) + (side * at.U / wall.End)
            select frame.ToOuter(new(middle * Math.Cos(angle), middle * Math.Sin(angle), sill + (windows.Height / 2) + (end * at.V)));
        return new([.. points]);
    }
}
