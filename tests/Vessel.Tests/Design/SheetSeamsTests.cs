using Vessel.Design;
using Vessel.Geometry;
using Xunit;

namespace Vessel.Tests.Design;

public sealed class SheetSeamsTests
{
    public static TheoryData<double, int, int> Rings() =>
        [.. from first in (double[])[0, 1.1, 5.9] from a in (int[])[1, 2, 3, 6] from b in (int[])[1, 2, 4, 9] select (first, a, b)];

    /// <summary>Tried at every twentieth of a degree, no other turn of the second ring keeps it farther off.</summary>
    [Theory]
    [MemberData(nameof(Rings))]
    public void No_other_turn_keeps_seams_farther_apart(double first, int count, int others)
    {
        var ring = new SheetSeams(first, count);
        double Apart(double turn) => ring.Apart(new(turn, others));
        var best = Enumerable.Range(0, 7200).Max(i => Apart(i * Turns.Full / 7200));

        // The best of the grid lies within half its step of the best there is.
        Assert.InRange(Apart(ring.Between(others)), best - 1e-12, best + (Math.PI / 7200));
        Assert.InRange(ring.Between(others), 0, Turns.Full);
    }

    [Theory]
    [MemberData(nameof(Rings))]
    public void An_angle_lies_in_its_sheet_and_half_a_pitch_from_a_seam_at_most(double first, int count, int steps)
    {
        var ring = new SheetSeams(first, count);
        for (var i = 0; i < 36 * steps; i++)
        {
            var angle = Turns.Full * (i + 0.5) / (36 * steps);
            var sheet = ring.Sheet(ring.SheetAt(angle));
            Assert.InRange(Turns.From(angle, sheet.Start), sheet.Start, sheet.End);
            var nearest = ring.Angles.Min(seam => Math.Abs(Turns.Signed(seam - angle)));
            Assert.Equal(nearest, Math.Abs(ring.To(angle)), 1e-12);
            Assert.Contains(ring.Angles, seam => Math.Abs(Turns.Signed(seam - angle - ring.To(angle))) < 1e-12);
        }
    }
}
