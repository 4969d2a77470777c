using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>
/// A spun half sphere, drilled along its ports' axes. Its frame has the centre at the origin and the pole on -Z.
/// </summary>
internal static class HemispherePart
{
    public static Part Build(PortHost end, HemisphereHead head, VesselDesign vessel, ImmutableArray<PortSite> sites, WeldNumbers welds)
    {
        var name = Names.Of(end);
        var site = HeadSite.Of(end, vessel);
        var frame = new Frame3(site.Frame.Origin, site.Frame.X, -site.Frame.Y, -site.Frame.Z);
        var (outer, inner) = (new SphereSurface(site.Radius), new SphereSurface(site.Radius - head.Wall));
        var own = sites.Where(s => s.Port.Host == end).ToImmutableArray();
        var solid = ThickSolid.Of(outer, inner, false,
        [
            Equator(outer, inner),
            .. own.Select(port => Drilled(port, frame, outer, inner)),
        ]);
        var shell = 2 * Math.PI / 3 * (Cube(outer.Radius) - Cube(inner.Radius));
        var blank = Math.Sqrt(2) * (2 * site.Radius - head.Wall);
        return new(
            name,
            name,
            PartKind.Head,
            head.Material,
            head.Wall,
            StockPieces.Disc(blank, head.Wall, head.Material),
            [frame],
            solid,
            shell - own.Sum(port => Quadrature.Disc(
                port.OpeningRadius, (r, phi) => port.Outside.Reach(r, phi) - port.Inside.Reach(r, phi))),
            BlankFlat(name, head, blank, welds),
            [.. own.Select((port, i) => HeadHole.Of(i + 1, port, OnFace(port, frame), null))],
            head.Path);
    }

    private static Rim Equator(SphereSurface outer, SphereSurface inner) => new(
        Interval.Turn,
        [],
        t => Point2.Polar(outer.Radius * Math.PI / 2, t),
        t => Point2.Polar(inner.Radius * Math.PI / 2, t));

    private static Rim Drilled(PortSite port, Frame3 frame, SphereSurface outer, SphereSurface inner)
    {
        Vector3 Local(Footprint on, double phi) => frame.ToLocal(port.Frame.ToOuter(on.At(port.OpeningRadius, phi)));
        return new(
            Interval.Turn, [], phi => outer.ChartOf(Local(port.Outside, phi)), phi => inner.ChartOf(Local(port.Inside, phi)));
    }

    private static Point2 OnFace(PortSite port, Frame3 frame)
    {
        var local = frame.ToLocal(port.Frame.Origin);
        return new(local.X, local.Y);
    }

    /// <summary>
    /// The disc that spinning starts from: as much area as the mean sphere, diameter sqrt(2) x mean diameter (equal-area
    /// rule for raised work, Hodgson, "Machines and Tools Employed in the Working of Sheet Metals").
    /// </summary>
    private static Flat BlankFlat(string name, HemisphereHead head, double diameter, WeldNumbers welds)
    {
        var cut = new Region2(Loop2.Circle(default, diameter / 2), []);
        return new(
            FlatKind.Blank,
            cut,
            [
                new LineMark(new(-5, 0), new(5, 0)),
                new LineMark(new(0, -5), new(0, 5)),
                new TextMark($"{name} {welds[head.Path]} blank", new(0, -diameter / 4), 5, 0),
            ],
            [],
            [
                $"{name.ToUpperInvariant()}, BLANK FOR SPINNING, {head.Material.Name}, {NoteText.Length(head.Wall)} mm, diameter {NoteText.Length(diameter)} mm",
                "STARTING SIZE BY EQUAL AREA: spinning thins the wall, so spin a trial or trim to the half sphere. Millimetres.",
                "Drill the ports after spinning, along their axes.",
            ],
            new PlaneDevelopment(),
            "equal area, mean diameter");
    }

    private static double Cube(double x) => x * x * x;
}
