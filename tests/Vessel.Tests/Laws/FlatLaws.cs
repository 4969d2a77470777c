using NetTopologySuite.Geometries;
using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Laws;

/// <summary>What every flat obeys, over random designs.</summary>
public sealed class FlatLaws
{
    /// <summary>Sums and square roots of lengths below 1e4 mm, where lines graze by at least 1e-4 of a radius.</summary>
    private const double Rounding = 1e-7;

    public static TheoryData<int> Seeds => RandomDesigns.Seeds;

    private static IEnumerable<double> Along(Curve2 curve, int count) =>
        Enumerable.Range(0, count).Select(i => curve.Domain.At((double)i / count));

    /// <summary>A point of the shell's flat on the finished shell's face of that radius.</summary>
    private static Vector3 OnShell(Flat flat, Point2 at, double radius)
    {
        var place = flat.From.Raise(at);
        return new(radius * Math.Cos(place.U), radius * Math.Sin(place.U), place.V);
    }

    private static double FromAxis(PortSite site, Vector3 point) =>
        (point - site.Frame.Origin).Across(site.Frame.Z).Length;

    private static IEnumerable<(PortSite Site, Flat Flat, Curve2 Outline)> Holes(Assembly vessel) =>
        from part in vessel.Parts
        where part.Kind == PartKind.Shell
        from hole in vessel.Sites.Where(site => site.Over is null && Names.PortPart(site.Port, vessel.Design) == part.Id)
            .Zip(part.Flat!.Cut.Holes, (site, hole) => (site, part.Flat!, hole.Edges.Single()))
        select hole;

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Holes_taken_on_the_outer_face_roll_back_onto_the_bore(int seed) => RandomDesigns.Hold(seed, vessel =>
    {
        var shell = vessel.Design.Shell;
        foreach (var (site, flat, outline) in Holes(vessel)
            .Where(h => shell.MadeFrom == StockForm.Tube || h.Site.Port.Joint == PortJoint.SetOn))
        {
            var off = Along(outline, 144).Max(t =>
                Math.Abs(FromAxis(site, OnShell(flat, outline.At(t), shell.OuterRadius)) - site.OpeningRadius));

            Assert.True(off < Rounding, $"{site.Port.Name} is off by {off}");
        }
    });

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_hole_cut_before_rolling_lets_its_tube_through_every_radius_of_the_wall(int seed) => RandomDesigns.Hold(seed, vessel =>
    {
        var shell = vessel.Design.Shell;
        foreach (var (site, flat, outline) in Holes(vessel)
            .Where(h => shell.MadeFrom == StockForm.Sheet && h.Site.Port.Joint == PortJoint.SetIn))
        {
            double Least(double t) => Convex.Least(
                radius => FromAxis(site, OnShell(flat, outline.At(t), radius)), shell.InnerRadius, shell.OuterRadius);
            var room = Along(outline, 144).Min(t => Least(t)) - site.Port.OuterRadius;

            // At the ends of the outline a root is taken of a difference that rounding leaves at 1e-13.
            Assert.True(room > -1e-6, $"{site.Port.Name} fouls by {-room}");
            Assert.True(room <= site.Port.Clearance + 1e-6, $"{site.Port.Name} has {room} of room");
        }
    });

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Holes_are_closed_and_their_slopes_are_those_of_their_points(int seed) => RandomDesigns.Hold(seed, vessel =>
    {
        foreach (var (_, _, outline) in Holes(vessel))
        {
            Assert.True((outline.Start - outline.End).Length < 1e-6);
            foreach (var t in Along(outline, 50).Select(t => t + 0.01))
            {
                const double h = 1e-5;
                var quotient = (1 / (2 * h)) * (outline.At(t + h) - outline.At(t - h));
                // Rounding over the step, and where an envelope changes from one face to the other its bend jumps, and with
                // it the speed along a widened outline; but not its direction.
                Assert.True(Math.Abs(outline.Slope(t).Unit().Cross(quotient.Unit())) < 5e-3, $"direction at {t}");
                Assert.InRange(outline.Slope(t).Length / quotient.Length, 0.8, 1.25);
            }
        }
    });

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Flats_are_valid_regions_whose_area_an_independent_polygon_confirms(int seed) => RandomDesigns.Hold(seed, vessel =>
    {
        const int count = 2000;
        foreach (var flat in vessel.Parts.Select(part => part.Flat!))
        {
            LinearRing Ring(Loop2 loop)
            {
                var points = loop.Edges
                    .SelectMany(edge => edge is Line2 ? [edge.Start] : Along(edge, count).Select(edge.At))
                    .Select(p => new Coordinate(p.U, p.V))
                    .ToList();
                return new([.. points, points[0]]);
            }

            var polygon = new Polygon(Ring(flat.Cut.Outer), [.. flat.Cut.Holes.Select(Ring)]);

            Assert.True(polygon.IsValid);
            Assert.True(flat.Cut.Holes.All(hole => CurveMeasures.Area(hole) < 0));
            var sagitta = flat.Cut.Holes.Prepend(flat.Cut.Outer)
                .SelectMany(loop => loop.Edges)
                .Where(edge => edge is not Line2)
                .Select(edge => Sagitta(edge, count))
                .DefaultIfEmpty(0)
                .Max();
            Near.Absolute(polygon.Area, CurveMeasures.Area(flat.Cut), (polygon.Length * sagitta) + (1e-9 * polygon.Area));
        }
    });

    /// <summary>Greatest distance from the middles of pieces to those of their chords.</summary>
    private static double Sagitta(Curve2 curve, int pieces)
    {
        var step = curve.Domain.Length / pieces;
        return Along(curve, pieces).Max(t =>
            (curve.At(t + (step / 2)) - (0.5 * (curve.At(t) + curve.At(Math.Min(curve.Domain.End, t + step))))).Length);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Area_times_thickness_is_the_volume_of_rolled_shells_and_lids(int seed) => RandomDesigns.Hold(seed, vessel =>
    {
        foreach (var part in vessel.Parts.Where(part => part.Kind == PartKind.Lid || part.Flat!.From is RolledDevelopment))
        {
            // The gap is welded up.
            var gap = part.Kind == PartKind.Shell ? vessel.Design.Shell.RootGap * vessel.Design.Shell.Height : 0;
            var notches = part.Kind == PartKind.Shell ? Notches(vessel, part) : 0;

            // Quadratures of a grazing hole stop short of 1e-9. Where a face begins to govern, the speed along a widened outline jumps, and
            // its difference quotient blurs that over 1e-3 of the turn.
            var blur = vessel.Sites.Where(site => part.Kind == PartKind.Shell && Names.PortPart(site.Port, vessel.Design) == part.Id)
                .Zip(part.Flat!.Cut.Holes, (site, hole) => 1e-3 * site.Port.Clearance * CurveMeasures.Length(hole)).Sum();
            Near.Absolute(
                ((CurveMeasures.Area(part.Flat.Cut) + gap) * part.Thickness) - notches, part.Volume,
                (blur * part.Thickness) + (1e-8 * part.Volume));
        }
    });

    /// <summary>What ports over a head's seam take out of a sheet of the shell: the flat has it scribed, not cut, mm3.</summary>
    private static double Notches(Assembly vessel, Part part) => vessel.Design.Shell.Courses.Sum(course =>
        new[] { VesselEnd.Bottom, VesselEnd.Top }.Sum(end => NotchedEdge.OfShell(
            end, course, [.. vessel.Sites.Where(site => Names.PortPart(site.Port, vessel.Design) == part.Id)], null).Volume));

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Both_side_edges_of_a_wrap_are_equally_long_and_the_wrap_goes_once_round(int seed) => RandomDesigns.Hold(seed, vessel =>
    {
        foreach (var part in vessel.Parts.Where(part => part.Kind is PartKind.Branch or PartKind.Bung or PartKind.Elbow))
        {
            var edges = part.Flat!.Cut.Outer.Edges;
            var (cope, right, top, left) = (edges[0], edges[1], edges[2], edges[3]);

            Near.Absolute(CurveMeasures.Length(left), CurveMeasures.Length(right), 1e-9);
            Near.Absolute(Math.PI * part.Stock.Width, CurveMeasures.Bounds(top).Width, 1e-9);
            // The stock is as long as the wrap is high, and nothing of the wrap stands out above it.
            Near.Absolute(part.Stock.Length, CurveMeasures.Bounds(top).Max.V, 1e-6);
            // Nothing lies below the flat's lower edge, and something on it.
            Near.Absolute(0, CurveMeasures.Bounds(cope).Min.V, 1e-6);
        }
    });
}
