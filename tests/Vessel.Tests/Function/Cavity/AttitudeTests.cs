using FsCheck;
using FsCheck.Fluent;
using Vessel.Function;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Function;

/// <summary>The lowest and the highest place of a cavity in any position.</summary>
public sealed class AttitudeTests
{
    private static readonly Gen<Position> _position = Draw.Between(0.01, 1.5)
        .Zip(Draw.Between(0, 2 * Math.PI), (lean, towards) => new Position(lean, towards));

    public static TheoryData<int> Seeds => [.. RandomDesigns.First(40)];

    /// <summary>Nothing lies below the lowest place, all of it below the highest, and neither can be moved inward.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Between_its_lowest_and_highest_level_lies_all_and_only_what_it_holds(int seed) => RandomDesigns.Hold(seed, vessel =>
    {
        var cavity = vessel.Cavity;
        var attitude = new Attitude(cavity, _position.At(seed));
        var brim = cavity.Rooms.Sum(room => room.VolumeBelow(1e6, Position.Upright));
        // LeaningVolume's share of error; tubes that stand inside are sums over lines, right to a ten-thousandth of their metal.
        var error = (1e-7 * brim) + (1e-4 * cavity.Rooms.Sum(room => room.Tubes.Sum(tube => tube.VolumeBelow(1e6, attitude.Position.Up))));

        Near.Absolute(0, attitude.VolumeBelow(attitude.Depth.Start), error);
        Near.Absolute(brim, attitude.VolumeBelow(attitude.Depth.End), error);
        // A slice a twentieth of the way in holds something: the least is a tip of a circular segment.
        Assert.True(attitude.VolumeBelow(attitude.Depth.At(0.05)) > 1e-6 * brim);
        Assert.True(attitude.VolumeBelow(attitude.Depth.At(0.95)) < brim * (1 - 1e-6));
    });
}
