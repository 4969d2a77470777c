namespace Vessel.Model;

/// <summary>What a weld is to the vessel; decides when it is laid and what to heed.</summary>
public enum WeldRole
{
    /// <summary>Up the rolled shell.</summary>
    LongSeam,

    /// <summary>Round the shell, between two of its courses.</summary>
    GirthSeam,

    /// <summary>Up a rolled cone that closes an end, or between two of its segments.</summary>
    ConeSeam,

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

    /// <summary>Up a rolled part that stands inside.</summary>
    InnerSeam,

    /// <summary>Between the pieces of one thing that stands inside.</summary>
    Within,

    /// <summary>What holds something that stands inside.</summary>
    Hold,

    /// <summary>What holds on the shell what the vessel is bolted up by.</summary>
    Mount,
}

/// <summary>What is asked of a role.</summary>
public static class WeldRoles
{
    /// <summary>Whether it closes the wall that parts the inside from the air.</summary>
    public static bool IsWall(this WeldRole role) => role is WeldRole.PortSeam or WeldRole.MitreSeam || role.IsOfShellOrHead();

    /// <summary>Whether it is a seam of the shell or of an end, rather than of what is attached to them.</summary>
    public static bool IsOfShellOrHead(this WeldRole role) => role is WeldRole.HeadSeam || role.IsOfShell() || role.IsOfHead();

    /// <summary>Whether it is a seam of the shell itself: along it, or round it between two courses.</summary>
    public static bool IsOfShell(this WeldRole role) => role is WeldRole.LongSeam or WeldRole.GirthSeam;

    /// <summary>Whether it is a seam of an end itself, welded before the end goes on the shell.</summary>
    public static bool IsOfHead(this WeldRole role) => role is WeldRole.ConeSeam or WeldRole.GoreSeam or WeldRole.CrownSeam;
}
