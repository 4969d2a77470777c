using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Export.Summary;

/// <summary>One entry of summary.json's <c>parts</c>.</summary>
internal static class PartJson
{
    public static void Write(BuiltPart built, SummaryWriter json)
    {
        var part = built.Part;
        json.Object(() =>
        {
            json.Put("id", part.Id);
            json.Put("name", part.Name);
            json.Put("kind", part.Kind.ToString().ToLowerInvariant());
            json.Put("material", part.Material.Name);
            json.Put("thickness_mm", part.Thickness);
            json.Put("quantity", part.Quantity);
            json.Put("mass_g", part.Mass);
            json.Put("volume_mm3", part.Volume);
            json.Object("files", () =>
            {
                foreach (var (role, path) in PartFiles.Of(part))
                    json.Put(role, path);
            });
            WritePlacement(part, json);
            if (part.Flat is { } flat)
                json.Object("flat", () => WriteFlat(flat, built, json));
            if (!part.Fields.IsEmpty)
                json.List("patterns", part.Fields, field => WritePattern(field, json));
            json.Object("solid", () => WriteSolid(built, json));
        });
    }

    /// <summary>Rows of a 4 x 4 matrix that takes the part's own coordinates to the vessel's; a list of them for several.</summary>
    private static void WritePlacement(Part part, SummaryWriter json)
    {
        void Rows(Frame3 f) => json.List(
            new[]
            {
                new[] { f.X.X, f.Y.X, f.Z.X, f.Origin.X },
                [f.X.Y, f.Y.Y, f.Z.Y, f.Origin.Y],
                [f.X.Z, f.Y.Z, f.Z.Z, f.Origin.Z],
                [0, 0, 0, 1],
            },
            row => json.List(row, json.Value));
        if (part.Quantity == 1)
            json.Named("placement", () => Rows(part.Placements[0]));
        else
            json.List("placement", part.Placements, Rows);
    }

    private static void WriteFlat(Flat flat, BuiltPart built, SummaryWriter json)
    {
        var figures = built.Figures!;
        json.Put("width_mm", figures.WidthMm);
        json.Put("height_mm", figures.HeightMm);
        json.Put("area_mm2", figures.AreaMm2);
        json.Put("cut_length_mm", figures.CutLengthMm);
        json.Put("pierces", figures.Pierces);
        json.Put("holes", figures.Holes);
        json.Put("left_to_cut", built.Part.Holes.Count(hole => hole.Outline is null));
        json.Put("governed_by", flat.Governing);
        json.Object("development", () => WriteDevelopment(flat, json));
        json.Object("fit", () =>
        {
            json.Put("tolerance_mm", built.Tolerance);
            json.Put("deviation_mm", figures.DeviationMm);
            json.Put("entities", figures.Entities);
        });
    }

    private static void WritePattern(HoleField field, SummaryWriter json) => json.Object(() =>
    {
        var (lattice, within) = (field.Lattice, field.Lattice.Within);
        json.Put("purpose", field.Purpose);
        json.Put("kind", lattice is GridLattice2 grid ? grid.Kind.ToString().ToLowerInvariant() : "rings");
        json.Put("hole_diameter_mm", field.Diameter);
        json.Put("pitch_mm", lattice.Pitch);
        json.Put("margin_mm", within.Margin);
        json.Put("holes", lattice.Count);
        json.Put("open_area_mm2", lattice.Area);
        // Of the whole plate, rim and all: what is left for the flow.
        json.Put("open_share", lattice.Area / (Math.PI * ((within.Outer * within.Outer) - (within.Inner * within.Inner))));
    });

    /// <summary>The origin is where the part's angle seam_deg at height 0 lies on the flat.</summary>
    private static void WriteDevelopment(Flat flat, SummaryWriter json)
    {
        void Trimmed(double each)
        {
            if (each > 0)
                json.Put("trim_mm", each);
        }

        void Origin(double x, double y) => json.List("origin", [x, y], json.Value);
        switch (flat.From)
        {
            case RolledDevelopment rolled:
                json.Put("kind", "rolled");
                json.Put("radius_mm", rolled.NeutralRadius);
                json.Put("k", rolled.K);
                json.Put("seam_deg", Turns.ToDegrees(rolled.Seam));
                json.Put("sheets", rolled.Sheets);
                json.Put("gap_mm", rolled.Gap);
                Trimmed(rolled.Trim);
                Origin(rolled.Trim - (rolled.Gap / 2), 0);
                break;
            case WrappedDevelopment wrapped:
                json.Put("kind", "wrapped");
                json.Put("radius_mm", wrapped.Radius);
                json.Put("seam_deg", Turns.ToDegrees(wrapped.Start));
                if (wrapped.Lap > 0)
                {
                    json.Put("lap_mm", wrapped.Lap);
                    json.Put("lap_area_mm2", flat.LapArea);
                }

                Origin(0, wrapped.Lift);
                break;
            case FoldedDevelopment folded:
                json.Put("kind", "folded");
                WriteBends(folded.Sheet, json);
                Origin(0, 0);
                break;
            case ConeDevelopment cone:
                json.Put("kind", "cone");
                json.Put("half_angle_deg", Turns.ToDegrees(cone.HalfAngle));
                json.Put("seam_deg", Turns.ToDegrees(cone.Seam));
                json.Put("sheets", cone.Segments);
                json.Put("gap_mm", cone.Gap);
                Trimmed(cone.Trim);
                json.Put("side_mm", cone.SeamLength);
                json.Limits("tip_to_edge_mm", cone.Lengths.Start, cone.Lengths.End);
                Origin(0, 0);
                break;
            case GoreDevelopment gore:
                json.Put("kind", "gore");
                json.Put("radius_mm", gore.Radius);
                json.Put("half_angle_deg", Turns.ToDegrees(gore.HalfAngle));
                json.Put("centre_line_mm", gore.Length);
                json.Put("side_mm", gore.SideLength);
                json.Put("stretch", gore.Stretch);
                json.Put("flat_inside_mm", gore.FlatInside);
                json.Put("flat_outside_mm", gore.FlatOutside);
                json.Put("radial_error", gore.RadialError);
                Origin(0, 0);
                break;
            default:
                json.Put("kind", flat.Kind == FlatKind.Blank ? "blank" : "plane");
                Origin(0, 0);
                break;
        }
    }

    /// <summary>Each bend's line by where it lies on x or y; angles are positive towards the viewer.</summary>
    private static void WriteBends(FoldedSheet sheet, SummaryWriter json)
    {
        json.Put("across", sheet.Across.U == 1 ? "x" : "y");
        json.List("bends", sheet.Bends, bend => json.Object(() =>
        {
            json.Put("line_mm", bend.Line);
            json.Put("angle_deg", Turns.ToDegrees(bend.Angle));
            json.Put("inside_radius_mm", bend.InsideRadius);
            json.Put("k", bend.K);
            json.Put("allowance_mm", bend.Allowance(sheet.Thickness));
        }));
    }

    private static void WriteSolid(BuiltPart built, SummaryWriter json)
    {
        json.Put("volume_mm3", built.Mesh.Volume);
        json.Put("area_mm2", built.Mesh.Area);
        json.Put("triangles", built.Mesh.Triangles.Length);
        // The mesher refuses to hand out an open mesh.
        json.Put("closed", true);
        json.Put("genus", built.Part.Solid.Genus);
        json.Put("chord_mm", built.Chord);
        // A gore that is only bent would make a faceted head.
        if (built.Part.Kind is PartKind.Gore or PartKind.Crown)
            json.Put("drawn", "round");
    }
}
