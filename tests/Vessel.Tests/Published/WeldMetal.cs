using Vessel.Design;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Ports;
using Vessel.Sites;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>Weld sections: elementary geometry, recomputed; the metal off the root line derived and recomputed.</summary>
public sealed class WeldMetal
{
    private static Joint Tee(double wall)
    {
        var (vessel, site) = Designs.Tee(55, 16, wall, shellWall: wall);
        return PortSeam.Of(site, vessel);
    }

    /// <summary>A station of a fillet at that angle between the surfaces.</summary>
    private static Station At(double dihedral) => new(
        default, Vector3.UnitZ, Vector3.UnitX, new(Math.Cos(dihedral), Math.Sin(dihedral), 0), dihedral, 0, 0);

    [Theory]
    [InlineData(3.175, "5.04031")]
    [InlineData(4.7625, "11.3407")]
    [InlineData(6.35, "20.1612")]
    [InlineData(3.2, "5.12")]
    [InlineData(4.8, "11.52")]
    [InlineData(6.4, "20.48")]
    public void A_flat_fillet_on_a_right_angle(double leg, string area)
    {
        var bead = Bead.Of(Tee(leg), At(Math.PI / 2));

        Near.Printed(area, bead.Area);
        Near.Relative(leg, bead.Leg, 1e-14);
    }

    [Theory]
    [InlineData(3.2, "2.26274")]
    [InlineData(4.8, "3.39411")]
    [InlineData(6.4, "4.52548")]
    public void Its_throat(double leg, string throat) => Near.Printed(throat, FilletThroat.Of(leg));

    [Theory]
    [InlineData(60)]
    [InlineData(90)]
    [InlineData(110)]
    [InlineData(134.9)]
    public void A_skewed_fillet_of_constant_throat(double degrees)
    {
        var (joint, angle) = (Tee(2), degrees * Math.PI / 180);

        var bead = Bead.Of(joint, At(angle));

        Near.Relative(joint.Throat * joint.Throat * Math.Tan(angle / 2), bead.Area, 1e-13);
        Near.Relative(joint.Throat / Math.Cos(angle / 2), bead.Leg, 1e-13);
    }

    [Theory]
    [InlineData(60)]
    [InlineData(120)]
    [InlineData(150)]
    public void The_centroid_is_that_of_the_triangle(double degrees)
    {
        var at = At(degrees * Math.PI / 180);
        var bead = Bead.Of(Tee(2), at);
        var (a, b) = (bead.Leg * at.AlongHost, bead.Leg * at.AlongPart);

        Assert.True((bead.Centroid - ((1.0 / 3) * (a + b))).Length < 1e-14 * bead.Leg);
        Near.Relative(a.Cross(b).Length / 2, bead.Area, 1e-13);
    }

    /// <summary>Volume of a bead of equal legs swept along the joint, over section times length of the root.</summary>
    private static double Excess(Joint joint, Func<Station, double> legOf)
    {
        const int steps = 7200;
        var (swept, straight) = (0.0, 0.0);
        for (var i = 0; i < steps; i++)
        {
            Vector3 Centroid(Station at) => at.Root + ((legOf(at) / 3) * (at.AlongHost + at.AlongPart));
            var at = joint.Along(Turns.Full * (i + 0.5) / steps);
            // Midpoint sums over smooth periodic functions: no error but that of the central difference, 1e-7.
            var moved = Centroid(joint.Along(Turns.Full * (i + 1) / steps)) - Centroid(joint.Along(Turns.Full * i / steps));
            var area = legOf(at) * legOf(at) * Math.Sin(at.Dihedral) / 2;
            swept += area * moved.Dot(at.Tangent.Unit());
            straight += area * at.Tangent.Length * Turns.Full / steps;
        }

        return (swept / straight) - 1;
    }

    [Theory]
    [InlineData(2, "4.2")]
    [InlineData(3, "6.2")]
    public void Metal_off_the_root_line_travels_further(double leg, string percent) =>
        Near.Printed(percent, 100 * Excess(Tee(leg), _ => leg));

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    public void The_deposit_counts_it(double leg)
    {
        var joint = Tee(leg);
        double LegOf(Station at) => joint.Throat / Math.Cos(at.Dihedral / 2);
        var straight = Quadrature.Periodic(
            t => joint.Along(t) is var at ? Bead.Of(joint, at).Area * at.Tangent.Length : 0, joint.Domain, joint.Breaks);

        // Difference quotients over 1e-4 of the turn are good to a few 1e-7.
        Near.Relative(straight * (1 + Excess(joint, LegOf)), WeldFigures.Of(joint).Deposit, 2e-6);
    }

    [Fact]
    public void A_square_butt_with_cap_and_root()
    {
        var vessel = Designs.Vessel(Designs.Shell(wall: 3.2) with { RootGap = 0.8 });
        var joint = LongSeam.Of(vessel.Shell.Courses[0], vessel).Single();

        // t 3.2, gap 0.8, cap 6 x 1, root 4 x 0.8.
        Near.Printed("8.6933", Bead.Of(joint, joint.Along(10)).Area);
    }
}
