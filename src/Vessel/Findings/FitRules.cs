using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Sites;
using static Vessel.Model.Allowed;

namespace Vessel.Findings;

/// <summary>How parts fit up where they are welded; brackets have rules of their own.</summary>
internal static class FitRules
{
    /// <summary>A lip below this is gone with the burr.</summary>
    private const double LipWorthNaming = 0.5;

    public static IEnumerable<Measure> Of(Assembly assembly)
    {
        foreach (var site in assembly.Sites)
        {
            var weld = assembly.Welds.Single(w => w.Joint.Path == site.Port.Path);
            if (site.Port.Joint == PortJoint.SetOn)
                yield return Gap(assembly, site, weld);
            yield return Lip(assembly, site);
            if (weld.Joint.Kind == JointKind.Fillet)
                yield return Groove(assembly, site, weld);
            if (site.Port.Elbow is { } elbow)
                yield return MitreGap(assembly, site.Port, elbow);
        }

        foreach (var weld in Given(assembly))
            yield return GivenGap(assembly, weld);
    }

    /// <summary>
    /// Joints whose gap the design gives, as a clearance or a root gap, rather than the way in which an end is cut. A V is opened on
    /// purpose.
    /// </summary>
    private static IEnumerable<WeldFigures> Given(Assembly assembly) => assembly.Welds.Where(weld =>
        weld is { GapNormal: > 0, Joint.GapKey: not null } && !EdgePreparation.IsBevelled(weld.Joint.Kind, weld.Joint.Wall));

    private static Measure GivenGap(Assembly assembly, WeldFigures weld)
    {
        var (joint, path) = (weld.Joint, weld.Joint.GapKey!);
        var of = $"gap of {joint.Number}, {joint.Name}";
        var remedy = joint.GapRemedy is { } words ? $". {words}" : $": give a smaller {path[(path.LastIndexOf('.') + 1)..]}";
        return TooWide(
            assembly,
            RootGap.WallOf(joint),
            weld,
            [.. joint.Between.Distinct()],
            of,
            limits => $"{joint.Number} ({joint.Name}) is open by {NoteText.Length(weld.GapNormal)} mm; {limits}{remedy}.",
            assembly.Design.PlaceOf(path));
    }

    private static Measure Gap(Assembly assembly, PortSite site, WeldFigures weld) => TooWide(
        assembly,
        site.Port.Wall,
        weld,
        [Slug.Of(site.Port.Name)],
        $"gap at '{site.Port.Name}'",
        limits => $"'{site.Port.Name}' stands off the {Names.Of(site.Port.Host)} by up to {NoteText.Length(weld.GapNormal)} mm "
            + $"({NoteText.Length(weld.GapAxial)} mm along the tube); {limits}: "
            + "grind it or cut it with a hole saw (cut: ground or hole_saw).",
        assembly.Design.PlaceOf($"{site.Port.Path}.cut"));

    /// <summary>All mitres of an elbow are alike.</summary>
    private static Measure MitreGap(Assembly assembly, PortDesign port, ElbowDesign elbow)
    {
        var weld = assembly.Welds.First(weld => weld.Joint is { Role: WeldRole.MitreSeam } joint && joint.Owner == port.Path);
        return TooWide(
            assembly,
            port.Wall,
            weld,
            weld.Joint.Between,
            $"gap at the mitres of '{port.Name}'",
            limits => $"cut square through the wall the mitres of the elbow of '{port.Name}' open by up to "
                + $"{NoteText.Length(weld.GapNormal)} mm on the outside "
                + $"of the bend; {limits}: saw them (cut: sawn) or take more pieces.",
            assembly.Design.PlaceOf($"{elbow.Path}.cut"));
    }

    /// <param name="message">Message made from what is aimed for and what is the most, in words.</param>
    private static Measure TooWide(
        Assembly assembly, double wall, WeldFigures weld, ImmutableArray<string> parts, string of, Func<string, string> message,
        KeyPlace place)
    {
        var shop = assembly.Design.Shop.Welding;
        return new(
            FindingCodes.GapTooWide,
            Severity.Warning,
            parts,
            () => message(RootGap.Limits(wall, shop, NoteText.Length, "mm")),
            [new("gap normal", weld.GapNormal, AtMost(RootGap.Aim(wall, shop), RootGap.Most(wall, shop)), "mm"),
                new("gap axial", weld.GapAxial, null, "mm")],
            place,
            of);
    }

    private static Measure Lip(Assembly assembly, PortSite site)
    {
        var lip = PortLip.Of(site, assembly.Design);
        return new(
            FindingCodes.LipInBore,
            Severity.Note,
            [Names.Of(site.Port.Host), Slug.Of(site.Port.Name)],
            () => $"the {Names.Of(site.Port.Host)}'s wall stands up to {NoteText.Length(lip)} mm into the bore of '{site.Port.Name}': "
            + "dress it before the vessel is closed.",
            [new("lip", lip, AtMost(LipWorthNaming), "mm")],
            assembly.Design.PlaceOf($"{site.Port.Path}.joint"),
            $"lip in the bore of '{site.Port.Name}'");
    }

    private static Measure Groove(Assembly assembly, PortSite site, WeldFigures weld)
    {
        var (steepest, limit) = (Turns.ToDegrees(weld.Dihedral.End), Turns.ToDegrees(FilletThroat.GreatestAngle));
        return new(
            FindingCodes.GrooveAtFlank,
            Severity.Warning,
            [Slug.Of(site.Port.Name)],
            () => $"over {Math.Round(100 * weld.GrooveShare)} % of {weld.Joint.Number} the surfaces meet at up to "
            + $"{NoteText.Degrees(weld.Dihedral.End)} deg, too flat for a fillet ({NoteText.Degrees(FilletThroat.GreatestAngle)} deg): "
            + "bevel the tube's end there, or "
            + $"{(site.Port.Host == PortHost.Shell ? "reduce the offset" : "stand it square to the surface")}.",
            [new("dihedral", steepest, AtMost(limit), "deg")],
            assembly.Design.PlaceOf($"{site.Port.Path}.at.{(site.Port.Host == PortHost.Shell ? "offset" : "radius")}"),
            $"widest angle at '{site.Port.Name}'");
    }
}
