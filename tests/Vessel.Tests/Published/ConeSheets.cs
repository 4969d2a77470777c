using Vessel.Design;
using Vessel.Geometry;
using Vessel.Heads.Cones;
using Vessel.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>
/// The sector that a frustum is rolled from: slant, both radii and the angle ("Construction of Cone Surface", Math Forum, and the
/// anvilfire page on cone layout for the 90 degree cone; figures recomputed to eight digits).
/// </summary>
public sealed class ConeSheets
{
    /// <summary>Greater and smaller diameter, height; slant, outer and inner radius, degrees; the second row in inches.</summary>
    public static TheoryData<double, double, double, string, string, string, string> Frustums => new()
    {
        { 100, 20, 60, "72.111026", "90.138782", "18.027756", "199.69207" },
        { 4, 0.5, 1.5, "2.3048861", "2.6341556", "0.32926944", "273.33238" },
        { 100, 25, 37.5, "53.033009", "70.710678", "17.677670", "254.55844" },
        { 101.6, 19.05, 41.275, "58.371665", "71.842049", "13.470384", "254.55844" },
    };

    [Theory]
    [MemberData(nameof(Frustums))]
    public void Frustums_unroll_to_their_published_sectors(
        double greater, double smaller, double height, string slant, string outer, string inner, string degrees)
    {
        // So thin that the middle is the inside to the last digit.
        const double wall = 1e-12;
        var half = Math.Atan((greater - smaller) / 2 / height);
        var design = Design(greater + (2 * wall), wall, half, smaller - (2 * wall));

        var cone = ((ConeHead)design.Bottom).SheetAt(VesselEnd.Bottom, design).Development;

        Near.Printed(slant, cone.Lengths.Length);
        Near.Printed(outer, cone.Lengths.End);
        Near.Printed(inner, cone.Lengths.Start);
        Near.Printed(degrees, 360 * cone.Share);
        Near.Relative(cone.Lengths.Length, cone.SeamLength, 1e-12);
    }

    /// <summary>A cone whose tip is opened for a tube of that outside diameter.</summary>
    private static VesselDesign Design(double outside, double wall, double half, double tube)
    {
        var shell = Designs.Shell(outside, wall, 3 * outside);
        return Designs.Vessel(shell, Designs.OnHead("drain", VesselEnd.Bottom, tube, tube / 10, 0) with
        {
            Joint = PortJoint.SetIn,
            Clearance = wall,
        }) with
        {
            Bottom = new ConeHead("bottom", Designs.Stainless, wall, half, 1, 0),
        };
    }
}
