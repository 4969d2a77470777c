using Vessel.Design;
using Vessel.Mockups;

namespace Vessel.Export.Summary;

/// <summary>summary.json's <c>mockup</c>; null figures where none is written.</summary>
internal static class MockupJson
{
    public static void Write(Build build, SummaryWriter json)
    {
        var (plan, mockup) = (build.Assembly.Mockup, build.Mockup);
        json.Put("written", mockup is not null);
        json.List("because", plan.Obstacles.Select(obstacle => obstacle.What), json.Value);
        json.Put("inside", plan.Inside is null ? "solid" : "open");
        json.Put("scale", plan.Options.Scale);
        json.Put("least_wall_mm", plan.Options.Wall);
        json.Put("names", plan.Options.Names switch { PrintNames.Raised => "raised", PrintNames.Sunk => "sunk", _ => "none" });
        json.Put("letter_depth_mm", plan.Options.LetterDepth);
        json.List("marks", plan.Marks, mark => json.Object(() =>
        {
            json.Put("text", mark.Text);
            json.Put("on", mark.Chart.Ground.Name);
            json.Put("letter_height_mm", mark.Height);
            json.Put("fields", mark.Outlines.Length);
        }));
        json.List("left_out", plan.MissingMarks, mark => json.Object(() =>
        {
            json.Put("text", mark.Text);
            json.Put("because", mark.Because);
        }));
        json.List("internals", build.MockupInternals, one => json.Object(() =>
        {
            json.Put("name", one.Name);
            json.Put("quantity", one.Quantity);
            json.Put("volume_mm3", one.Mesh.Volume);
            json.Put("fits_bed", BedFit.Of(one.Mesh, plan.Options.Bed) is not null);
        }));
        if (mockup is null)
            return;
        var (mesh, bed) = (mockup.Mesh, plan.Options.Bed);
        json.Object("print", () =>
        {
            json.Put("width_mm", mockup.Size.X);
            json.Put("depth_mm", mockup.Size.Y);
            json.Put("height_mm", mockup.Size.Z);
            json.Put("volume_mm3", mesh.Volume);
            json.Put("area_mm2", mesh.Area);
            json.Put("triangles", mesh.Triangles.Length);
            json.Put("genus", plan.Genus);
            json.Put("chord_mm", mockup.Chord);
            json.Put("mass_g", Plastic.Mass(mesh));
            json.Put("fits_bed", BedFit.Of(mesh, bed) is not null);
            json.Put("turned_deg", (double?)mockup.Turned);
            json.List("bed_mm", new[] { bed.Width, bed.Depth, bed.Height }, json.Value);
            json.List("pieces", mockup.Pieces, piece => json.Object(() =>
            {
                json.Put("name", piece.Name);
                json.Put("pegs", piece.Pegs);
                json.Put("volume_mm3", piece.Mesh.Volume);
                json.Put("fits_bed", BedFit.Of(piece.Mesh, bed) is not null);
                json.Put("warning", piece.IsRough ? "a cut may have left a facet thinner than 0.001 mm: let the slicer repair it, or give another bed or scale" : null);
            }));
            json.Put("stand_diameter_mm", 2 * mockup.Stand?.Radius);
        });
    }
}
