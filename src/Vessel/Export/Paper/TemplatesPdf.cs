using Vessel.Export.Drawing;
using Vessel.Export.Pdf;
using Vessel.Function;
using Vessel.Parts;
using Vessel.Ports;
using Vessel.Sites;

namespace Vessel.Export.Paper;

/// <summary>The templates of one part.</summary>
internal static class TemplatesPdf
{
    /// <summary>
    /// Tubes and rolled parts with something to mark on them, and sheet with holes, bends or curved sides. A plain disc is
    /// drawn quicker with dividers.
    /// </summary>
    public static bool Has(Part part) => part.Flat switch
    {
        null => false,
        { Kind: FlatKind.Wrap } => true,
        { Kind: FlatKind.Blank } flat => flat.Cut.Outer.AsCircle is null,
        var flat => part.Wrap is not null || flat.Cut.Holes.Length > 0 || !part.Fields.IsEmpty || !flat.Bends.IsEmpty,
    };

    public static IEnumerable<Page> Pages(BuiltPart built, Build build)
    {
        var (part, paper) = (built.Part, build.Options.Paper);
        var site = build.Assembly.Sites.FirstOrDefault(site => PortPieces.Ids(site.Port).Contains(part.Id));
        var templates = part.OnOutside is not { } outside ? PlateTemplate.Of(part, built.Fitted!)
            : [WrapTemplate.Of(part, outside == part.Flat ? built.Fitted! : FittedFlat.Of(outside, built.Tolerance), site, paper)];
        return templates.SelectMany(template => TemplatePages.Of(template, paper.Size, VesselName(build.Assembly.Design)));
    }

    public static string VesselName(Design.VesselDesign design) =>
        design.Revision.Length > 0 ? $"{design.Name}, revision {design.Revision}" : design.Name;
}
