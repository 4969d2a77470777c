using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Sites;

namespace Vessel.Parts;

/// <summary>
/// The sheets of a cone of the shell, rolled; the solid of any cone's. Ports are drilled along their axes after rolling. A segment has its
/// middle over +X.
/// </summary>
internal static class ConePart
{
    /// <summary>The sheets of a conical course of the shell. All its ports are drilled.</summary>
    /// <param name="sites">The course's own.</param>
    public static IEnumerable<Part> Build(ShellCourse course, VesselDesign vessel, ImmutableArray<PortSite> sites, Welds welds)
    {
        var (sheet, cone) = (ConeShape.Of(course), ConeShape.Finished(course));
        ImmutableArray<string> edges =
        [
            $"Outside {NoteText.Length(2 * course.Low)} mm at the lower edge, {NoteText.Length(2 * course.High)} mm at the upper, "
                + $"{NoteText.Length(course.Height)} mm high between level edges.",
            $"Cut square; when rolled and welded dress both edges level: {NoteText.Length(course.Wall * Math.Sin(course.HalfAngle))} mm "
            + "off the outside "
            + "of the narrow one, off the inside of the wide one.",
            .. ShellWords.Rolling(course.Shell.Rolls, sheet.Development.Trim),
        ];
        return SheetPiece.Of(course, vessel).Select(piece => Build(
            course,
            piece with { Seams = welds.Up(course), Ends = ShellWords.Ends(course, vessel, welds), EdgeNotes = edges },
            sheet,
            cone,
            [.. sites.Where(site => piece.Ports.Contains(site.Port))],
            welds));
    }

    private static Part Build(
        ShellCourse course, SheetPiece piece, ConeShape sheet, ConeShape whole, ImmutableArray<PortSite> sites, Welds welds)
    {
        var (cut, cone) = (sheet.OfSegment(piece.Numbers[0]), whole.OfSegment(piece.Numbers[0]));
        var flat = ConeFlat.Of(piece, cut, sites, welds);
        var (low, high) = CurveMeasures.Bounds(flat.Cut.Outer);
        return new(
            piece.Id,
            piece.Name,
            PartKind.Cone,
            course.Shell.Material,
            course.Wall,
            StockPieces.Rectangle(high.U - low.U, high.V - low.V, course.Wall, course.Shell.Material),
            [.. piece.Numbers.Select(number => whole.OfSegment(number).Frame)],
            Solid(cone, sites),
            ((course.Outer.Volume - course.Inner.Volume) / course.Seams.Count) - sites.Sum(DrilledDome.DrilledOut),
            flat,
            [
                .. sites.Select((site, i) =>
                {
                    var at = site.Frame.Origin;
                    return site.HoleInHost(
                        i + 1,
                        flat.From.Flatten(cut.PlaceOf(cut.Frame.ToLocal(at))),
                        null,
                        new(course.OuterAt(at.Z) * Turns.From(Math.Atan2(at.Y, at.X), 0), at.Z - course.Start));
                }),
            ],
            course.Shell.Path)
        {
            Forming = Forming.Rolled,
            Making = Making(piece.Name, !sites.IsEmpty),
            StockNote = ToBeRolled,
        };
    }

    /// <summary>Not the port that closes a tip.</summary>
    public static bool IsDrilled(PortSite site) => site.Port.Host == PortHost.Shell || site.Port.Place.Radius > 0;

    /// <summary>What the cut list says of it.</summary>
    public const string ToBeRolled = "sector, to be rolled to a cone";

    /// <summary>All that the bench does to make a sheet.</summary>
    public static string Making(string name, bool isDrilled) => $"cut {name}, deburr, roll to a "
        + $"cone{(isDrilled ? ", drill its holes" : "")}";

    /// <summary>One sheet in its own frame.</summary>
    public static Solid Solid(ConeShape cone, ImmutableArray<PortSite> drilled)
    {
        var (outer, inner) = (new ConeSurface(cone.Outer), new ConeSurface(cone.Inner));
        Rim Edge(double along) => new(Interval.Turn, [], t => outer.ChartOf(t, along), t => inner.ChartOf(t, along), 1);
        Rim Hole(PortSite site)
        {
            var at = cone.Frame.ToLocal(site.Frame.Origin);
            var around = Math.Atan2(at.Y, at.X);
            Vector3 Local(Footprint on, double phi) => cone.Frame.ToLocal(site.Frame.ToOuter(on.At(site.OpeningRadius, phi)));
            return new(
                Interval.Turn, [], phi => outer.ChartOf(Local(site.Outside, phi), around),
                phi => inner.ChartOf(Local(site.Inside, phi), around));
        }

        var edges = cone.Sheet.Segments == 1 ? [Edge(0), Edge(cone.Length)] : new[] { RoundSegment(cone, outer, inner) };
        return ThickSolid.Of(outer, inner, true, [.. edges, .. drilled.Select(Hole)]);
    }

    /// <summary>
    /// One rim round four sides: narrow edge, a seam, wide edge, the other seam; drawn as welded, without the gaps. All cuts are square
    /// to the sheet, so both faces have the same angles and lengths.
    /// </summary>
    private static Rim RoundSegment(ConeShape cone, ConeSurface outer, ConeSurface inner)
    {
        var (side, length) = (cone.Sheet.Pitch / 2, cone.Length);
        (double Angle, double Along) Place(double t) => t switch
        {
            < 1 => (side * ((2 * t) - 1), 0),
            < 2 => (side, length * (t - 1)),
            < 3 => (side * (5 - (2 * t)), length),
            _ => (-side, length * (4 - t)),
        };
        Point2 On(ConeSurface face, double t)
        {
            var (angle, along) = Place(t);
            return face.ChartOf(angle, along);
        }

        return new(new(0, 4), [1, 2, 3], t => On(outer, t), t => On(inner, t));
    }
}
