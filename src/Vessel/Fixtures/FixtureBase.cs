using Vessel.Design;
using Vessel.Geometry;
using Vessel.Mockups;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Fixtures;

/// <summary>
/// What a fixture stands on: the outside of a port's host, told in the port's own frame, and the edge that it may hook over.
/// </summary>
/// <param name="Edge">Name of the edge in words; null where the host has none to hook over.</param>
/// <param name="IsLow">Whether that is the lower edge of a shell, not the upper.</param>
/// <param name="HookDepth">Depth from the outside, less than the host's wall, mm.</param>
internal sealed record FixtureBase(PortSite Site, VesselDesign Vessel, string? Edge, bool IsLow, double HookDepth)
{
    /// <summary>Share of the host's radius beyond which the surface falls away too steeply to stand on.</summary>
    private const double Flank = 0.95;

    /// <summary>Least share of the normal along the axis: a foot never stands where it is less.</summary>
    private const double LeastSlope = 0.2;

    public static FixtureBase Of(PortSite site, VesselDesign vessel, bool isLow) => new(
        site,
        vessel,
        site.Port.Host == PortHost.Shell ? EdgeOf(vessel.Shell, site.Port.Place.Height, isLow)
            : vessel.Head(site.Port).Plate is not null ? $"the {Names.Of(site.Port.Host)}'s rim"
            : null,
        isLow,
        0.8 * site.HostWall);

    /// <summary>Between the host's edge and a hook, along X: a hook goes down along the axis, which may lean over the edge.</summary>
    public double HookPlay =>
        PortFixture.Clearance + (IsShell ? (HookDepth + PortFixture.Clearance) * Math.Abs(Site.Frame.Z.Z / Site.Frame.X.Z) : 0);

    /// <summary>Legs run straight down or up a cylinder to an end of the shell.</summary>
    private static string? EdgeOf(ShellDesign shell, double height, bool isLow)
    {
        var course = shell.CourseAt(height);
        return !course.IsCone && (isLow ? course.Start == 0 : course.End == shell.Height)
            ? $"the shell's {(isLow ? "lower" : "upper")} edge"
            : null;
    }

    public bool IsShell => Site.Port.Host == PortHost.Shell;

    private ShellCourse Course => Vessel.Shell.CourseAt(Site.Port.Place.Height);

    /// <summary>Signs of the frame's X along which legs go to an edge.</summary>
    public int[] Ways => Edge is null ? [] : !IsShell ? [1, -1] : IsLow ? [1] : [-1];

    /// <summary>Along the port's axis to the host's outside; beyond a flank as at it.</summary>
    public double Level(Point2 at) => Site.Outside.Reach(at.Length, at.Angle);

    /// <summary>What the clearance square to the host is along the axis.</summary>
    public double Lift(Point2 at) =>
        PortFixture.Clearance / (Site.Outside.Normal(at.Length, at.Angle).Z is var along and > LeastSlope ? along : LeastSlope);

    /// <summary>Whether there is host to stand on.</summary>
    public bool Carries(Point2 at) => IsShell
        ? Math.Abs(Site.Port.Place.Offset + at.V) <= Flank * Course.OuterAt(Site.Port.Place.Height)
            && (!Course.IsCone || Site.Outside.Takes(at.Length / Flank)) && Beyond(at, 1) <= 0 && Beyond(at, -1) <= 0
        : Edge is null ? Site.Outside.Takes(at.Length / Flank) : Beyond(at, 1) <= 0;

    /// <summary>How far beyond the edge a place lies, mm; negative on the host.</summary>
    public double Beyond(Point2 at, int way)
    {
        var there = Site.Frame.ToOuter(new(at.U, at.V, Level(at)));
        if (IsShell)
            return way > 0 ? Course.Start - there.Z : there.Z - Course.End;
        return double.Hypot(there.X, there.Y) - (Vessel.Head(Site.Port).Plate!.OutsideDiameter / 2);
    }
}
