using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Export.Dxf;
using Vessel.Export.Paper;
using Vessel.Export.Pictures;
using Vessel.Export.Report;
using Vessel.Export.Solids;
using Vessel.Export.Stl;
using Vessel.Export.Summary;
using Vessel.Function;
using Vessel.Planning;

namespace Vessel.Export;

/// <summary>All files of a build, in the order in which they are written; nothing is written before it is asked for.</summary>
public static class VesselFiles
{
    public static IEnumerable<OutputFile> Of(Build build) => Of(build, new StillPictures(build));

    private static IEnumerable<OutputFile> Of(Build build, StillPictures pictures)
    {
        // What decides which files there are, side by side.
        Parallel.Invoke(() => _ = build.Mockup, () => _ = build.Plan.Sheets);
        return Listed(build, pictures);
    }

    private static IEnumerable<OutputFile> Listed(Build build, StillPictures pictures) =>
    [
        .. build.Parts.SelectMany(part => OfPart(part, build)),
        new("solids/assembly.stl", to => StlWriter.Write(
            [.. build.Parts.SelectMany(part => part.Part.Placements.Select(frame => (part.Mesh, frame)))],
            build.Assembly.Design.Name,
            to)),
        new("solids/assembly.3mf", to => ThreeMfWriter.Write(PlacedSolid.Of(build), build.Assembly.Design.Name, to)),
        new("solids/assembly.glb", to => GlbWriter.Write(PlacedSolid.Of(build), build.Assembly.Design.Name, to)),
        new("section/assembly.3mf", to => ThreeMfWriter.Write(
            [.. build.Section.Pieces.Select(piece => piece.Placed)], build.Assembly.Design.Name, to)),
        new("section/assembly.dxf", to => SectionDxf.Write(build.Section, build.Assembly.Design.Name, build.Options.Drawing, to)),
        .. MockupFiles.Of(build),
        .. build.Fixtures.SelectMany(fixture => fixture.Files.Zip(fixture.Halves, (path, mesh) => new OutputFile(
            path, to => StlWriter.Write(mesh, $"fixture of {fixture.Site.Port.Name}", to)))),
        .. PaperFiles.Of(build),
        new("welds.csv", to => WeldsCsv.Write(build, to)),
        new("leak-test.csv", to => LeakTestCsv.Write(build.Plan.LeakKit, to)),
        new("setup.csv", to => SetUpCsv.Write(build, to)),
        .. build.Plan.Sheets.SelectMany(sheet => Nests(sheet, build)),
        .. Quote.Of(build.Plan) is { } quote ? new OutputFile[] { new("quote.csv", to => QuoteCsv.Write(quote, to)) } : [],
        new("times.csv", to => TimesCsv.Write(build.Plan.Timing, to)),
        new("steps.csv", to => StepsCsv.Write(build.Plan, to)),
        new("cut-list.csv", to => CutListCsv.Write(build.Plan, to)),
        new("pictures/isometric.png", to => to.Write(pictures.Whole)),
        new("pictures/section.png", to => to.Write(pictures.Section)),
        new(ReportPage.FileName, to => ReportPage.Write(build, pictures, to)),
        new("summary.json", to => SummaryShape.Write(build, to)),
    ];

    /// <summary>Nests on sheets as they are sold; and what a one-off needs of a remnant.</summary>
    private static IEnumerable<OutputFile> Nests(SheetStock sheet, Build build)
    {
        var stem = $"nests/{Slug.Of(sheet.Nest.Material.Name)}_{Numbers.Text(sheet.Nest.Thickness, 3)}mm";
        OutputFile File(string path, Nest nest) => new(path, to => NestDxf.Write(
            nest, build.Parts.Where(part => part.Fitted is not null).ToDictionary(part => part.Part.Id, part => part.Fitted!),
            build.Options.Drawing, to));
        yield return File($"{stem}.dxf", sheet.Nest);
        if (sheet.Rectangle is { } rectangle)
            yield return File($"{stem}_remnant.dxf", rectangle);
    }

    private static IEnumerable<OutputFile> OfPart(BuiltPart built, Build build)
    {
        var (part, options) = (built.Part, build.Options);
        foreach (var (role, path) in PartFiles.Of(part))
        {
            yield return role == "template"
                ? PaperFiles.Pdf(path, $"template of {part.Name}", build, () => TemplatesPdf.Pages(built, build)) : new(path, role switch
                {
                    "flat" or "wrap" => to => FlatDxf.Write(built.Fitted!, options.Drawing, to),
                    "solid" => to => StlWriter.Write(built.Mesh, part.Name, to),
                    "holes" => to => HolesCsv.Write(part, to),
                    "holes_drawing" => to => HolesDxf.Write(part, built.Fitted, options.Drawing, to),
                    _ => throw new InvalidOperationException($"no writer for {role}"),
                });
            if (options.CutOnly && role is "flat" or "wrap")
            {
                var bare = path.Insert(path.LastIndexOf('.'), "_cut-only");
                yield return new(bare, to => FlatDxf.Write(built.Fitted!, options.Drawing with { CutOnly = true }, to));
            }

            if (role is "flat" && CutFrame.IsFor(built.Fitted!, options.FrameBelow, part.Thickness))
            {
                var framed = path.Insert(path.LastIndexOf('.'), "_in-frame");
                yield return new(
                    framed, to => FlatDxf.Write(
                        built.Fitted!, options.Drawing with { CutOnly = true, InFrameOf = part.Thickness, Kerf = options.Kerf }, to));
            }

            if (options.Kerf > 0 && role is "flat")
            {
                var widened = path.Insert(path.LastIndexOf('.'), $"_kerf-{Numbers.Text(options.Kerf, 3)}mm");
                yield return new(
                    widened, to => FlatDxf.Write(built.Fitted!, options.Drawing with { CutOnly = true, Kerf = options.Kerf }, to));
            }
        }
    }
}
