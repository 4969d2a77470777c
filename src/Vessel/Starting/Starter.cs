using System.Collections.Immutable;
using Vessel.Findings;

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
            from domed in new[] { true, false }
            from height in Heights(wish, body, domed)
            let sizes = new StarterSizes(wish, hose, body, height, domed, inside, 0)
            where Suits(sizes)
            select sizes;
        if (tries.FirstOrDefault() is not { } found)
        {
            return (null, FormattableString.Invariant(
                $"no body of {body:0} mm and up to {wish.RoomHeight:0} mm over all holds {wish.Capacity:0.##} L between drains; give it more room, or drain it more often"));
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

    /// <summary>In steps of 5 mm: slow enough a rise, and at least three hoses wide.</summary>
    private static double BodyFor(double flow, double hose)
    {
        var inner = 1000 * Math.Sqrt(4 * flow / 60_000 / (Math.PI * WantedRise));
        return 5 * Math.Ceiling(Math.Max(inner + 4, 3 * hose) / 5);
    }

    private static IEnumerable<double> Heights(StarterWish wish, double body, bool domed)
    {
        var most = wish.RoomHeight - StarterSizes.StubAbove - (domed ? body / 2 : 0);
        for (var height = 60.0; height <= most; height += Step)
            yield return height;
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
