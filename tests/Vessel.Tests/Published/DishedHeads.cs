using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>Depth, volume and area of dished ends and cones. Figures have as many digits as their sources give.</summary>
public sealed class DishedHeads
{
    /// <summary>
    /// Inside crown and knuckle radius in diameters, depth, volume and area over D, D^3 and D^2: "Gewölbter Boden", German
    /// Wikipedia (DIN 28011, DIN 28013; shapes), figures derived from the shapes to nine digits.
    /// </summary>
    public static TheoryData<double, double, double, double, double> Torispheres => new()
    {
        { 1, 0.1, 0.193774225, 0.0989659951, 0.989987103 },
        { 0.8, 0.154, 0.254472732, 0.130771734, 1.08792086 },
        { 1, 0.06, 0.169337614, 0.0809990043, 0.930582830 },
        { 0.9, 0.17, 0.248847176, 0.132841246, 1.10001899 },
    };

    [Theory]
    [MemberData(nameof(Torispheres))]
    public void Torispheres_have_their_published_depth_volume_and_area(
        double crown, double knuckle, double depth, double volume, double area)
    {
        var dome = Domes.Torisphere(0.5, crown, knuckle);

        Near.Absolute(depth, -dome.Start.V, 5e-10);
        Near.Absolute(volume, dome.Volume, 5e-10);
        Near.Absolute(area, dome.Area, 5e-9);
    }

    [Fact]
    public void Half_a_sphere_has_two_thirds_of_its_cylinder()
    {
        var dome = Domes.Sphere(0.5);

        Near.Absolute(Math.PI / 12, dome.Volume, 1e-15);
        Near.Absolute(Math.PI / 2, dome.Area, 1e-15);
    }

    /// <summary>Depth D/4, half the volume of a half sphere: vessel-volume notes; area of the spheroid.</summary>
    [Fact]
    public void Half_a_two_to_one_ellipsoid_has_half_a_half_spheres_volume()
    {
        var dome = Domes.Ellipsoid(0.5, 0.25);

        Near.Absolute(0.25, -dome.Start.V, 1e-15);
        Near.Absolute(Math.PI / 24, dome.Volume, 1e-15);
        Near.Absolute(1.08398534, dome.Area, 5e-9);
    }

    /// <summary>Wall over outside diameter and the depth over it: radii stay multiples of the outside diameter.</summary>
    public static TheoryData<double, double, double, double> Walls => new()
    {
        { 0.005, 1, 0.1, 0.1913128 },
        { 0.01, 1, 0.1, 0.1888896 },
        { 0.02, 1, 0.1, 0.1841569 },
        { 0.005, 0.8, 0.154, 0.2513334 },
        { 0.01, 0.8, 0.154, 0.2482573 },
        { 0.02, 0.8, 0.154, 0.2422904 },
    };

    [Theory]
    [MemberData(nameof(Walls))]
    public void Depth_inside_falls_with_the_wall(double wall, double crown, double knuckle, double depth) =>
        Near.Absolute(depth, -Domes.Torisphere(0.5 - wall, crown, knuckle).Start.V, 5e-8);

    [Fact]
    public void A_klopper_end_of_4_inches_holds_86_millilitres()
    {
        var dome = Domes.Torisphere((101.6 / 2) - 3.175, 101.6, 10.16);

        Near.Absolute(18.18749, -dome.Start.V, 5e-6);
        Near.Absolute(86187.24, dome.Volume, 5e-3);
    }

    /// <summary>Knuckle and crown of a flanged and dished head, inches.</summary>
    [Fact]
    public void A_flanged_and_dished_head_of_4_inches_holds_its_published_volume()
    {
        var dome = Domes.Torisphere(2 - 0.125, 4, 0.24);

        Near.Absolute(0.6140917, -dome.Start.V, 5e-8);
        Near.Absolute(4.215321, dome.Volume, 5e-7);
    }

    /// <summary>Greater and smaller diameter, height; slant, area, volume. Classical; the second row in inches.</summary>
    public static TheoryData<double, double, double, double, double, double> Cones => new()
    {
        { 100, 20, 60, 72.111026, 13592.608, 194778.74 },
        { 4, 0.5, 1.5, 2.3048861, 16.292280, 7.1667582 },
        { 100, 25, 37.5, 53.033009, 10413.007, 128854.39 },
        { 101.6, 19.05, 41.275, 58.371665, 11062.398, 136379.0 },
    };

    [Theory]
    [MemberData(nameof(Cones))]
    public void Frustums_have_their_published_slant_area_and_volume(
        double greater, double smaller, double height, double slant, double area, double volume)
    {
        var cone = new Profile(new LinePiece(new(smaller / 2, 0), new(greater / 2, height)));

        Near.Relative(slant, cone.Length, 1e-7);
        Near.Relative(area, cone.Area, 1e-7);
        Near.Relative(volume, cone.Volume, 1e-6);
    }

    /// <summary>Full to a height above the pole, mm and mm3.</summary>
    public static TheoryData<string, double, double> Levels => new()
    {
        { "sphere", 10, 14660.766 },
        { "sphere", 25, 81812.309 },
        { "ellipsoid", 10, 27227.136 },
        { "ellipsoid", 25, 130899.69 },
        { "torisphere", 5, 7723.1 },
        { "torisphere", 10.419358, 32921.5 },
        { "torisphere", 15, 65035.9 },
        { "torisphere", 19.377423, 98966.0 },
    };

    [Theory]
    [MemberData(nameof(Levels))]
    public void A_dish_of_100_fills_as_published(string kind, double level, double volume)
    {
        var dome = kind switch
        {
            "sphere" => Domes.Sphere(50),
            "ellipsoid" => Domes.Ellipsoid(50, 25),
            _ => Domes.Torisphere(50, 100, 10),
        };
        var along = dome.LengthAtHeight(dome.Start.V + level);

        // The levels are given to 1e-6 mm on up to 7854 mm2, the torisphere's volumes to 0.1.
        Near.Absolute(volume, dome.Part(new(0, along)).Volume, kind == "torisphere" ? 0.06 : 6e-3);
    }
}
