using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Function;

/// <summary>The stages of a route: the openings, and between them the rooms by their level sections.</summary>
internal sealed class FlowStages(FlowRoute route, Assembly assembly)
{
    /// <summary>A passage shorter than this is left out, mm: it is rounding.</summary>
    private const double LeastLength = 0.05;

    private readonly Cavity _cavity = assembly.Cavity;

    public ImmutableArray<FlowStage> List()
    {
        var stages = new List<FlowStage>();
        stages.AddRange(Hose());
        stages.AddRange(Port(route.Inlet, entering: true));
        stages.AddRange(Front(route.Inlet));
        var (before, room) = (new[] { route.Inlet }.ToImmutableArray(), (Room?)null);
        foreach (var way in route.Ways.Append([route.Vent]))
        {
            room = Shared(before, way, room);
            if (room is not null)
                stages.AddRange(Passages(room, Height(before), Height(way)));
            if (!way[0].IsPort)
            {
                stages.AddRange(way.Where(opening => opening.IsRim).SelectMany(Turn));
                stages.Add(Through(way));
            }

            before = way;
        }

        stages.AddRange(Front(route.Vent));
        stages.AddRange(Port(route.Vent, entering: false));
        return [.. stages.Where(stage => stage.Area > 0 && stage.Perimeter > 0)];
    }

    /// <summary>The room that both lead to; of two the one that the gas is not coming from.</summary>
    private Room? Shared(ImmutableArray<Opening> a, ImmutableArray<Opening> b, Room? from)
    {
        var names = new[] { a[0].From, a[0].To }.Intersect([b[0].From, b[0].To]).Where(name => name != Opening.Outside).ToList();
        var name = names.FirstOrDefault(name => name != from?.Name) ?? names.FirstOrDefault();
        return _cavity.Rooms.FirstOrDefault(room => room.Name == name);
    }

    private Room Of(string name) => _cavity.Rooms.First(room => room.Name == name);

    private static double Height(ImmutableArray<Opening> way) => way[0].Axial.At(0.5);

    private List<FlowStage> Port(Opening port, bool entering)
    {
        var design = Design(port);
        List<FlowStage> tube = [new FlowStage(port.Name, StageKind.Bore, port.Area, port.Perimeter, port.Depth, 0, port.Path)];
        if (design.Elbow is { } elbow)
        {
            // Its friction is in the tube's, which is as long as its axis.
            tube.Insert(entering ? 0 : 1, new($"elbow of {port.Name}", StageKind.Bend, port.Area, port.Perimeter, 0, 0, elbow.Path)
            {
                BendLoss = MitreLoss.Of(elbow),
            });
        }

        if (design.Fitting?.Bore is not { } bore || bore >= design.Bore)
            return tube;
        var fitting = new FlowStage(
            $"fitting of {port.Name}", StageKind.Bore, Math.PI * bore * bore / 4, Math.PI * bore, 0, 0, $"{port.Path}.fitting");
        return entering ? [fitting, .. tube] : [.. tube, fitting];
    }

    /// <summary>Pushed over the inlet's tube, or screwed to its fitting, unless its bore is given.</summary>
    private IEnumerable<FlowStage> Hose()
    {
        if (assembly.Design.Flow.Hose is not { } hose)
            yield break;
        var port = Design(route.Inlet);
        var bore = hose.Bore ?? port.Fitting?.Bore ?? port.OutsideDiameter;
        yield return new(
            $"hose to {port.Name}", StageKind.Hose, Math.PI * bore * bore / 4, Math.PI * bore, hose.Length, 0,
            $"{assembly.Design.Flow.Path}.hose_length");
    }

    private PortDesign Design(Opening port) => assembly.Design.Ports.First(p => p.Name == port.Name);

    /// <summary>The ring between a mouth and what stands before it, where that is nearer than a bore away.</summary>
    private IEnumerable<FlowStage> Front(Opening port)
    {
        // Beside windows it only narrows the end: see Open.
        if (port.IntoTube)
            yield break;
        var site = SiteOf(port.Name);
        var clear = ClearBefore(port, site);
        if (clear is > 0 && clear < site.Port.Bore)
        {
            yield return new(
                $"in front of {port.Name}", StageKind.Turn, port.Perimeter * clear, 2 * port.Perimeter, 0, 0, port.Path);
        }
    }

    private PortSite SiteOf(string port) => assembly.Sites.First(site => site.Port.Name == port);

    /// <summary>What gas finds open: of a tube's end beside its windows no more than the ring before it, mm2.</summary>
    private double Open(Opening way) => way.EndOf is { } port && ClearBefore(way, SiteOf(port)) is > 0 and var clear
        ? Math.Min(way.Area, way.Perimeter * clear)
        : way.Area;

    private double ClearBefore(Opening port, PortSite site)
    {
        var (room, height, radius) = (Of(port.From), port.Axial.At(0.5), site.Port.BoreRadius);
        if (site.Port.Host != PortHost.Shell)
        {
            // Under a mouth off the axis the nearest thing below is not told by circles round the axis.
            return site.Port.Place.Radius > radius ? double.PositiveInfinity
                : RoomSection.Clear(room, radius + site.Port.Place.Radius, height, site.Port.Host == PortHost.Top);
        }

        var offset = Math.Abs(site.Port.Place.Offset);
        double Away(double r) => Math.Sqrt(Math.Max(0, (r - offset) * (r + offset)));
        var mouth = Away(assembly.Design.Shell.InnerAt(site.Port.Place.Height))
            - (site.Port.Joint == PortJoint.SetIn ? site.Port.InsideLength * Math.Cos(site.Port.Place.Tilt) : 0);
        return RoomSection.Inside(room, height)
            .Where(thing => thing.Name != site.Port.Name && thing.Radius > offset)
            .Select(thing => (mouth - Away(thing.Radius)) / Math.Cos(site.Port.Place.Tilt))
            .DefaultIfEmpty(double.PositiveInfinity)
            .Min();
    }

    private IEnumerable<FlowStage> Turn(Opening rim)
    {
        var (room, radius) = (Of(rim.To), rim.Perimeter / Turns.Full);
        var clear = RoomSection.Clear(room, radius, rim.Axial.Start, Of(rim.From).Heights.End > rim.Axial.Start);
        yield return new($"under the {rim.Name}", StageKind.Turn, rim.Perimeter * clear, 2 * rim.Perimeter, 0, 0, rim.Path);
    }

    private FlowStage Through(ImmutableArray<Opening> way) => new(
        string.Join(" and ", way.Select(opening => opening.Name)),
        StageKind.Opening,
        way.Sum(Open),
        way.Sum(opening => opening.Perimeter),
        way[0].Depth,
        0,
        way[0].Path);

    private IEnumerable<FlowStage> Passages(Room room, double from, double to)
    {
        var whole = new Interval(Math.Min(from, to), Math.Max(from, to));
        var heights = RoomSection.Breaks(room, whole);
        // A shell's own bore changes where its courses meet.
        if (room.Within is null)
            heights = [.. heights.Concat(assembly.Design.Shell.Girths.Where(girth => girth > whole.Start && girth < whole.End)).Distinct()
                .Order()];
        var spans = heights.Zip(heights.Skip(1)).ToList();
        if (to < from)
            spans.Reverse();
        return spans
            .Where(span => span.Second - span.First >= LeastLength)
            .Select(span => Passage(room, new(span.First, span.Second), to >= from));
    }

    private FlowStage Passage(Room room, Interval heights, bool up)
    {
        var middle = heights.At(0.5);
        var packing = Media.In(room, middle, assembly.Design);
        var around = RoomSection.Inside(room, middle).Select(thing => thing.Name).ToList();
        var name = packing?.Name
            ?? (around.Count > 0 ? $"ring round {string.Join(" and ", around)}"
                : room.Within is { } can ? $"bore of {can}"
                : "bore of shell");
        return new(
            packing is null ? FormattableString.Invariant($"{name}, {(up ? "up" : "down")} {heights.Length:0.#} mm") : name,
            packing is null ? StageKind.Passage : StageKind.Packing,
            RoomSection.Area(room, middle),
            RoomSection.Perimeter(room, middle),
            heights.Length,
            up ? heights.Length : -heights.Length,
            packing?.Path ?? (room.Within is null ? "shell" : "inside"))
        {
            Packing = packing,
        };
    }
}
