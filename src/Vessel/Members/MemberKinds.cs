using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Members.Straps;

namespace Vessel.Members;

/// <summary>The kinds of member that there are: the one place outside their folders that names them.</summary>
internal static class MemberKinds
{
    /// <summary>In the order in which their parts are listed.</summary>
    public static ImmutableArray<MemberKind> All { get; } = [new StrapKind()];

    public static ImmutableArray<MemberSpec> Read(Section file, Shop shop) => [.. All.SelectMany(kind => kind.Read(file, shop))];

    public static ImmutableArray<Member> Build(VesselDesign design) => [.. All.SelectMany(kind => kind.Build(design))];
}
