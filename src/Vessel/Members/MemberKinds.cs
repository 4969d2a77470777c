using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Members.Brackets;
using Vessel.Members.Cups;
using Vessel.Members.Dipsticks;
using Vessel.Members.DividerPlates;
using Vessel.Members.InnerTubes;
using Vessel.Members.Packings;
using Vessel.Members.Plates;
using Vessel.Members.Saddles;
using Vessel.Members.Screens;
using Vessel.Members.Straps;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Members;

/// <summary>The kinds of member that there are: the one place outside their folders that names them.</summary>
internal static class MemberKinds
{
    /// <summary>Kinds in the order in which their parts are listed; one may name members of those before it.</summary>
    public static ImmutableArray<MemberKind> All { get; } =
    [
        new DipstickKind(),
        new InnerTubeKind(),
        new CupKind(),
        new ScreenKind(),
        new DividerPlateKind(),
        new PackingKind(),
        new BracketKind([new SaddleType(), new PlateType()], "A saddle with bent ears, or a flat plate that stands on the shell"),
        new StrapKind(),
    ];

    /// <summary>The draft with its members.</summary>
    public static VesselDesign Read(Section file, VesselDesign draft) => All.Aggregate(
        draft, (design, kind) => design with { Members = [.. design.Members, .. kind.Read(kind.Sections(file), file, design)] });

    public static ImmutableArray<Member> Build(VesselDesign design, ImmutableArray<PortSite> sites) =>
        [.. All.SelectMany(kind => kind.Build(design, sites))];
}
