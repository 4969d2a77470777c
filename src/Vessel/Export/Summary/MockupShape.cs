using Vessel.Design;
using Vessel.Fixtures;
using Vessel.Function;
using Vessel.Mockups;

namespace Vessel.Export.Summary;

/// <summary>Layout of summary.json's <c>mockup</c> and <c>fixtures</c>; without <c>print</c> where none is written.</summary>
internal static class MockupShape
{
    public static Shape<Build> Entry { get; } = new RecordShape<Build>("The mock-up for the 3D printer")
        .Flag("written", "Whether there is one", build => build.Mockup is not null)
        .Texts("because", "Reasons why there is none", "In words", build => Plan(build).Obstacles.Select(obstacle => obstacle.What))
        .Choice(
            "inside", "With its room and open bores, or filled", build => Plan(build).Inside is null ? "solid" : "open", "open", "solid")
        .Number("scale", "Of the print to the vessel", build => Plan(build).Options.Scale)
        .Number("least_wall_mm", "Of the print", build => Plan(build).Options.Wall)
        .Choice(
            "names", "Style of ports' names and long seams on it",
            build => Plan(build).Options.Names switch { PrintNames.Raised => "raised", PrintNames.Sunk => "sunk", _ => "none" },
            "none", "raised", "sunk")
        .Number("letter_depth_mm", "That they stand out or in, as printed", build => Plan(build).Options.LetterDepth)
        .List("marks", "Names, seams' lines and their numbers on it", build => Plan(build).Marks, "A mark", mark => mark
            .Text("text", "A port's name or a weld's number", of => of.Text)
            .Text("on", "Name of the part that it stands on", of => of.Chart.Ground.Name)
            .MaybeNumber("letter_height_mm", "Of a capital, as printed; null for the line of a seam", of => of.Height)
            .Count("fields", "Raised or sunk, that it consists of", of => of.Outlines.Length))
        .List("left_out", "Names and numbers for which there is no place", build => Plan(build).MissingMarks, "One that is left out",
            mark => mark
            .Text("text", "A port's name or a weld's number", of => of.Text)
            .Text("because", "Reason", of => of.Because))
        .List("internals", "Printed beside it, where the design asks for them", Internals, "A sleeve, cap or disc", internals => internals
            .Text("name", "As in mockup/internals.3mf", of => of.One.Name)
            .Count("quantity", "Of equal ones", of => of.One.Quantity)
            .Number("volume_mm3", "Of the mesh of one, as printed", of => of.One.Mesh.Volume)
            .Flag("fits_bed", "Upright", of => BedFit.Of(of.One.Mesh, of.Bed) is not null))
        .Optional("print", build => build.Mockup, Print());

    public static Shape<PortFixture> Fixture { get; } = new RecordShape<PortFixture>("A sleeve in two halves")
        .Text("port", "Name", fixture => fixture.Site.Port.Name)
        .Texts("files", "One a half", "In the output folder", fixture => fixture.Files)
        .Flag("has_stop", "Whether it ends the tube's way out", fixture => fixture.HasStop)
        .MaybeText("hook", "The edge that its legs hook over", fixture => fixture.Hook)
        .MaybeText("refused", "Reason why there is none", fixture => fixture.Refused);

    private static MockupPlan Plan(Build build) => build.Assembly.Mockup;

    private static IEnumerable<(MockupInternal One, BedDesign Bed)> Internals(Build build) =>
        build.MockupInternals.Select(one => (one, Plan(build).Options.Bed));

    private static RecordShape<Mockup> Print() => new RecordShape<Mockup>("As it stands on the bed")
        .Number("width_mm", "Along x", print => print.Size.X)
        .Number("depth_mm", "Along y", print => print.Size.Y)
        .Number("height_mm", "Along z", print => print.Size.Z)
        .Number("volume_mm3", "Of the mesh", print => print.Mesh.Volume)
        .Number("area_mm2", "Of the mesh", print => print.Mesh.Area)
        .Count("triangles", "Facets", print => print.Mesh.Triangles.Length)
        .Count("genus", "Handles", print => print.Plan.Genus)
        .Number("chord_mm", "Greatest deviation", print => print.Chord)
        .Likely("mass_g", "Of plastic, likely", print => Plastic.Mass(print.Mesh))
        .Flag("fits_bed", "Upright", print => BedFit.Of(print.Mesh, Bed(print)) is not null)
        .MaybeNumber(
            "turned_deg", "Turn on the bed from the vessel's front, counter-clockwise from above; null where it does not fit",
            print => print.Turned)
        .List(
            "bed_mm", "Of the printer", print => [Bed(print).Width, Bed(print).Depth, Bed(print).Height],
            Items.Number("Width, depth, height"))
        .List("pieces", "Where the whole is larger than the bed", print => print.Pieces.Select(piece => (piece, Bed(print))), "A piece",
            piece => piece
            .Text("name", "As in mockup/pieces.3mf", of => of.piece.Name)
            .Count("pegs", "On the face that looks up or to the side, and sockets in the other", of => of.piece.Pegs)
            .Number("volume_mm3", "Of its mesh", of => of.piece.Mesh.Volume)
            .Flag("fits_bed", "Upright", of => BedFit.Of(of.piece.Mesh, of.Item2) is not null)
            .MaybeText(
                "warning", "Where no place was found at which its cut leaves wide facets alone",
                of => of.piece.IsRough
                    ? "a cut may have left a facet thinner than 0.001 mm: let the slicer repair it, or give another bed or scale"
                    : null))
        .MaybeNumber("stand_diameter_mm", "Of the ring that it stands in; null where there is none", print => 2 * print.Stand?.Radius);

    private static BedDesign Bed(Mockup print) => print.Plan.Options.Bed;
}
