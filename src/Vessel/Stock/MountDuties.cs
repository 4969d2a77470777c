using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>A kind of duty that a mounting has.</summary>
/// <param name="Name">Name that the key <c>duty</c> takes.</param>
/// <param name="Acceleration">Acceleration to reckon with in any direction, its own weight included, multiples of gravity.</param>
/// <param name="Where">Place of use in words.</param>
public sealed record MountDuty(string Name, double Acceleration, string Where, string Source);

/// <summary>How hard a mounting is shaken, by where it is.</summary>
public static class MountDuties
{
    /// <summary>Where nothing says what the vessel hangs on, and no engine is given.</summary>
    public static MountDuty Fixed { get; } = new(
        "fixed", 2, "on a wall, a floor or the frame of a machine that stands still",
        "its weight, and as much again for knocks and hoses [practice]; where the earth quakes ask for the local code");

    /// <summary>Where an engine is given, and nothing else.</summary>
    public static MountDuty Vehicle { get; } = new(
        "vehicle", 5, "on a road or farm vehicle, or on the frame that carries an engine",
        "5 g for rough ground and engine [practice]; lashings of loads on the road are tested for 0.8 g (49 CFR 393.102)");

    public static ImmutableArray<MountDuty> All { get; } =
    [
        Fixed,
        Vehicle,
        new(
            "boat", 10, "in the hull of a boat that slams",
            "1000 vertical shocks of 10 g, as on marine sanitation devices (33 CFR 159.105); petrol tanks are tested at 15 g aft and 25 g "
            + "forward "
            + "(33 CFR 183.584)"),
        new("carried", 15, "carried by hand, set down hard", "[practice] a drop onto a floor is more"),
    ];

    public static MountDuty Of(string name) => All.First(duty => duty.Name == name);
}
