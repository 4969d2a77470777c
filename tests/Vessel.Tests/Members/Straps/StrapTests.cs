using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Members.Straps;
using Vessel.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Members.Straps;

/// <summary>
/// A strap's flats and solids against the shape that a drawing of it would show. Lengths stay below 1000 mm, so that a hundred
/// roundings are below 1e-10.
/// </summary>
public sealed class StrapTests
{
    private const double Rounding = 1e-10;

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 60)];

    private static Vector3 InVessel(Part part, Point2 at, double depth) =>
        part.Placements[0].ToOuter(((FoldedDevelopment)part.Flat!.From).Sheet.At(at, depth));

    private static double FromAxis(Vector3 p) => new Point2(p.X, p.Y).Length;

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_rolled_band_lies_on_its_liner_all_along_and_nothing_goes_nearer(int seed)
    {
        var design = Straps.Random(seed);
        var (strap, seat) = (design.All<StrapDesign>().First(), design.Shell.OuterRadius + design.All<StrapDesign>().First().Liner);
        foreach (var (site, part) in Straps.Halves(design))
        {
            for (var i = 0; i <= 400; i++)
            {
                var x = site.Developed * i / 400;
                var inner = InVessel(part, new(x, strap.Width * (i % 5) / 4), strap.Thickness);
                var isBand = x >= site.BandFrom && x <= site.Developed - site.BandFrom;
                Assert.True(isBand ? Math.Abs(FromAxis(inner) - seat) < Rounding : FromAxis(inner) > seat - Rounding);
                Assert.True(FromAxis(InVessel(part, new(x, 0), 0)) > seat - Rounding);
                Assert.InRange(inner.Z, strap.Low - Rounding, strap.High + Rounding);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_ears_of_both_halves_face_each_other_across_the_gap_with_their_holes_in_line(int seed)
    {
        var design = Straps.Random(seed);
        var strap = design.All<StrapDesign>().First();
        var (back, front) = (Straps.Halves(design)[0], Straps.Halves(design)[1]);
        var outward = new Vector3(Math.Cos(strap.Angle), Math.Sin(strap.Angle), 0);

        var (ours, theirs) = (
            back.Site.EarBolts.Select(at => InVessel(back.Part, at, strap.Thickness)).ToList(),
            front.Site.EarBolts.Select(at => InVessel(front.Part, at, strap.Thickness)).ToList());

        Assert.Equal(ours.Count, theirs.Count);
        foreach (var hole in ours)
        {
            var over = theirs.Select(other => hole - other - (strap.Gap * outward)).MinBy(off => off.Length);
            Assert.Equal(0, over.Length, Rounding);
            Assert.Equal(strap.Gap / 2, hole.Dot(outward), Rounding);
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Feet_lie_with_their_outer_faces_on_what_they_are_bolted_to(int seed)
    {
        var design = Straps.Random(seed);
        var strap = design.All<StrapDesign>().First();
        var (site, part) = Straps.Halves(design)[0];
        var outward = new Vector3(Math.Cos(strap.Angle), Math.Sin(strap.Angle), 0);
        var level = strap.Feet.StandOff is { } standOff ? design.Shell.OuterRadius + standOff : (strap.Gap / 2) + strap.Thickness;

        foreach (var at in site.FootBolts.Append(new(0, 0)).Append(new(strap.Feet.Length, strap.Width)).Append(new(site.Developed, 0)))
        {
            Assert.Equal(level, InVessel(part, at, 0).Dot(outward), Rounding);
            Assert.Equal(level - strap.Thickness, InVessel(part, at, strap.Thickness).Dot(outward), Rounding);
        }

        Assert.Empty(Straps.Halves(design)[1].Site.FootBolts);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_mesh_is_closed_holds_the_metal_and_balances_where_it_is_said_to(int seed)
    {
        var design = Straps.Random(seed);
        foreach (var (site, part) in Straps.Halves(design))
        {
            var mesh = Mesher.Flatten(part.Solid, Accuracy.Solids);

            MeshLaws.Hold(mesh, part.Holes.Length);
            Assert.Equal(part.Holes.Length, part.Solid.Genus);
            var bound = mesh.Area * Accuracy.Solids.Chord;
            Assert.InRange(mesh.Volume - part.Volume, -bound, bound);
            // The same metal by its pieces: strips, turned sections, holes.
            Assert.Equal(part.Volume, StrapCentre.Pieces(site).Sum(piece => piece.Volume), Rounding * part.Volume);
            // A skin that is off by the chord at most shifts the first moment by area x chord x reach.
            var (centre, middle) = (StrapCentre.Of(site), Middle(mesh, part.Placements[0]));
            Assert.InRange((centre - middle).Length, 0, 2 * bound * site.Developed / part.Volume);
            Assert.Equal(0, site.Way.ToLocal(centre).X, Rounding);
        }
    }

    /// <summary>Of the metal in a mesh: tetrahedra from the origin.</summary>
    private static Vector3 Middle(Mesh mesh, Frame3 place)
    {
        var (volume, moment) = (0.0, Vector3.Zero);
        foreach (var t in mesh.Triangles)
        {
            var (a, b, c) = (mesh.Vertices[t.A], mesh.Vertices[t.B], mesh.Vertices[t.C]);
            var solid = a.Dot(b.Cross(c)) / 6;
            (volume, moment) = (volume + solid, moment + (solid / 4 * (a + b + c)));
        }

        return place.ToOuter(1 / volume * moment);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Area_times_thickness_is_the_metal_but_for_what_K_is_short_of_a_half(int seed)
    {
        var design = Straps.Random(seed);
        foreach (var (_, part) in Straps.Halves(design))
        {
            var (t, k) = (part.Thickness, design.All<StrapDesign>().First().K);
            var turned = part.Flat!.Bends.Sum(bend => Math.Abs(bend.Angle));

            var more = part.Volume - (CurveMeasures.Area(part.Flat.Cut) * t);

            // Pappus; the band is rolled on the middle of the sheet and adds nothing.
            Assert.Equal(turned * (0.5 - k) * t * t * design.All<StrapDesign>().First().Width, more, Rounding * part.Volume);
        }
    }

    [Fact]
    public void Ears_are_bent_back_by_what_the_band_turns()
    {
        var (site, part) = Straps.Halves(Straps.On(Straps.Usual))[1];

        Assert.Equal([site.HalfBand, site.HalfBand], part.Flat!.Bends.Select(bend => bend.Angle));
        // tan of the band's end over the plane between the halves, by its right-angled triangle.
        Assert.Equal(2 + 3 + 5, (55 + 3 + 5) * Math.Cos(site.HalfBand), Rounding);
    }
}
