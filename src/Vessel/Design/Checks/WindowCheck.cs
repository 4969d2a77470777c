using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>Whether windows find room round a skirt or sleeve.</summary>
internal static class WindowCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design)
    {
        var shown = new Shown(design.Units);
        return
        [
            .. design.Inside.Caps.Where(c => c.Windows is not null).SelectMany(c =>
                Find(shown, c.Windows!, c.Name, c.OutsideDiameter, c.Wall, c.Skirt).Concat(OverSeam(shown, c, c.Windows!))),
            .. design.Inside.Sleeves.Where(s => s.Windows is not null).SelectMany(s =>
                Find(shown, s.Windows!, s.Name, s.OutsideDiameter, s.Wall, s.Length)),
        ];
    }

    private static IEnumerable<Fault> Find(
        Shown shown, WindowsDesign windows, string name, double outside, double wall, double height)
    {
        var widest = (Math.PI * outside / windows.Count) - wall;
        if (windows.Width > widest + Ring.Hair)
        {
            yield return new Fault(FaultCodes.WindowsOverlap, $"{windows.Path}.width",
                $"The windows of '{name}' leave less than one wall of metal between them.", shown.Length(windows.Width),
                $"at most {shown.Length(widest)}",
                widest > 0 ? $"Use a width of at most {shown.Length(widest)}, or fewer windows." : "Use fewer windows.");
        }

        if (windows.Up < wall - Ring.Hair)
        {
            yield return NearEnd("up", "below", windows.Up, $"at least {shown.Length(wall)}");
        }
        else if (windows.Up + windows.Height > height - wall + Ring.Hair)
        {
            yield return NearEnd("height", "above", windows.Up + windows.Height,
                $"'up' and height together at most {shown.Length(height - wall)}");
        }

        var half = Math.Min(windows.Width, windows.Height) / 2;
        if (windows.Corner > half + Ring.Hair)
        {
            yield return new Fault(FaultCodes.WindowCornerTooLarge, $"{windows.Path}.corner",
                $"The corners of the windows of '{name}' are larger than half of their smaller side.",
                shown.Length(windows.Corner), $"at most {shown.Length(half)}", "Make the corner's radius smaller.");
        }

        Fault NearEnd(string key, string where, double given, string limit) => new(FaultCodes.WindowNearEnd,
            $"{windows.Path}.{key}", $"Less than one wall of metal is left {where} the windows of '{name}'.",
            shown.Length(given), limit, "Make the windows lower, or move them.");
    }

    private static IEnumerable<Fault> OverSeam(Shown shown, CapDesign cap, WindowsDesign windows)
    {
        var step = Turns.Full / windows.Count;
        // From the seam to the middle of the nearest window.
        var off = Math.Abs(Math.IEEERemainder(cap.SeamAngle - windows.Angle, step));
        var half = windows.Width / cap.OutsideDiameter;
        if (cap.MadeFrom == StockForm.Sheet && off <= half && half < step / 2)
        {
            yield return new Fault(FaultCodes.WindowOverSeam, $"{cap.Path}.seam_angle",
                $"A window of '{cap.Name}' stands over the seam of its skirt.", shown.Angle(cap.SeamAngle),
                $"more than {shown.Angle(half)} from the middle of a window",
                $"Turn the seam: 'seam_angle: {shown.Angle(Turns.From(windows.Angle + (step / 2), 0))}' is clear of every window.");
        }
    }
}
