using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Ports;
using Vessel.Sites;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Ports;

/// <summary>How the ends of set-on tubes lie on the shell, told in the vessel's own frame.</summary>
public sealed class CopeLaws
{
    /// <summary>As for the flats.</summary>
    private const double Rounding = 1e-7;

    public static TheoryData<int> Seeds => RandomDesigns.Seeds;

    private static IEnumerable<(PortSite Site, Part Part)> SetOn(Assembly vessel, Func<EndCut, bool> cut) => vessel.Sites
        .Where(site => site is { Over: null, Port: { Host: PortHost.Shell, Joint: PortJoint.SetOn } port } && cut(port.Cut))
        .Select(site => (site, vessel.Parts.Single(part => part.Id == Slug.Of(site.Port.Name))));

    private static IEnumerable<double> Round() => Enumerable.Range(0, 144).Select(i => Turns.Full * i / 144);

    /// <summary>Distance outside the shell of a point of the tube.</summary>
    private static double Outside(Assembly vessel, PortSite site, double r, double phi, double along)
    {
        var at = site.Frame.ToOuter(new(r * Math.Cos(phi), r * Math.Sin(phi), along));
        return Math.Sqrt((at.X * at.X) + (at.Y * at.Y)) - vessel.Design.Shell.OuterRadius;
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_ground_end_meets_the_shell_along_both_edges(int seed) => RandomDesigns.Hold(seed, vessel =>
    {
        foreach (var (site, part) in SetOn(vessel, cut => cut != EndCut.Square))
        {
            var (cope, end) = (part.Flat!.Cut.Outer.Edges[0], TubeEnd.Of(site));
            foreach (var t in Round())
            {
                var place = part.Flat.From.Raise(cope.At(t));
                Near.Absolute(0, Outside(vessel, site, site.Port.OuterRadius, place.U, place.V), Rounding);
                Near.Absolute(0, Outside(vessel, site, site.Port.BoreRadius, t, end.Inner(t)), Rounding);
            }
        }
    });

    /// <summary>Nothing of a flush end's face stands in the room or stays in the hole.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_flush_end_lies_on_the_inside_of_the_shell(int seed) => RandomDesigns.Hold(seed, vessel =>
    {
        foreach (var site in vessel.Sites.Where(site => site is { Over: null, Port: { Host: PortHost.Shell, IsFlush: true } }))
        {
            var part = vessel.Parts.Single(part => part.Id == Slug.Of(site.Port.Name));
            var (cope, end, wall) = (part.Flat!.Cut.Outer.Edges[0], TubeEnd.Of(site), vessel.Design.Shell.Wall);
            foreach (var t in Round())
            {
                var place = part.Flat.From.Raise(cope.At(t));
                Near.Absolute(-wall, Outside(vessel, site, site.Port.OuterRadius, place.U, place.V), Rounding);
                var middle = (site.Port.OuterRadius + site.Port.BoreRadius) / 2;
                Near.Absolute(-wall, Outside(vessel, site, middle, t, end.Through!(middle, t)), Rounding);
                Near.Absolute(-wall, Outside(vessel, site, site.Port.BoreRadius, t, end.Inner(t)), Rounding);
            }
        }
    });

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_square_end_touches_the_shell_all_round_and_fouls_it_nowhere(int seed) => RandomDesigns.Hold(seed, vessel =>
    {
        foreach (var (site, part) in SetOn(vessel, cut => cut == EndCut.Square))
        {
            var cope = part.Flat!.Cut.Outer.Edges[0];
            foreach (var t in Round())
            {
                var place = part.Flat.From.Raise(cope.At(t));
                // The distance from a line is convex along a line.
                var least = Convex.Least(
                    r => Outside(vessel, site, r, place.U, place.V), site.Port.BoreRadius, site.Port.OuterRadius);
                Near.Absolute(0, least, Rounding);
            }
        }
    });

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_slope_of_a_cope_is_that_of_its_points(int seed) => RandomDesigns.Hold(seed, vessel =>
    {
        foreach (var (_, part) in SetOn(vessel, _ => true))
        {
            var cope = part.Flat!.Cut.Outer.Edges[0];
            foreach (var t in Round().Select(t => t + 0.01))
            {
                const double h = 1e-5;
                var quotient = (1 / (2 * h)) * (cope.At(t + h) - cope.At(t - h));
                // The governing radius may pass a face within the step: the bend jumps there, the slope does not.
                Assert.True((cope.Slope(t) - quotient).Length < 5e-3 * (1 + quotient.Length), $"at {t}");
            }
        }
    });
}
