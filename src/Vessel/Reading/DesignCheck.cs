using Vessel.Design;
using Vessel.Members;
using Vessel.Ports;

namespace Vessel.Reading;

/// <summary>Everything that can make the shape impossible.</summary>
internal static class DesignCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design)
    {
        var holes = design.Ports
            .Where(p => p.Host == PortHost.Shell)
            .Select(p => ShellHole.Of(design.Shell, p))
            .OfType<ShellHole>()
            .ToList();
        return
        [
            .. WallCheck.Find(design),
            .. ShellShapeCheck.Find(design),
            .. HeadCheck.Find(design),
            .. BranchFitCheck.Find(design),
            .. BranchReachCheck.Find(design),
            .. ElbowCheck.Find(design),
            .. ShellEndCheck.Find(design, holes),
            .. SheetCheck.Find(design),
            .. SeamCheck.Find(design, holes),
            .. HeadPortCheck.Find(design),
            .. HoleSawCheck.Find(design),
            .. OverlapCheck.Find(design, holes),
            .. InsideCollisionCheck.Find(design),
            .. InsideReachCheck.Find(design),
            .. PortWindowCheck.Find(design),
            .. HolePatternCheck.Find(design),
            .. MemberKinds.All.SelectMany(kind => kind.Faults(design, holes)),
            .. LetterCheck.Find(design),
        ];
    }
}
