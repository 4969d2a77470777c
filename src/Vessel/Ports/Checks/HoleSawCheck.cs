using Vessel.Design;
using Vessel.Parts;
using Vessel.Sites;
using Vessel.Stock;

namespace Vessel.Ports;

/// <summary>Whether a hole saw cuts the end of a port that asks for one: it must have the diameter of a plain cylinder.</summary>
internal static class HoleSawCheck
{
    public static IEnumerable<Fault> Find(PortSites sites) => sites.All.Where(stand => stand.Port.Cut == EndCut.HoleSaw)
        .Select(stand => Find(new UnitFormat(sites.Design.Units), sites.Design.Shell, stand)).OfType<Fault>();

    private static Fault? Find(UnitFormat shown, ShellDesign shell, PortStand stand)
    {
        var (port, course) = (stand.Port, shell.CourseAt(stand.Port.Place.Height));
        if (port.Host != PortHost.Shell)
            return None("stands in a head");
        if (course.IsCone)
            return None("stands in a cone");
        if (stand.Site?.Over is { } end)
            return None($"stands over the seam of the {Names.Of(end)}");
        var size = 2 * course.Low;
        // Written so that a NaN does not pass as a size.
        return !(size < HoleSaws.Least || size > HoleSaws.Most) ? null
            : new(FaultCodes.HoleSawNotMade, $"{port.Path}.cut",
                $"The end of '{port.Name}' would take a hole saw as wide as the shell, and none is made of that size.", shown.Length(size),
                $"{shown.Length(HoleSaws.Least)} to {shown.Length(HoleSaws.Most)}", "Use 'cut: ground' or 'cut: square'.");

        Fault None(string where) => new(FaultCodes.KeyDoesNotApply, $"{port.Path}.cut",
            $"'{port.Name}' {where}: a hole saw of the shell's diameter cuts no end for it.", null, null,
            "Use 'cut: ground' or 'cut: square'.");
    }
}
