using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>The blank that a rolled shell is cut from, or the wrap that a tube is marked from.</summary>
internal static class ShellFlat
{
    /// <summary>Neutral line in the middle of the wall: holds once the radius is more than about five walls.</summary>
    private const double MeanK = 0.5;

    private const double LetterHeight = 5;

    public static Flat Of(VesselDesign vessel, ImmutableArray<ShellOpening> openings, WeldNumbers welds)
    {
        var shell = vessel.Shell;
        var rolled = shell.MadeFrom == StockForm.Sheet;
        var (development, radius, width) = rolled ? Rolled(shell) : Wrapped(shell);
        var cut = new Region2(
            Loop2.Polygon(new(0, 0), new(width, 0), new(width, shell.Height), new(0, shell.Height)),
            [.. openings.Select(opening => opening.OnFlat(development, radius))]);
        var marks = new FlatMarks(width, shell.Height, cut.Holes);
        for (var quarter = 0; quarter < 4; quarter++)
        {
            var x = development.Flatten(new(quarter * Math.PI / 2, 0)).U;
            marks.AddVertical(x, $"{90 * quarter}", LetterHeight);
        }

        for (var i = 0; i < openings.Length; i++)
        {
            var port = openings[i].Site.Port;
            marks.AddCross(development.Flatten(openings[i].AxisPlace));
            marks.AddName($"{port.Name} {welds[port.Path]}", cut.Holes[i], LetterHeight);
        }

        marks.AddTitle(Title(vessel, welds), LetterHeight);
        return new(
            rolled ? FlatKind.Sheet : FlatKind.Wrap,
            cut,
            marks.ToImmutable(),
            [],
            Notes(vessel),
            development,
            rolled ? "mean diameter" : "outside diameter");
    }

    private static (Development Development, double Radius, double Width) Rolled(ShellDesign shell)
    {
        var rolled = new RolledDevelopment(shell.OuterRadius, shell.Wall, MeanK, shell.SeamAngle, shell.RootGap);
        return (rolled, rolled.NeutralRadius, rolled.Width);
    }

    private static (Development Development, double Radius, double Width) Wrapped(ShellDesign shell) =>
        (new WrappedDevelopment(shell.OuterRadius, shell.SeamAngle, 0), shell.OuterRadius, Turns.Full * shell.OuterRadius);

    private static string Title(VesselDesign vessel, WeldNumbers welds)
    {
        var ends = $"top {welds[vessel.Top.Path]}  bottom {welds[vessel.Bottom.Path]}";
        return vessel.Shell.MadeFrom == StockForm.Sheet
            ? $"shell  up ^  seam {welds[WeldNumbers.LongSeam]}  {ends}"
            : $"shell  up ^  {ends}";
    }

    private static ImmutableArray<string> Notes(VesselDesign vessel)
    {
        var shell = vessel.Shell;
        var size = $"outside {Shown.Length(shell.OutsideDiameter)} mm, wall {Shown.Length(shell.Wall)} mm, height {Shown.Length(shell.Height)} mm";
        return shell.MadeFrom == StockForm.Sheet
            ?
            [
                $"SHELL, {shell.Material.Name}, {size}",
                "OUTSIDE FACE UP. x runs with increasing angle (counter-clockwise seen from above), y up. Millimetres.",
                $"Roll about the vertical, marks outside. Long seam at {Shown.Degrees(shell.SeamAngle)} deg, root gap {Shown.Length(shell.RootGap)} mm.",
                "Blank on the mean diameter; rolls leave flat ends: pre-bend or trim.",
            ]
            :
            [
                $"SHELL FROM TUBE, {shell.Material.Name}, {size}",
                "WRAP FOR THE OUTSIDE OF THE TUBE, OUTSIDE FACE UP. x runs with increasing angle, y up. Millimetres. Do not cut from sheet.",
                $"Left edge on {Shown.Degrees(shell.SeamAngle)} deg. Holes are drilled along each port's axis.",
            ];
    }
}
