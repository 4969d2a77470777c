using Vessel.Function;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>
/// Drops of oil in air: Stokes' law, and the drag of spheres by Schiller and Naumann 1933; figures recomputed from the formulas.
/// </summary>
public sealed class Droplets
{
    private const double Oil = 870;

    [Theory]
    [InlineData(5, "0.000567033", "0.000566846")]
    [InlineData(10, "0.00226813", "0.00226501")]
    [InlineData(50, "0.0567033", "0.0546746")]
    [InlineData(100, "0.226813", "0.198145")]
    [InlineData(200, "0.907253", "0.604379")]
    [InlineData(500, "5.67033", "1.86535")]
    public void Speed_of_fall_in_air_of_80_degrees(double micrometres, string stokes, string fall)
    {
        Near.Printed(stokes, Droplet.Stokes(micrometres * 1e-6, Oil, AirAt(80)));
        Near.Printed(fall, Droplet.Fall(micrometres * 1e-6, Oil, AirAt(80)));
    }

    [Fact]
    public void Speed_of_fall_in_air_of_20_degrees()
    {
        Near.Printed("0.261018", Droplet.Stokes(1e-4, Oil, AirAt(20)));
        Near.Printed("0.218647", Droplet.Fall(1e-4, Oil, AirAt(20)));
    }

    /// <summary>The documentation of a fluids library: 0.4804 m/s by another law of drag; laws differ by some percent.</summary>
    [Fact]
    public void Another_law_of_drag_agrees_within_four_percent()
    {
        var fall = Droplet.Fall(150e-6, 700, new(null, 1.3, 1e-5));

        Near.Printed("0.4991", fall);
        Assert.InRange(fall / 0.4804, 1.03, 1.04);
    }

    /// <summary>Largest drop that the gas takes up an empty cylinder: flow, bore and the drop by either law. Two values that were rounded
    /// twice (52.145, 95.525) are recomputed.</summary>
    [Theory]
    [InlineData(30, 76.2, "72.15", "69.53")]
    [InlineData(30, 101.6, "53.23", "52.14")]
    [InlineData(30, 127, "42.26", "41.72")]
    [InlineData(50, 76.2, "95.52", "89.76")]
    [InlineData(50, 101.6, "69.70", "67.32")]
    [InlineData(100, 76.2, "143.8", "126.9")]
    [InlineData(100, 127, "79.64", "76.16")]
    [InlineData(200, 76.2, "229.0", "179.5")]
    [InlineData(200, 101.6, "154.8", "134.6")]
    public void Drop_that_rises_in_a_cylinder(double litresPerMinute, double bore, string carried, string stokes)
    {
        var speed = litresPerMinute / 60_000 / (Math.PI / 4 * Math.Pow(bore / 1000, 2));
        var gas = AirAt(80);

        Near.Printed(carried, Droplet.Carried(speed, Oil, gas) * 1e6);
        Near.Printed(stokes, Math.Sqrt(18 * gas.Viscosity * speed / (Air.Gravity * (Oil - gas.Density))) * 1e6);
    }

    /// <summary>K 0.107 m/s, oil of 870 kg/m3.</summary>
    [Theory]
    [InlineData(0.107, 20, "2.87416")]
    [InlineData(0.107, 80, "3.15498")]
    [InlineData(0.0535, 20, "1.43708")]
    [InlineData(0.0535, 80, "1.57749")]
    public void Souders_and_Brown(double constant, double celsius, string speed) =>
        Near.Printed(speed, SoudersBrown.Speed(constant, Oil, AirAt(celsius).Density));

    /// <summary>Stokes numbers at 0.5 m/s: wire of 0.28 mm; wool of 0.05 mm, two values recomputed (0.4135 and 0.5789, printed 0.4136 and
    /// 0.5790).</summary>
    [Theory]
    [InlineData(0.28, 5, "0.1034")]
    [InlineData(0.28, 10, "0.4135")]
    [InlineData(0.28, 20, "1.654")]
    [InlineData(0.05, 1, "0.0232")]
    [InlineData(0.05, 2, "0.0926")]
    [InlineData(0.05, 5, "0.5789")]
    public void Stokes_number(double wire, double micrometres, string printed) =>
        Near.Printed(printed, Impaction.Stokes(micrometres * 1e-6, wire * 1e-3, 0.5, Oil, AirAt(80)));

    /// <summary>Void 98 % of 0.28 mm wire, and so on; a supplier's pad of 0.011 in wire, 97.57 % void, has 106 ft2/ft3.</summary>
    [Theory]
    [InlineData(0.98, 0.28, "285.714")]
    [InlineData(0.97, 0.28, "428.571")]
    [InlineData(0.95, 0.05, "4000.00")]
    [InlineData(0.9757, 0.2794, "347.9")]
    public void Surface_of_a_pad(double open, double wire, string printed) =>
        Near.Printed(printed, Impaction.FibreSurface(1 - open, wire * 1e-3));

    /// <summary>Free path of air: 0.066 um at 20 degC and one atmosphere (Hinds, from memory).</summary>
    [Fact]
    public void Free_path_of_air() =>
        Near.Relative(0.066, 1e6 * Air.FreePath(20, Air.Density(20, Air.Atmosphere), Air.Viscosity(20)), 0.02);

    /// <summary>
    /// Speeds of fall of drops of 1000 kg/m3 in air of 20 degC (Hinds, from memory): 3.5e-5 m/s at 1 um, 3.1e-3 at 10, 0.25 at 100; slip
    /// raises that of 0.5 um by some 35 to 40 %. An oil drop of 0.5 um falls 0.0080 mm/s at 80 degC, 0.0057 without slip.
    /// </summary>
    [Fact]
    public void Small_drops_slip_through_the_gas()
    {
        var (cold, warm) = (Slipping(20), Slipping(80));

        Near.Relative(3.5e-5, Droplet.Fall(1e-6, 1000, cold), 0.02);
        Near.Relative(3.1e-3, Droplet.Fall(1e-5, 1000, cold), 0.02);
        Near.Relative(0.25, Droplet.Fall(1e-4, 1000, cold), 0.02);
        Assert.InRange(Droplet.Slip(5e-7, cold), 1.3, 1.42);
        Near.Relative(0.0080, 1e3 * Droplet.Fall(5e-7, Oil, warm), 0.01);
        Near.Printed("0.0057", 1e3 * Droplet.Fall(5e-7, Oil, AirAt(80)));
        for (var speed = 1e-6; speed < 8; speed *= 1.7)
            Near.Relative(speed, Droplet.Fall(Droplet.Carried(speed, Oil, warm), Oil, warm), 1e-9);
    }

    private static MovingGas Slipping(double celsius) =>
        AirAt(celsius) with { FreePath = Air.FreePath(celsius, Air.Density(celsius, Air.Atmosphere), Air.Viscosity(celsius)) };

    private static MovingGas AirAt(double celsius) => new(null, Air.Density(celsius, Air.Atmosphere), Air.Viscosity(celsius));
}
