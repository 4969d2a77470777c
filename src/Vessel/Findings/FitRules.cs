using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;

namespace Vessel.Findings;

/// <summary>How parts fit up where they are welded; brackets have rules of their own.</summary>
internal static class FitRules
{
    /// <summary>A lip below this is gone with the burr.</summary>
    internal const double LipWorthNaming = 0.5;

    public static IEnumerable<Finding> Of(Assembly assembly)
    {
        foreach (var site in assembly.Sites)
        {
            var weld = assembly.Welds.Single(w => w.Joint.Path == site.Port.Path);
            if (Gap(assembly, site, weld) is { } gap)
                yield return gap;
            if (Lip(assembly, site) is { } lip)
                yield return lip;
            if (weld.GrooveShare > 0)
                yield return Groove(assembly, site, weld);
            if (MitreGap(assembly, site) is { } mitre)
                yield return mitre;
        }

        foreach (var weld in Given(assembly))
        {
            if (GivenGap(assembly, weld) is { } gap)
                yield return gap;
        }
    }

    /// <summary>
    /// Joints whose gap the design gives, as a clearance or a root gap, rather than the way in which an end is cut. A V is opened on purpose.
    /// </summary>
    internal static IEnumerable<WeldFigures> Given(Assembly assembly) => assembly.Welds.Where(weld =>
        weld is { GapNormal: > 0, Joint.GapKey: not null } && !EdgePreparation.IsBevelled(weld.Joint.Kind, weld.Joint.Wall));

    private static Finding? GivenGap(Assembly assembly, WeldFigures weld)
    {
        var (joint, path) = (weld.Joint, weld.Joint.GapKey!);
        if (OfCone(assembly.Design, weld) is { } lid)
        {
            var slope = weld.GapNormal - lid.Clearance;
            return TooWide(
                assembly,
                RootGap.WallOf(joint, assembly.Design),
                weld,
                [.. joint.Between.Distinct()],
                limits => $"{joint.Number} ({joint.Name}) is open by {NoteText.Length(weld.GapNormal)} mm; {limits}. "
                    + $"The cone alone leaves {NoteText.Length(slope)} mm of it beside the plate's square edge: chamfer that edge to the cone's slope, "
                    + "use a thinner plate, or set it on the shell's end (seat: overlay).",
                assembly.Design.PlaceOf($"{lid.Path}.thickness"));
        }

        var key = path[(path.LastIndexOf('.') + 1)..];
        return TooWide(
            assembly,
            RootGap.WallOf(joint, assembly.Design),
            weld,
            [.. joint.Between.Distinct()],
            limits => $"{joint.Number} ({joint.Name}) is open by {NoteText.Length(weld.GapNormal)} mm; {limits}: give a smaller {key}.",
            assembly.Design.PlaceOf(path));
    }

    /// <summary>The inset plate of a conical end, where its clearance is no more than a lesser part of the gap.</summary>
    private static FlatHead? OfCone(VesselDesign design, WeldFigures weld) => new[] { PortHost.Top, PortHost.Bottom }
        .Where(end => design.Shell.CourseOf(end).IsCone).Select(design.Head).OfType<FlatHead>()
        .FirstOrDefault(lid => lid.Seat == Seat.Inset && lid.Path == weld.Joint.Path && weld.GapNormal > 2 * lid.Clearance);

    private static Finding? Gap(Assembly assembly, PortSite site, WeldFigures weld) => site.Port is { Joint: PortJoint.SetIn } ? null
        : TooWide(
            assembly,
            site.Port.Wall,
            weld,
            [Slug.Of(site.Port.Name)],
            limits => $"'{site.Port.Name}' stands off the {Names.Of(site.Port.Host)} by up to {NoteText.Length(weld.GapNormal)} mm "
                + $"({NoteText.Length(weld.GapAxial)} mm along the tube); {limits}: "
                + "grind it or cut it with a hole saw (cut: ground or hole_saw).",
            assembly.Design.PlaceOf($"{site.Port.Path}.cut"));

    /// <summary>All mitres of an elbow are alike.</summary>
    private static Finding? MitreGap(Assembly assembly, PortSite site)
    {
        if (site.Port is not { Elbow: { } elbow } port)
            return null;
        var weld = assembly.Welds.First(weld => weld.Joint is { Role: WeldRole.MitreSeam } joint && joint.Owner == port.Path);
        return TooWide(
            assembly,
            port.Wall,
            weld,
            weld.Joint.Between,
            limits => $"cut square through the wall the mitres of the elbow of '{port.Name}' open by up to {NoteText.Length(weld.GapNormal)} mm on the outside "
                + $"of the bend; {limits}: saw them (cut: sawn) or take more pieces.",
            assembly.Design.PlaceOf($"{elbow.Path}.cut"));
    }

    /// <summary>Null where the gap is no wider than is aimed for.</summary>
    /// <param name="message">From what is aimed for and what is the most, in words.</param>
    private static Finding? TooWide(
        Assembly assembly, double wall, WeldFigures weld, ImmutableArray<string> parts, Func<string, string> message, KeyPlace place)
    {
        var shop = assembly.Design.Shop.Welding;
        var (aim, most) = (RootGap.Aim(wall, shop), RootGap.Most(wall, shop));
        if (weld.GapNormal <= aim)
            return null;
        var grave = weld.GapNormal > most;
        return new(
            FindingCodes.GapTooWide,
            grave ? Severity.Error : Severity.Warning,
            parts,
            message(RootGap.Limits(wall, shop, NoteText.Length, "mm")),
            [new("gap normal", weld.GapNormal, grave ? most : aim, "mm"), new("gap axial", weld.GapAxial, null, "mm")],
            place);
    }

    private static Finding? Lip(Assembly assembly, PortSite site)
    {
        var lip = PortFit.Lip(site, assembly.Design);
        if (lip < LipWorthNaming)
            return null;
        return new(
            FindingCodes.LipInBore,
            Severity.Note,
            [Names.Of(site.Port.Host), Slug.Of(site.Port.Name)],
            $"the {Names.Of(site.Port.Host)}'s wall stands up to {NoteText.Length(lip)} mm into the bore of '{site.Port.Name}': "
            + "dress it before the vessel is closed.",
            [new("lip", lip, LipWorthNaming, "mm")],
            assembly.Design.PlaceOf($"{site.Port.Path}.joint"));
    }

    private static Finding Groove(Assembly assembly, PortSite site, WeldFigures weld)
    {
        var (steepest, limit) = (Turns.ToDegrees(weld.Dihedral.End), Turns.ToDegrees(FilletThroat.GreatestAngle));
        return new(
            FindingCodes.GrooveAtFlank,
            Severity.Warning,
            [Slug.Of(site.Port.Name)],
            $"over {Math.Round(100 * weld.GrooveShare)} % of {weld.Joint.Number} the surfaces meet at up to "
            + $"{NoteText.Degrees(weld.Dihedral.End)} deg, too flat for a fillet ({NoteText.Degrees(FilletThroat.GreatestAngle)} deg): "
            + $"bevel the tube's end there, or {(site.Port.Host == PortHost.Shell ? "reduce the offset" : "stand it square to the surface")}.",
            [new("dihedral", steepest, limit, "deg")],
            assembly.Design.PlaceOf($"{site.Port.Path}.at.{(site.Port.Host == PortHost.Shell ? "offset" : "radius")}"));
    }
}
