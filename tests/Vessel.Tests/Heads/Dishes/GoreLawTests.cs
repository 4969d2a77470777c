using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Heads.Dishes;
using Vessel.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Heads.Dishes;

/// <summary>What holds for gores of every dished head, on random designs.</summary>
public sealed class GoreLawTests
{
    public static TheoryData<int> Seeds => RandomDesigns.Seeds;

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Gores_and_polar_cap_hold_the_metal_of_the_spun_head(int seed) => RandomDesigns.Hold(seed, built =>
    {
        foreach (var (vessel, shape, _, crown) in Heads(built))
        {
            var drilled = vessel.Sites.Where(site => site.Port.End == EndOf(shape, vessel)).Sum(DrilledDome.DrilledOut);
            Near.Relative(shape.Head.Outer.Volume - shape.Head.Inner.Volume,
                AllGores(shape, vessel).Sum(part => part.Quantity * part.Volume) + crown.Volume + drilled, 1e-9);
        }
    });

    /// <summary>The flat keeps the area of the middle of the wall; so does the cap's blank.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Flats_have_the_area_of_the_middle_of_the_wall(int seed) => RandomDesigns.Hold(seed, built =>
    {
        foreach (var (vessel, shape, _, crown) in Heads(built))
        {
            var gores = AllGores(shape, vessel).Sum(part => part.Quantity * CurveMeasures.Area(part.Flat!.Cut));
            Near.Relative(shape.Middle.Area, gores + CurveMeasures.Area(crown.Flat!.Cut), 1e-9);
        }
    });

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Neighbours_meet_all_along_their_sides_and_at_the_cap_and_lie_flat_again(int seed) => RandomDesigns.Hold(seed, built =>
    {
        foreach (var (vessel, shape, gore, crown) in Heads(built))
        {
            var size = 1e-10 * vessel.Design.Shell.OutsideDiameter;
            var (wall, rim) = (gore.Solid.Faces.OfType<SideFace>().Single(), crown.Solid.Faces.OfType<SideFace>().First());
            var step = EndOf(shape, vessel) == VesselEnd.Top ? gore.Quantity - 1 : 1;
            foreach (var share in Enumerable.Range(0, 9).Select(i => i / 8.0))
            {
                foreach (var (edge, of) in new[] { (wall.A, rim.A), (wall.B, rim.B) })
                {
                    var (here, there) = (gore.Placements[0].ToOuter(edge.At(1 + share)), gore.Placements[step].ToOuter(edge.At(4 - share)));
                    Near.Absolute(0, (here - there).Length, size);
                    var tip = gore.Placements[0].ToOuter(edge.At(2 + share));
                    var local = crown.Placements[0].ToLocal(tip);
                    Near.Absolute(0, (crown.Placements[0].ToOuter(of.At(Math.Atan2(local.Y, local.X))) - tip).Length, size);
                }

                var flat = (GoreDevelopment)gore.Flat!.From;
                var place = new Point2((share - 0.5) * flat.HalfAngle, share * flat.Length);
                Near.Absolute(0, (flat.Raise(flat.Flatten(place)) - place).Length, size);
            }
        }
    });

    /// <summary>The welds up the meridians are as long as the outer face's strip, and the first begins at the shell.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Seams_run_up_the_outside_from_the_shell_to_the_cap(int seed) => RandomDesigns.Hold(seed, built =>
    {
        foreach (var (vessel, shape, _, _) in Heads(built))
        {
            var (end, radius) = (EndOf(shape, vessel), vessel.Design.Shell.OuterRadius);
            var seam = vessel.Welds.Select(weld => weld.Joint)
                .First(joint => joint.Role == WeldRole.GoreSeam && joint.Owner == shape.Design.Path);
            var cap = vessel.Welds.Select(weld => weld.Joint)
                .Single(joint => joint.Role == WeldRole.CrownSeam && joint.Owner == shape.Design.Path);
            var (from, to) = (seam.Along(seam.Domain.Start).Root, seam.Along(seam.Domain.End).Root);

            Near.Absolute(radius, double.Hypot(from.X, from.Y), 1e-9 * radius);
            Near.Absolute(end == VesselEnd.Top ? vessel.Design.Shell.Height : 0, from.Z, 1e-9 * radius);
            Near.Relative(Turns.Full * double.Hypot(to.X, to.Y), cap.Length, 1e-9);
            Near.Relative(shape.Head.Outer.Length - shape.CapReachOutside, seam.Length, 1e-9);
            var slope = (seam.Along(seam.Domain.At(0.4 + 1e-6)).Root - seam.Along(seam.Domain.At(0.4 - 1e-6)).Root).Unit();
            // Central differences of a curve of size R leave R h^2.
            Near.Absolute(1, slope.Dot(seam.Along(seam.Domain.At(0.4)).Tangent), 1e-6);
        }
    });

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Their_centre_of_mass_is_that_of_their_meshes(int seed) => RandomDesigns.Hold(seed, built =>
    {
        foreach (var (vessel, shape, gore, _) in Heads(built).Take(1).Where(_ => seed % 5 == 0))
        {
            var chord = vessel.Design.Shell.OutsideDiameter / 5000;
            var mesh = Mesher.Flatten(gore.Solid, new(chord, 0.2));
            MeshLaws.Hold(mesh, genus: 0);
            Near.Absolute(gore.Volume, mesh.Volume, mesh.Area * chord);
            var height = mesh.Triangles.Sum(t =>
            {
                var (a, b, c) = (mesh.Vertices[t.A], mesh.Vertices[t.B], mesh.Vertices[t.C]);
                return a.Dot(b.Cross(c)) / 24 * (a.Z + b.Z + c.Z);
            }) / mesh.Volume;
            // Skins that stand off by a chord move the centre by no more than that times area over volume, and the head's size.
            Near.Absolute(shape.Strips.Centre, height, mesh.Area * chord / mesh.Volume * vessel.Design.Shell.OuterRadius);
        }
    });

    private static IEnumerable<(Assembly Vessel, GoreShape Shape, Part Gore, Part Crown)> Heads(Assembly vessel)
    {
        foreach (var end in new[] { VesselEnd.Top, VesselEnd.Bottom })
        {
            if (GoreShape.Of(end, vessel.Design) is { } shape)
            {
                yield return (
                    vessel, shape, vessel.Parts.Single(part => part.Id == Slug.Of(GoreDesign.GoreOf(Names.Of(end)))),
                    vessel.Parts.Single(part => part.Id == Slug.Of(GoreDesign.CapOf(Names.Of(end)))));
            }
        }
    }

    /// <summary>Those alike and those that a port stands in.</summary>
    private static IEnumerable<Part> AllGores(GoreShape shape, Assembly vessel) =>
        vessel.Parts.Where(part => part.Kind == PartKind.Gore
            && part.Id.StartsWith(Slug.Of(GoreDesign.GoreOf(Names.Of(EndOf(shape, vessel)))), StringComparison.Ordinal));

    private static VesselEnd EndOf(GoreShape shape, Assembly vessel) =>
        shape.Design.Path == vessel.Design.Top.Path ? VesselEnd.Top : VesselEnd.Bottom;
}
