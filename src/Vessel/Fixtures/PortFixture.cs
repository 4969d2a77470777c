using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Mockups;
using Vessel.Parts;
using Vessel.Planning;
using Vessel.Sites;

namespace Vessel.Fixtures;

/// <summary>
/// What holds a port for tacking, printed: a sleeve in two halves that stands on its host with feet cut to the footprint, leaves
/// every tack free, stops the tube's free end and hooks over the host's edge.
/// </summary>
/// <param name="Halves">Halves as they stand on the bed, free end down; mm.</param>
/// <param name="HasStop">Whether it ends the tube's way out.</param>
/// <param name="Hook">The edge that it hooks over; null where it has no legs.</param>
/// <param name="Refused">Why there is none; then no halves.</param>
public sealed record PortFixture(PortSite Site, ImmutableArray<Mesh> Halves, bool HasStop, string? Hook, string? Refused)
{
    /// <summary>Between print and metal, mm.</summary>
    public const double Clearance = 0.25;

    public string Id => Slug.Of(Site.Port.Name);

    /// <summary>Paths in the output folder, one a half.</summary>
    public ImmutableArray<string> Files => [.. Halves.Select((_, i) => $"fixtures/{Id}_{(i == 0 ? "a" : "b")}.stl")];

    /// <summary>For the set-up table.</summary>
    public string Remark => Refused is not null
        ? $"no printed fixture: {Refused}"
        : $"printed fixture fixtures/{Id}: halves strapped round it, their joint on its line"
            + (Hook is null ? ", set by measuring" : $", legs hooked over {Hook}")
            + (HasStop ? ", free end against the stop" : ", free end by measuring")
            + "; tack in its windows and take it off before it melts";

    /// <summary>One for each port, in their order; none where the design asks for none.</summary>
    public static ImmutableArray<PortFixture> Of(Plan plan) => plan.Assembly.Design.Fixtures
        ? [.. plan.Assembly.Sites.Select(site => Of(site, plan.Assembly, FixtureTurn.Of(site, plan)))]
        : [];

    private static PortFixture Of(PortSite site, Assembly assembly, FixtureTurn turn)
    {
        // Heights are measured from the lower edge.
        foreach (var hook in new[] { FixtureHook.Lower, FixtureHook.Upper, FixtureHook.None })
        {
            // Over a rim that a head stands on by then nothing hooks.
            if (site.Port.Host == PortHost.Shell
                && ((hook == FixtureHook.Lower && turn.IsBottomOn) || (hook == FixtureHook.Upper && turn.IsTopOn)))
                continue;
            var form = FixtureForm.Of(site, assembly.Design, turn, hook, out var refused);
            if (form is null)
                return new(site, [], false, null, refused);
            if (hook != FixtureHook.None && form.Hook is null)
                continue;
            var bed = assembly.Design.Mockup.Bed;
            ImmutableArray<Mesh> halves = [.. form.Halves().Select(half => OnBed(half, bed))];
            if (halves.All(half => BedFit.Of(half, bed) is not null))
                return new(site, halves, form.HasStop, form.Hook, null);
        }

        return new(site, [], false, null, "it is larger than the printer's bed");
    }

    /// <summary>Turned over, so that its flat end lies on the bed.</summary>
    private static Mesh OnBed(Mesh mesh, Design.BedDesign bed) =>
        BedFit.OnBed(mesh with { Vertices = [.. mesh.Vertices.Select(v => new Vector3(v.X, -v.Y, -v.Z))] }, bed);
}

/// <summary>Which edge of its host a fixture may hook over; of a head there is only one.</summary>
internal enum FixtureHook
{
    Lower,
    Upper,
    None,
}
