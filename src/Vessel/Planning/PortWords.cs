using System.Globalization;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Planning;

/// <summary>Where a port ends, in words for the bench.</summary>
internal static class PortWords
{
    /// <param name="format">Format of a length in mm: <c>0.0</c>.</param>
    public static string FreeEnd(PortSite site, string format = "0.0")
    {
        string Of(double mm) => mm.ToString(format, CultureInfo.InvariantCulture);
        var port = site.Port;
        if (port.Elbow is not { } elbow)
            return $"free end {Of(port.Length)} mm out";
        var at = site.FreeEnd.Origin;
        return $"elbow of {NoteText.Degrees(elbow.Angle)} deg turned to {NoteText.Degrees(Turns.From(elbow.Direction, 0))} deg round the "
            + "port "
            + $"(counter-clockwise from outside, 0 {(port.Host == Design.PortHost.Shell ? "down" : "away from the vessel's axis")}); "
            + "middle of the free end "
            + $"at height {Of(at.Z)} mm, {Of(Math.Sqrt((at.X * at.X) + (at.Y * at.Y)))} mm from the vessel's axis, clock angle "
            + $"{NoteText.Degrees(Turns.From(Math.Atan2(at.Y, at.X), 0))} deg";
    }
}
