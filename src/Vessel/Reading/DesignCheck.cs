using Vessel.Design;
using Vessel.Members;
using Vessel.Ports;
using Vessel.Sites;

namespace Vessel.Reading;

/// <summary>Everything that can make the shape impossible.</summary>
internal static class DesignCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design)
    {
        var sites = PortSites.Of(design);
        return
        [
            .. WallCheck.Find(design),
            .. ShellShapeCheck.Find(design),
            .. HeadCheck.Find(design),
            .. BranchFitCheck.Find(sites),
            .. BranchReachCheck.Find(sites),
            .. ElbowCheck.Find(design),
            .. ShellEndCheck.Find(sites),
            .. SheetCheck.Find(design),
            .. SeamCheck.Find(sites),
            .. HeadPortCheck.Find(sites),
            .. HoleSawCheck.Find(sites),
            .. OverlapCheck.Find(sites),
            .. InsideCollisionCheck.Find(sites),
            .. InsideReachCheck.Find(sites),
            .. PortWindowCheck.Find(sites),
            .. HolePatternCheck.Find(design),
            .. MemberKinds.All.SelectMany(kind => kind.Faults(design, sites)),
            .. LetterCheck.Find(design),
        ];
    }
}
