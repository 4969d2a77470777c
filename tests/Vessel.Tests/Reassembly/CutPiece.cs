using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Vessel.Export.Drawing;
using Vessel.Export.Dxf;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Tests.Support;

namespace Vessel.Tests.Reassembly;

/// <summary>
/// A part as it comes from the cutter: its outlines read back from the written DXF, and bent or rolled with the stated
/// sizes by formulas that stand here, not by those that made the flat.
/// </summary>
/// <param name="Loops">Points along each closed CUT line, mm on the flat; the outline is the widest.</param>
/// <param name="Deviation">As the tool reports it, mm.</param>
internal sealed record CutPiece(Part Part, ImmutableArray<ImmutableArray<Point2>> Loops, double Deviation)
{
    private const double Tolerance = 0.01;
    private const int PointsPerSegment = 9;

    /// <summary>Vertices are written to 1e-6 mm; the rest is room for sums of lengths below 1e4 mm.</summary>
    private const double Written = 0.002;

    /// <summary>How far an edge may be off: what is reported, and what the writing rounds.</summary>
    public double Allowed => Deviation + Written;

    public ImmutableArray<Point2> Outline => Loops.MaxBy(Width);

    public IEnumerable<ImmutableArray<Point2>> Holes => Loops.Where(loop => loop != Outline);

    public static CutPiece Of(Part part)
    {
        // Fields of equal circles bear no joint and take long to write.
        var flat = part.Flat! with { Cut = part.Flat!.Cut with { Fields = [] } };
        var fitted = FittedFlat.Of(flat, Tolerance);
        using var file = new MemoryStream();
        FlatDxf.Write(fitted, new(DxfRelease.R2000, Tolerance) { CutOnly = true }, file);
        return new(part, [.. Read(Encoding.ASCII.GetString(file.ToArray()))], fitted.Deviation);
    }

    /// <summary>A point of the flat in the vessel, so far below the face that is seen on the flat.</summary>
    public Vector3 InVessel(Point2 at, double depth, int piece = 0) => Part.Placements[piece].ToOuter(Finished(at, depth));

    public IEnumerable<Vector3> InVessel(IEnumerable<Point2> points, double depth) => points.Select(at => InVessel(at, depth));

    private static double Width(ImmutableArray<Point2> loop) => loop.Max(p => p.U) - loop.Min(p => p.U);

    private Vector3 Finished(Point2 at, double depth) => Part.Flat!.From switch
    {
        RolledDevelopment rolled => Round(
            rolled.Seam + ((at.U + (rolled.Gap / 2)) / (rolled.OuterRadius - (rolled.Wall / 2))), rolled.OuterRadius - depth, at.V),
        WrappedDevelopment wrap => Round(wrap.Start + (at.U / wrap.Radius), wrap.Radius - depth, at.V - wrap.Lift),
        ConeDevelopment cone => Conical(cone, at, depth),
        FoldedDevelopment folded when Part.Word == "strap" => Walked(folded.Sheet, at, depth),
        FoldedDevelopment folded => Folded(folded.Sheet, at, depth),
        PlaneDevelopment => new(at.U, at.V, Part.Thickness - depth),
        var other => throw new NotSupportedException($"{Part.Name}: {other}"),
    };

    private static Vector3 Round(double angle, double radius, double height) =>
        new(radius * Math.Cos(angle), radius * Math.Sin(angle), height);

    /// <summary>
    /// The flat's origin is the tip. Along the line a place keeps its distance from it; the middle of the wall's edge lies half
    /// a wall square to the line from where the inside ends, at the part's z = 0: of a head at the wide edge,
    /// of the shell's cone at the narrow one.
    /// </summary>
    private Vector3 Conical(ConeDevelopment cone, Point2 at, double depth)
    {
        var (sin, cos) = Math.SinCos(cone.HalfAngle);
        var (x, y) = cone.TipUp ? (-at.U, -at.V) : (at.U, at.V);
        var (from, outward) = (Math.Sqrt((x * x) + (y * y)), (Part.Thickness / 2) - depth);
        var tip = -(Part.Thickness / 2 * sin) - ((Part.Path == "shell" ? cone.Lengths.Start : cone.Lengths.End) * cos);
        return Round(cone.Seam + (Math.PI / cone.Segments) + (Math.Atan2(x, y) / sin), (from * sin) + (outward * cos),
            tip + (from * cos) - (outward * sin));
    }

    /// <summary>
    /// Two quarter turns away from the viewer: beyond a bend the sheet runs straight down, one outside radius from where the
    /// bend began and one outside radius lower.
    /// </summary>
    private static Vector3 Folded(FoldedSheet sheet, Point2 at, double depth)
    {
        var (along, beside) = (at.Dot(sheet.Across), at.Dot(sheet.Across.Turned));
        var outside = sheet.Bends[0].InsideRadius + sheet.Thickness;
        var half = Math.PI / 4 * (sheet.Bends[0].InsideRadius + (sheet.Bends[0].K * sheet.Thickness));
        var (left, right) = (sheet.Bends[0].Line, sheet.Bends[1].Line);
        var (section, level) = along < left - half ? (left + half - outside + depth, along - (left - half) - outside)
            : along > right + half ? (right - half + outside - depth, right + half - along - outside)
            : along > left + half && along < right - half ? (along, -depth)
            : throw new NotSupportedException("on the bend");
        var inPlane = (section * sheet.Across) + (beside * sheet.Across.Turned);
        return new(inPlane.U, inPlane.V, level);
    }

    /// <summary>
    /// Half a strap, its band the bend of greatest radius: from where that begins, at x of the flat and level there, the strip is walked
    /// either way, bend by bend.
    /// </summary>
    private static Vector3 Walked(FoldedSheet sheet, Point2 at, double depth)
    {
        double Half(Bend bend) => Math.Abs(bend.Angle) / 2 * (bend.InsideRadius + (bend.K * sheet.Thickness));
        var band = sheet.Bends.Index().MaxBy(bend => bend.Item.InsideRadius);
        var start = band.Item.Line - Half(band.Item);
        var way = at.U >= start ? 1 : -1;
        var left = Math.Abs(at.U - start);
        var (place, heading, walked) = (default(Point2), 0.0, 0.0);
        foreach (var bend in way > 0 ? sheet.Bends.Skip(band.Index) : sheet.Bends.Take(band.Index).Reverse())
        {
            var (from, length) = ((way * (bend.Line - start)) - Half(bend), 2 * Half(bend));
            if (left <= from)
                break;
            var turn = bend.Angle * Math.Min(1, (left - from) / length);
            var radius = Math.Sign(bend.Angle) * (bend.InsideRadius + (bend.Angle > 0 ? 0 : sheet.Thickness));
            place += (from - walked) * Point2.Polar(1, heading);
            place += radius * (Point2.Polar(1, heading).Turned - Point2.Polar(1, heading + turn).Turned);
            (heading, walked) = (heading + turn, Math.Min(left, from + length));
        }

        place += ((left - walked) * Point2.Polar(1, heading)) - (depth * Point2.Polar(1, heading).Turned);
        return new(start + (way * place.U), at.V, place.V);
    }

    private static IEnumerable<ImmutableArray<Point2>> Read(string file)
    {
        var pairs = file.Split("\r\n")[..^1].Chunk(2).Select(pair => new DxfTag(int.Parse(pair[0], CultureInfo.InvariantCulture), pair[1]));
        foreach (var entity in DxfNode.Split(pairs.SkipWhile(tag => tag.Value != "ENTITIES").Skip(1)))
        {
            if (entity.Type == "CIRCLE")
            {
                yield return [.. Enumerable.Range(0, 72).Select(i =>
                    entity.Point(10) + Point2.Polar(entity.Real(40), i * Turns.Full / 72))];
            }
            else if (entity.Type == "LWPOLYLINE")
            {
                yield return [.. BulgeChain.Points(Vertices(entity), PointsPerSegment)];
            }
        }
    }

    private static List<Bulge> Vertices(DxfNode node)
    {
        var vertices = new List<Bulge>();
        foreach (var tag in node.Tags)
        {
            if (tag.Code == 10)
                vertices.Add(new(new(tag.AsReal(), 0), 0));
            else if (tag.Code == 20)
                vertices[^1] = new(new(vertices[^1].At.U, tag.AsReal()), 0);
            else if (tag.Code == 42)
                vertices[^1] = vertices[^1] with { Value = tag.AsReal() };
        }

        return vertices;
    }
}
