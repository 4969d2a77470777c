using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Heads.Dishes;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Sites;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Heads.Dishes;

/// <summary>A port that stands wholly in one gore: which piece is drilled, what is left of it, and where a seam is in the way.</summary>
public sealed class GorePortsTests
{
    private const int Count = 8;

    private static readonly GoreDesign _gores = GoreVessels.Gores(Count, 60, 0.3);

    /// <summary>Amid the third gore.</summary>
    private static readonly double _amid = 0.3 + (2.5 * Math.PI / 4);

    private static VesselDesign Vessel(double radius, double angle, double wide = 20, bool square = true) => GoreVessels.Of(_gores) with
    {
        Ports =
        [
            Designs.OnHead("drain", VesselEnd.Bottom, wide, 2, radius, angle) with
            {
                Path = "ports[0]", Length = 60, Place = new PortPlace(0, angle, 0, 0, radius) { SquareToSurface = square },
            },
        ],
    };

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void One_gore_is_drilled_and_the_others_are_alike(bool square)
    {
        var vessel = Compiler.Assemble(Vessel(65, _amid, square: square));
        var gores = vessel.Parts.Where(part => part.Kind == PartKind.Gore && part.Path == "bottom.gores").ToList();
        var (plain, drilled) = (gores.Single(part => part.Id == "bottom-gore"), gores.Single(part => part.Id == "bottom-gore-3"));
        var port = vessel.Sites[0];

        Assert.Equal((Count - 1, 1), (plain.Quantity, drilled.Quantity));
        Assert.Equal("bottom-gore-3", Names.PortPart(port.Port, vessel.Design));
        Assert.Empty(plain.Holes);
        Assert.Null(Assert.Single(drilled.Holes).Outline);
        // Square to a half sphere the bore is a cylinder between two spheres about its axis: their caps' heights differ.
        if (square)
        {
            double Cap(double r) => Math.PI * 2 / 3 * (Math.Pow(r, 3) - Math.Pow((r * r) - 64, 1.5));
            Near.Relative(Cap(105) - Cap(103), plain.Volume - drilled.Volume, 1e-9);
        }

        foreach (var part in new[] { plain, drilled })
        {
            var mesh = Mesher.Flatten(part.Solid, Accuracy.Solids);
            MeshLaws.Hold(mesh, part == drilled ? 1 : 0);
            Near.Absolute(part.Volume, mesh.Volume, mesh.Area * Accuracy.Solids.Chord);
            // Its mass lies where the mesh has its own, within the chord and, of the hole, of a wall's middle.
            var centre = PartCentre.Of(part);
            Assert.InRange((centre - Centroid(mesh, part)).Length, 0, 0.1);
        }

        // The hole's axis goes through the drilled one, and its seams join it to its neighbours.
        Assert.Equal(2, vessel.Welds.Select(weld => weld.Joint)
            .Count(joint => joint.Path.StartsWith("bottom.gores", StringComparison.Ordinal) && joint.Kind == JointKind.Butt
                && joint.Between.Contains("bottom-gore-3") && joint.Between.Contains("bottom-gore") && !joint.Between.Contains("bottom-cap")));
        Assert.Contains(drilled.Flat!.Notes, note => note.Contains("1 PIECE OF 8", StringComparison.Ordinal));
        Assert.Contains(drilled.Flat.Notes, note => note.StartsWith("Drill for 'drain'", StringComparison.Ordinal));
    }

    /// <summary>By the divergence theorem over the facets, all placements together.</summary>
    private static Vector3 Centroid(Mesh mesh, Part part)
    {
        var (volume, moment) = (0.0, Vector3.Zero);
        foreach (var (i, j, k) in mesh.Triangles.Select(t => (t.A, t.B, t.C)))
        {
            var (a, b, c) = (mesh.Vertices[i], mesh.Vertices[j], mesh.Vertices[k]);
            var six = a.Dot(b.Cross(c));
            (volume, moment) = (volume + (six / 6), moment + (six / 24 * (a + b + c)));
        }

        var own = 1 / volume * moment;
        return 1.0 / part.Quantity * part.Placements.Aggregate(Vector3.Zero, (sum, frame) => sum + frame.ToOuter(own));
    }

    /// <summary>
    /// On the mean sphere of 104 a port 20 wide about a point 65 aside stands clear of the seam of a cap 60 wide; square to the sphere one
    /// 41 aside reaches in to 104 sin(asin(41/105) - asin(10/105)) = 31.3 of it, and one at 30 stands over it. Sideways a gore of 45 deg is
    /// 2 x 65 x sin(22.5) = 49.7 wide there.
    /// </summary>
    [Theory]
    [InlineData(65, 0, null)]
    [InlineData(30, 0, "port-over-seam")]
    [InlineData(41, 0, null)]
    [InlineData(65, 0.21, null)]
    [InlineData(65, 0.27, "port-over-seam")]
    [InlineData(65, 0.39, "port-over-seam")]
    [InlineData(65, -0.27, "port-over-seam")]
    [InlineData(18, 0.39, null)]
    public void Only_what_stands_over_a_seam_is_refused(double radius, double aside, string? code)
    {
        var design = Vessel(radius, _amid + aside);

        Assert.Equal(
            code is null ? [] : [code],
            new[] { VesselEnd.Top, VesselEnd.Bottom }.SelectMany(end => design.Head(end).Faults(end, design)).Select(fault => fault.Code));
    }

    /// <summary>Between the seam of the cap and the port on a gore there are two walls, or a finding.</summary>
    [Theory]
    [InlineData(45, false)]
    [InlineData(41, true)]
    public void A_port_on_a_gore_keeps_off_the_caps_seam(double radius, bool found) =>
        Assert.Equal(found, Compiler.Assess(Compiler.Assemble(Vessel(radius, _amid)))
            .Any(finding => finding.Code == FindingCodes.PortNearCapSeam));
}
