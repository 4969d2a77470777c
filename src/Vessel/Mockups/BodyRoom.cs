using Vessel.Geometry;

namespace Vessel.Mockups;

/// <summary>How near a round bar comes to the vessel's own shell and heads.</summary>
internal static class BodyRoom
{
    private const int Around = 36;

    private const int Along = 12;

    /// <summary>Steps of a search from the nearest of all samples; each halves where none is nearer.</summary>
    private const int Halvings = 24;

    /// <summary>Least distance, mm, zero where it reaches in, and the place of the bar where that is.</summary>
    /// <param name="frame">Frame whose Z lies along the bar.</param>
    /// <remarks>
    /// Found on its side and its near end, where a hose or spanner starts: sampled, then searched round the nearest sample. The
    /// distance to a body changes by no more than one moves, so the search starts in the right hollow.
    /// </remarks>
    public static (double Distance, Vector3 At) Of(Bar bar, Frame3 frame, Profile outside)
    {
        var axis = bar.B - bar.A;
        // From 0 to 1 the near end from its middle to its rim, from 1 to 2 the side.
        Vector3 Place(double along, double angle)
        {
            var (sin, cos) = Math.SinCos(angle);
            return bar.A + (Math.Clamp(along - 1, 0, 1) * axis)
                + (Math.Clamp(along, 0, 1) * bar.Radius * ((cos * frame.X) + (sin * frame.Y)));
        }

        double Off(double along, double angle) => outside.Distance(Place(along, angle));
        var (best, at) = (double.PositiveInfinity, (Along: 0.0, Angle: 0.0));
        void Try(double along, double angle)
        {
            if (Off(along, angle) is var off && off < best)
                (best, at) = (off, (along, angle));
        }

        for (var i = 0; i <= 2 * Along; i++)
        {
            for (var k = 0; k < Around; k++)
                Try((double)i / Along, Turns.Full * k / Around);
        }

        var (step, turn) = (1.0 / Along, Turns.Full / Around);
        for (var i = 0; i < Halvings;)
        {
            var (before, (along, angle)) = (best, at);
            foreach (var (da, dt) in ((double, double)[])[(step, 0), (-step, 0), (0, turn), (0, -turn)])
                Try(Math.Clamp(along + da, 0, 2), angle + dt);
            if (best < before)
                continue;
            (step, turn, i) = (step / 2, turn / 2, i + 1);
        }

        return (Math.Max(0, best), Place(at.Along, at.Angle));
    }
}
