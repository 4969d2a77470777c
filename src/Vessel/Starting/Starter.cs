using System.Collections.Immutable;
using Vessel.Findings;
using Vessel.Function;

namespace Vessel.Starting;

/// <summary>Finds a first design for a wish: sizes by rule, each try put through the checks of the tool itself.</summary>
public static class Starter
{
    // Our own rule: half of what is usual in drums without a mist eliminator would still be ten times this, but a
    // small pot has no height for drops to settle in.
    private const double WantedRise = 0.15;

    private const double WantedHoseSpeed = 3;

    private const double Step = 10;

    private static readonly ImmutableArray<double> _hoses = [19, 22, 25, 28, 32, 38, 42, 50, 60, 76];

    // A dome first: all of the oil runs out of it.
    private static readonly ImmutableArray<bool> _domes = [true, false];

    private static readonly ImmutableArray<double> _offsets = [0.6, 0.45, 0.3, 0.15, 0];

    /// <summary>The text of the file; null with the reason when nothing fits the room.</summary>
    public static (string? Text, string? Why) Write(StarterWish wish)
    {
        var hose = wish.Hose ?? HoseFor(wish.BlowBy);
        var body = Math.Min(Math.Floor(wish.RoomDiameter), BodyFor(wish.BlowBy, hose));
        if (body < hose * 1.6)
        {
            return (null, FormattableString.Invariant(
                $"a body of {body:0} mm is too narrow for hoses of {hose:0} mm; it takes at least {hose * 1.6:0} mm, or a smaller hose"));
        }

        var tries =
            from inside in Enum.GetValues<StarterInside>()
            from domed in _domes
            from width in Bodies(body, wish.RoomDiameter)
            let least = Lowest(new StarterSizes(wish, hose, width, 0, domed, inside, 0))
            where least is not null
            select least;
        if (tries.FirstOrDefault() is not { } found)
        {
            return (null, FormattableString.Invariant(
                $"no body of up to {wish.RoomDiameter:0} mm and {wish.RoomHeight:0} mm over all holds {wish.Capacity:0.##} L between ")
                    + "drains; give it more room, or drain it more often");
        }

        var best = _offsets.Select(share => found with { OffsetShare = share }).Where(Suits).MinBy(Doubts) ?? found;
        return (StarterText.Of(best), null);
    }

    private static double HoseFor(double flow)
    {
        // Tubes of 2 mm wall.
        var bore = 1000 * Math.Sqrt(4 * flow / 60_000 / (Math.PI * WantedHoseSpeed));
        return _hoses.FirstOrDefault(h => h - 4 >= bore, _hoses[^1]);
    }

    /// <summary>Width of the body in steps of 5 mm: slow enough a rise, and at least three hoses wide.</summary>
    private static double BodyFor(double flow, double hose)
    {
        var inner = 1000 * Math.Sqrt(4 * flow / 60_000 / (Math.PI * WantedRise));
        return 5 * Math.Ceiling(Math.Max(inner + 4, 3 * hose) / 5);
    }

    /// <summary>Widths of the body from the narrowest that the gas allows to the widest that the room does.</summary>
    private static IEnumerable<double> Bodies(double least, double room)
    {
        for (var body = least; body < Math.Floor(room); body += Step)
            yield return body;
        yield return Math.Floor(room);
    }

    /// <summary>The lowest shell that suits, in steps; null when not even the highest for the room does.</summary>
    private static StarterSizes? Lowest(StarterSizes flat)
    {
        var steps = (int)Math.Floor((flat.Wish.RoomHeight - flat.OverAll) / Step);
        if (steps < 1 || !Suits(At(steps)))
            return null;
        // Higher holds more, so that halving finds the step from which on it suits.
        var (no, yes) = (0, steps);
        while (yes - no > 1)
        {
            var middle = (no + yes) / 2;
            (no, yes) = Suits(At(middle)) ? (no, middle) : (middle, yes);
        }

        return At(yes);

        StarterSizes At(int step) => flat with { Height = step * Step };
    }

    private static bool Suits(StarterSizes sizes) =>
        sizes.OverAll <= sizes.Wish.RoomHeight
        && Built(sizes) is { } assembly
        && assembly.Capacity.Usable >= sizes.Wish.Capacity * 1e6
        && Compiler.Assess(assembly).All(f => f.Severity != Severity.Error);

    private static int Doubts(StarterSizes sizes) =>
        Compiler.Assess(Built(sizes)!).Count(f => f.Severity == Severity.Warning);

    private static Assembly? Built(StarterSizes sizes) =>
        Compiler.Read(StarterText.Of(sizes)).Value is { } design ? Compiler.Assemble(design) : null;
}
