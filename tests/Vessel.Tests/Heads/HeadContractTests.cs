using Vessel.Function;
using Vessel.Geometry;
using Vessel.Mockups;
using Vessel.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Heads;

/// <summary>What a head promises to later stages, whatever its kind.</summary>
public sealed class HeadContractTests
{
    public static TheoryData<int> Seeds => RandomDesigns.Seeds;

    /// <summary>Flats, welds and findings name parts by what the spec tells before there are any.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_spec_names_parts_that_the_head_gives_and_places(int seed)
    {
        var vessel = RandomDesigns.Built(seed);
        foreach (var head in vessel.Chamber.Heads)
        {
            var spec = vessel.Design.Head(head.End);
            var parts = head.Parts(vessel.Joints).ToList();
            var ids = parts.ConvertAll(part => part.Id);

            Assert.All(parts, part => Assert.True(part.Centre is { } centre && double.IsFinite(centre.Length), part.Name));
            Assert.All(spec.RimParts(head.End, vessel.Design), id => Assert.Contains(id, ids));
            Assert.All(vessel.Design.Ports.Where(port => port.End == head.End),
                port => Assert.Contains(spec.PartOf(port, vessel.Design), ids));
            Assert.All(
                head.Joints.SelectMany(joint => joint.Between),
                id => Assert.Contains(id, ids.Concat(Names.ShellParts(head.End, vessel.Design))));
        }
    }

    /// <summary>
    /// The outside ends at the shell's outer edge, but for less than is drawn as a line of its own; the inside ends at the bore that it is
    /// asked for. At the pole the wall is no thinner than the least, and but for a step too low to draw no thinner than the head's.
    /// </summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Its_profiles_run_from_the_pole_to_the_shell(int seed)
    {
        const double Least = 1;
        var vessel = RandomDesigns.Built(seed);
        foreach (var head in vessel.Chamber.Heads)
        {
            var rim = vessel.Design.Shell.AtEnd(head.End);
            Assert.Equal(0, head.Outside.Start.U, 1e-9);
            Assert.True((head.Outside.End - new Point2(rim.OuterRadius, 0)).Length < BodyProfiles.Step / 10);
            var bore = Math.Min(rim.InnerRadius, rim.OuterRadius - Least);
            if (head.Inside(bore, Least) is not { } inside)
                continue;
            Assert.Equal(0, inside.Start.U, 1e-9);
            Assert.Equal(bore, inside.End.U, BodyProfiles.Step);
            Assert.True(inside.Start.V - head.Outside.Start.V >= Math.Max(Least, head.Thickness - BodyProfiles.Step) - 1e-9,
                $"{head.Name} of {seed}");
        }
    }
}
