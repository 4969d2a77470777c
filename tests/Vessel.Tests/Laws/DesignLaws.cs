using System.Collections.Concurrent;
using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Laws;

/// <summary>The laws of solids and flats, for every part of every design that stands in designs/.</summary>
public sealed class DesignLaws
{
    private static readonly ConcurrentDictionary<string, Assembly> _built = [];

    public static TheoryData<string, string> Parts
    {
        get
        {
            var rows = new TheoryData<string, string>();
            foreach (var design in Repository.Designs.Select(path => Path.GetFileName(path)))
            {
                foreach (var part in Built(design).Parts)
                    rows.Add(design, part.Id);
            }

            return rows;
        }
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void A_part_closes_and_has_the_volume_of_its_formula(string design, string id)
    {
        var part = Part(design, id);

        var mesh = Mesher.Flatten(part.Solid, Accuracy.Solids);

        MeshLaws.Hold(mesh, part.Solid.Genus);
        // Facets lie within the chord of the surface.
        Near.Absolute(part.Volume, mesh.Volume, mesh.Area * Accuracy.Solids.Chord);
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void Metal_that_stays_flat_or_is_rolled_has_area_times_thickness(string design, string id)
    {
        var part = WithoutLeft(design, id);
        var gap = part.Flat?.From is RolledDevelopment rolled ? rolled.Gap * CurveMeasures.Bounds(part.Flat.Cut.Outer).Height : 0;
        if (part.Flat is { Kind: FlatKind.Sheet, From: RolledDevelopment or PlaneDevelopment })
            Near.Relative((CurveMeasures.Area(part.Flat.Cut) + gap) * part.Thickness, part.Volume, 1e-9);
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void Holes_do_not_meet_the_edge_of_their_flat(string design, string id)
    {
        if (Part(design, id).Flat is not { From: RolledDevelopment or WrappedDevelopment } flat)
            return;
        var sheet = CurveMeasures.Bounds(flat.Cut.Outer);

        Assert.All(flat.Cut.Holes.Select(CurveMeasures.Bounds), hole => Assert.True(
            hole.Min.U > sheet.Min.U && hole.Max.U < sheet.Max.U && hole.Min.V > sheet.Min.V && hole.Max.V < sheet.Max.V));
    }

    [Fact]
    public void There_are_parts_of_every_kind() =>
        Assert.Equal(
            Enum.GetValues<PartKind>().Where(kind => kind != PartKind.Member).Select(kind => kind.ToString().ToLowerInvariant())
                .Concat(["sleeve", "skirt", "plate", "disc", "bracket", "strap", "dipstick"]).Order(),
            Repository.Designs.SelectMany(path => Built(Path.GetFileName(path)).Parts).Select(part => part.Word).Distinct().Order());

    /// <summary>With a flat that nothing hangs in until it is rolled.</summary>
    private static Part WithoutLeft(string design, string id)
    {
        if (Part(design, id) is not { Kind: PartKind.Shell } shell || shell.Holes.All(hole => hole.Outline is not null || hole.IsLater))
            return Part(design, id);
        var whole = Built(design).Design;
        return Compiler.Assemble(whole with { Shell = whole.Shell with { LargeHoles = LargeHoles.BeforeRolling } })
            .Parts.Single(part => part.Id == id);
    }

    private static Part Part(string design, string id) => Built(design).Parts.Single(part => part.Id == id);

    private static Assembly Built(string design) => _built.GetOrAdd(design, name =>
        Compiler.Assemble(Compiler.Read(File.ReadAllText(Path.Combine(Repository.Root, "designs", name))).Value!));
}
