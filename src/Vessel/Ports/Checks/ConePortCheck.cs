using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Ports;

/// <summary>Ports over a seam of a cone, but for the one that closes its tip.</summary>
internal static class ConePortCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design)
    {
        var shown = new Shown(design.Units);
        foreach (var port in design.Ports.Where(p => p.Host != PortHost.Shell && p.Place.Radius > 0))
        {
            if (design.Head(port.Host) is not ConeHead cone || HeadShape.Of(port.Host, design) is not { } shape
                || !double.IsFinite(cone.SeamAngle + cone.RootGap) || HeadFooting.Of(shape, port) is not { } footing)
            {
                continue;
            }

            var wide = Math.Max(port.OuterRadius, ShellHole.HoleRadius(port));
            if (!footing.Takes(wide, ShellHole.HoleRadius(port)))
                continue;
            // Half the gap counts to the seam, where it is widest in angle: at the port's place nearest to the axis.
            var places = footing.Round(footing.Outside, wide)
                .Concat(footing.Round(footing.Inside, ShellHole.HoleRadius(port)))
                .Select(shape.Frame.ToOuter)
                .ToList();
            var half = cone.RootGap / 2 / places.Min(at => double.Hypot(at.X, at.Y));
            var turns = places.ConvertAll(at => Turns.Signed(Math.Atan2(at.Y, at.X) - port.Place.Angle));
            var taken = new Interval(port.Place.Angle + turns.Min() - half, port.Place.Angle + turns.Max() + half);
            if (cone.Seams.Angles.Where(seam => Turns.From(seam, taken.Start) <= taken.End).Select(seam => (double?)seam).FirstOrDefault() is not { } over)
                continue;
            yield return new Fault(FaultCodes.PortOverSeam, $"{port.Path}.at",
                $"'{port.Name}' stands over {(cone.Segments > 1 ? "a" : "the")} seam of the {cone.Path} cone.",
                $"seam at {shown.Angle(Turns.From(over, 0))}",
                $"outside {shown.AngleDown(taken.Start)} to {shown.AngleUp(taken.End)}",
                cone.Segments == 1 ? $"Turn the cone: 'seam_angle: {shown.Angle(Turns.From(port.Place.Angle + Math.PI, 0))}' lies opposite."
                : taken.Length < cone.Pitch
                ? $"Turn the cone: 'seam_angle: {shown.Angle(Turns.From(taken.At(0.5) + (cone.Pitch / 2), 0))}' has it amid a segment."
                : "Use fewer segments, or a smaller port.");
        }
    }
}
