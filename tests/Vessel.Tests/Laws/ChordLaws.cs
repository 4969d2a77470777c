using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Laws;

/// <summary>
/// Facets lie within the stated chord of the true shape and the true shape within it of the facets: both are held against the
/// cylinders of tube and shell themselves, in closed form.
/// </summary>
public sealed class ChordLaws
{
    /// <summary>Equal pieces lie at the limit itself.</summary>
    private const double Limit = 0.05 * (1 + 1e-5);

    public static TheoryData<int> Seeds => RandomDesigns.Seeds;

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Ends_that_follow_a_shell_keep_the_chord(int seed) => RandomDesigns.Hold(seed, vessel =>
    {
        foreach (var site in vessel.Sites.Where(site => site is { Over: null, Port: { Host: PortHost.Shell, Joint: PortJoint.SetOn } }
            && !(site.Port.Cut == EndCut.Square)))
        {
            Check(vessel, site);
        }
    });

    /// <summary>Thick, and as wide as the shell or nearly so: there the end climbs steeply and bends most through its wall.</summary>
    [Theory]
    [InlineData(0.95, 0.3, 0, 0)]
    [InlineData(0.97, 0.12, 0, 0.5)]
    [InlineData(0.99, 0.25, 0, 0)]
    [InlineData(0.6, 0.3, 0.38, -0.7)]
    [InlineData(0.5, 0.45, 0.49, 0)]
    [InlineData(1, 0.3, 0, 0.5)]
    [InlineData(1 - 1e-6, 0.3, -1e-6, 0.35)]
    [InlineData(0.95, 0.3, 0.05, 0.7)]
    public void A_branch_nearly_as_wide_as_its_shell_keeps_the_chord(double width, double wall, double offset, double tilt)
    {
        var radius = 55 * width;
        var port = Designs.Branch("wide", 2 * radius, wall * radius, new(400, 0.3, offset * 55, tilt, 0)) with
        {
            Cut = EndCut.Ground,
            Length = 150,
        };
        var vessel = Compiler.Assemble(Designs.Vessel(Designs.Shell() with { Height = 800 }, port));

        Check(vessel, vessel.Sites.Single());
    }

    private static void Check(Assembly vessel, PortSite site)
    {
        var (port, shell) = (site.Port, vessel.Design.Shell.OuterRadius);
        var mesh = Mesher.Flatten(vessel.Parts.Single(part => part.Id == Slug.Of(port.Name)).Solid, Accuracy.Solids);
        for (var i = 0; i < 251; i++)
        {
            foreach (var share in (double[])[0, 0.1, 0.3, 0.5, 0.7, 0.9, 1])
            {
                var foot = OnShell(site, shell, port.BoreRadius + (share * port.Wall), Turns.Full * i / 251);
                var off = MeshProbe.Distance(mesh, foot, Limit);
                Assert.True(off <= Limit, $"{port.Name}: the end at {foot} lies {off} mm from all facets");
            }
        }

        if (port.Elbow is not null)
            return;
        foreach (var at in mesh.Triangles.SelectMany(t => Places(mesh.Vertices[t.A], mesh.Vertices[t.B], mesh.Vertices[t.C])))
        {
            var (round, seen) = (Math.Sqrt((at.X * at.X) + (at.Y * at.Y)), site.Frame.ToOuter(at));
            var off = new[]
            {
                round - port.OuterRadius, round - port.BoreRadius, at.Z - port.Length,
                    Math.Sqrt((seen.X * seen.X) + (seen.Y * seen.Y)) - shell,
            }.Min(Math.Abs);
            Assert.True(off <= Limit, $"{port.Name}: a facet at {at} lies {off} mm from all surfaces");
        }
    }

    private static Vector3[] Places(Vector3 a, Vector3 b, Vector3 c) =>
        [0.5 * (a + b), 0.5 * (b + c), 0.5 * (c + a), 1.0 / 3 * (a + b + c)];

    /// <summary>In the tube's frame: where its line meets the shell first, from its free end.</summary>
    private static Vector3 OnShell(PortSite site, double shell, double r, double phi)
    {
        var start = new Vector3(r * Math.Cos(phi), r * Math.Sin(phi), 0);
        var (p, w) = (site.Frame.ToOuter(start), site.Frame.Z);
        var (a, b, c) = ((w.X * w.X) + (w.Y * w.Y), (p.X * w.X) + (p.Y * w.Y), (p.X * p.X) + (p.Y * p.Y) - (shell * shell));
        return start with { Z = (-b + Math.Sqrt(Math.Max(0, (b * b) - (a * c)))) / a };
    }
}
