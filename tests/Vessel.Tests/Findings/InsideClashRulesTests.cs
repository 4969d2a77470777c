using Vessel.Design;
using Vessel.Findings;
using Vessel.Geometry;
using Vessel.Tests.Members.Inside;
using Vessel.Tests.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Findings;

/// <summary>A tube that reaches in beside a sleeve of 90 mm outside, against points set close on its end.</summary>
public sealed class InsideClashRulesTests
{
    /// <summary>Distances are known to 0.05 mm, and the lower bound is held to the limit of 1 mm.</summary>
    private const double Hair = 0.06;

    [Theory]
    [InlineData(0, 0)]
    [InlineData(12, 0)]
    [InlineData(-18, 0)]
    [InlineData(0, 20)]
    [InlineData(8, -15)]
    public void A_tube_that_nearly_touches_the_sleeve_is_told_with_its_distance(double offset, double tilt)
    {
        foreach (var (wanted, count) in new[] { (1 - Hair, 1), (0.3, 1), (1 + Hair, 0) })
        {
            // Its inside length by bisection: the deeper, the nearer.
            var (near, far) = (0.5, 30.0);
            for (var i = 0; i < 60; i++)
                (near, far) = (near + far) / 2 is var middle && Distance(Vessel(offset, tilt, middle)) > wanted
                    ? (middle, far) : (near, middle);

            var found = Assessment.Of(Compiler.Assemble(Vessel(offset, tilt, near)))
                .Where(finding => finding.Code == FindingCodes.InsideClash).ToList();

            Assert.Equal(count, found.Count);
            // The lower bound; points 0.05 mm apart miss a distance by less than 1e-4.
            Assert.All(found, finding => Assert.InRange(finding.Figures[0].Value, wanted - 0.051, wanted + 0.001));
        }
    }

    private static VesselDesign Vessel(double offset, double tilt, double inside) => Designs.Vessel(
        Designs.Shell(140),
        Designs.OnHead("outlet", VesselEnd.Top, 32, 2, 0) with { Joint = PortJoint.SetIn, InsideLength = 22, Length = 40 },
        Designs.Branch("inlet", 20, 2, new(120, 0.7, offset, tilt * Math.PI / 180, 0)) with
        {
            Joint = PortJoint.SetIn,
            InsideLength = inside,
        }) with
    {
        Members = [InsideTests.Sleeve],
    };

    /// <summary>Of the rim of the tube's end, and of its bore's, from the sleeve's outside;
    /// the sleeve reaches past it up and down.</summary>
    private static double Distance(VesselDesign design)
    {
        var (port, inner) = (design.Ports[1], design.Shell.InnerRadius);
        var (sin, cos) = Math.SinCos(port.Place.Tilt);
        var start = Math.Sqrt((inner * inner) - (port.Place.Offset * port.Place.Offset));
        return (
            from r in (double[])[port.OuterRadius, port.BoreRadius]
            from i in Enumerable.Range(0, 3600)
            let phi = i * Math.PI / 1800
            let forward = start - (port.InsideLength * cos) - (r * Math.Cos(phi) * sin)
            select new Point2(forward, port.Place.Offset + (r * Math.Sin(phi))).Length).Min() - 45;
    }
}
