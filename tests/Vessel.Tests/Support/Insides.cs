using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Members.Cups;
using Vessel.Members.InnerTubes;
using Vessel.Members.Screens;

namespace Vessel.Tests.Support;

/// <summary>What stands inside, kind by kind, as tests put it together and look at it.</summary>
internal sealed record InsideDesign(
    ImmutableArray<CupDesign> Caps, ImmutableArray<InnerTubeDesign> Sleeves, ImmutableArray<ScreenDesign> Discs,
    ImmutableArray<PackingDesign> Packings)
{
    public static InsideDesign None { get; } = new([], [], [], []);

    /// <summary>In the order of the kinds.</summary>
    public IEnumerable<MemberSpec> Members => [.. Sleeves, .. Caps, .. Discs, .. Packings];
}

internal static class Insides
{
    extension(VesselDesign design)
    {
        public InsideDesign Inside =>
            new([.. design.All<CupDesign>()], [.. design.All<InnerTubeDesign>()], [.. design.All<ScreenDesign>()],
                [.. design.All<PackingDesign>()]);

        /// <summary>The same vessel with other things inside.</summary>
        public VesselDesign With(InsideDesign inside) => design with
        {
            Members = [.. inside.Members, .. design.Members.Where(member => member is not (InsideSpec or PackingDesign))],
        };
    }
}
