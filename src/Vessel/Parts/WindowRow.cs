using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>A row of windows in a tube.</summary>
/// <param name="Sill">Height of the lower edges above the tube's lower end, mm.</param>
internal sealed record WindowRow(WindowsDesign Design, double Sill)
{
    /// <summary>Outline of one window on a flat, clockwise.</summary>
    /// <param name="ofCut">Girth of the flat over that of the cylinder on which a round window is round.</param>
    /// <param name="ofOutside">Girth of the flat over the outside's, on which widths are measured.</param>
    public Loop2 Outline(Point2 centre, double ofCut, double ofOutside)
    {
        var (half, height) = (Design.Width / 2, Design.Height);
        if (!Design.IsRound)
        {
            var width = Design.Width * ofOutside;
            return RoundedRectangle.Of(centre, width, height, Math.Min(Design.Corner, width / 2));
        }

        return ofCut == 1
            ? Loop2.Circle(centre, half, clockwise: true)
            : new([new GraphCurve2(
                t => centre + new Point2(half * ofCut * Math.Cos(t), -half * Math.Sin(t)),
                t => new(-half * ofCut * Math.Sin(t), -half * Math.Cos(t)),
                Interval.Turn,
                [])]);
    }

    /// <summary>
    /// One window in upright strips, narrow ones at its sides, where corners bend most: on the girth from its middle, with straight ends
    /// between the two; by their shares of the whole, which then is exact.
    /// </summary>
    public IEnumerable<(double From, double To, double Middle, double Share)> Strips()
    {
        const int Count = 24;
        double At(int i) => -Design.Width / 2 * Math.Cos(Math.PI * i / Count);
        double Area(int i) => (At(i + 1) - At(i)) * (Design.HeightAt(At(i)) + Design.HeightAt(At(i + 1))) / 2;
        var whole = Enumerable.Range(0, Count).Sum(Area);
        return Enumerable.Range(0, Count).Select(i => (At(i), At(i + 1), (At(i) + At(i + 1)) / 2, Area(i) / whole));
    }

    /// <summary>Purpose in words, for the table of holes.</summary>
    public static string Purpose(WindowsDesign windows)
    {
        var size = $"{NoteText.Length(windows.Width)} x {NoteText.Length(windows.Height)} mm";
        return windows.IsRound ? $"window, round, {NoteText.Length(windows.Width)} mm"
            : windows.Corner >= Math.Min(windows.Width, windows.Height) / 2 ? $"slot {size}"
            : $"window {size}, corners {NoteText.Length(windows.Corner)} mm";
    }
}
