using Vessel.Design;
using Vessel.Joints;
using Vessel.Parts;

namespace Vessel.Planning;

/// <summary>What a weld is to the vessel; decides when it is laid and what to heed.</summary>
public enum WeldRole
{
    /// <summary>Up the rolled shell.</summary>
    LongSeam,

    /// <summary>Round the shell, between two of its courses.</summary>
    GirthSeam,

    /// <summary>Between two gores.</summary>
    GoreSeam,

    /// <summary>Round the polar cap of a head of gores.</summary>
    CrownSeam,

    /// <summary>Between a head and the shell.</summary>
    HeadSeam,

    /// <summary>Round a port, on its host's outside.</summary>
    PortSeam,

    /// <summary>Round a port's tube, between two pieces of its elbow.</summary>
    MitreSeam,

    /// <summary>Up the rolled skirt of a cap.</summary>
    SkirtSeam,

    /// <summary>Between a cap's plate and skirt.</summary>
    CapRim,

    /// <summary>What holds a cap: to its head, or to the outlet's tube.</summary>
    CapHold,

    /// <summary>What holds a sleeve to its head.</summary>
    SleeveHold,

    /// <summary>Round a disc, or its tacks.</summary>
    DiscHold,

    /// <summary>Along an ear of a saddle.</summary>
    BracketEar,

    /// <summary>Along a side of a plate that stands on the shell.</summary>
    BracketPlate,
}

/// <summary>Tells a weld's role from the path of the design that asks for it.</summary>
internal static class WeldRoles
{
    public static WeldRole Of(Joint joint, VesselDesign design)
    {
        var path = joint.Path;
        if (WeldNumbers.IsOfShell(path, design.Shell))
            return design.Shell.Reducer?.GirthPaths.Contains(path) == true ? WeldRole.GirthSeam : WeldRole.LongSeam;
        if (path == design.Top.Path || path == design.Bottom.Path)
            return WeldRole.HeadSeam;
        if (design.Ports.Any(port => port.Path == path))
            return WeldRole.PortSeam;
        if (design.Ports.Any(port => port.Elbow is { } elbow && path.StartsWith(elbow.Path + ".", StringComparison.Ordinal)))
            return WeldRole.MitreSeam;
        if (design.Inside.Sleeves.Any(sleeve => WeldNumbers.Fixing(sleeve.Path) == path))
            return WeldRole.SleeveHold;
        if (design.Inside.Discs.Any(disc => WeldNumbers.Fixing(disc.Path) == path))
            return WeldRole.DiscHold;
        if (design.Inside.Caps.FirstOrDefault(cap => path.StartsWith(cap.Path + ".", StringComparison.Ordinal)) is { } cap)
        {
            return path == WeldNumbers.Seam(cap.Path) ? WeldRole.SkirtSeam
                : path == WeldNumbers.Rim(cap.Path) ? WeldRole.CapRim
                : WeldRole.CapHold;
        }

        if (design.Brackets.FirstOrDefault(b => path.StartsWith(b.Path + ".", StringComparison.Ordinal)) is { } bracket)
            return bracket is PlateBracket ? WeldRole.BracketPlate : WeldRole.BracketEar;
        return path.EndsWith(']') ? WeldRole.GoreSeam : WeldRole.CrownSeam;
    }

    /// <summary>Whether it closes the wall that parts the inside from the air.</summary>
    public static bool IsWall(this WeldRole role) => role
        is WeldRole.LongSeam or WeldRole.GirthSeam or WeldRole.GoreSeam or WeldRole.CrownSeam or WeldRole.HeadSeam or WeldRole.PortSeam
            or WeldRole.MitreSeam;
}
