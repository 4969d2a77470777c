using Vessel.Joints;
using Vessel.Stock;

namespace Vessel.Planning;

/// <summary>What to heed at a weld, in words.</summary>
internal static class WeldNotes
{
    /// <summary>Wall from which on aluminium takes heat away faster than a small machine brings it, mm. Common practice.</summary>
    private const double ThickAluminium = 5;

    /// <summary>Wall from which on mild steel is preheated, mm: AWS D1.1, from memory.</summary>
    private const double ThickSteel = 19;

    /// <summary>Hottest that thick aluminium may get between passes, degrees Celsius. Common practice.</summary>
    private const double HottestAluminium = 120;

    /// <summary>Temperature below which the metal beside a weld has to be before the next, degrees Celsius.</summary>
    public static double CoolBelow(MaterialFamily family, double wall) =>
        family == MaterialFamily.Aluminium && wall >= ThickAluminium ? HottestAluminium : Thermal.Of(family).CoolBelow;

    public static string Heat(MaterialFamily family, double wall) => family switch
    {
        MaterialFamily.Aluminium when wall >= ThickAluminium => FormattableString.Invariant(
            $"preheat to 90 degC and never above {HottestAluminium:0}: more softens a 6xxx alloy [practice]"),
        MaterialFamily.Aluminium => FormattableString.Invariant(
            $"no preheat; below {CoolBelow(family, wall):0} degC before the next seam [practice]"),
        MaterialFamily.Stainless => FormattableString.Invariant(
            $"no preheat; below {CoolBelow(family, wall):0} degC before the next pass or seam [practice]"),
        _ when wall > ThickSteel => "preheat to 65 degC (AWS D1.1, not checked against the source)",
        _ => "no preheat above 0 degC; dry it, and warm it to 20 degC where it is below 10 (AWS D1.1, not checked against the source)",
    };

    /// <summary>What a setting asks of torch and gas beyond the usual; null for nothing.</summary>
    public static string? Machine(TigRow settings)
    {
        var torch = settings.High > Tungstens.AirCooled
            ? FormattableString.Invariant($"up to {settings.High:0} A: a water-cooled torch (one cooled by air stops at about {Tungstens.AirCooled:0} A [practice]) and a machine that gives it")
            : null;
        var gas = settings.HasHelium
            ? "the amps are the table's for argon with helium, which does not say how much (25 to 75 % [practice]); on argon alone "
                + "preheat, or expect more amps"
            : null;
        return torch is null ? gas : gas is null ? torch : $"{torch}; {gas}";
    }

    public static string Distortion(WeldRole role) => role switch
    {
        WeldRole.LongSeam or WeldRole.InnerSeam =>
            "clamp on a bar; tack from one end with the gap held, weld in back-steps towards it; it draws in: re-round after",
        WeldRole.GirthSeam => "circumferences matched by tape first; four tacks, then in quarters, opposite ones after each other; check "
            + "that both axes are in line",
        WeldRole.HeadSeam => "in quarters, opposite ones after each other; the rim shrinks by a few tenths",
        WeldRole.PortSeam => "in halves, on a curved shell from the crotch up; it pulls the wall in and the port towards the first bead: "
            + "begin opposite to where it may lean",
        WeldRole.MitreSeam => "tack inside and outside of the bend first and check its angle; the pieces open towards the last bead: weld "
            + "the inside of the bend first",
        _ => throw new ArgumentOutOfRangeException(nameof(role)),
    };
}
