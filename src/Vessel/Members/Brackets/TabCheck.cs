using NetTopologySuite.Geometries;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Sites;

namespace Vessel.Members.Brackets;

/// <summary>Whether a bracket's tabs find room on its edges, and their slots on the shell's flat.</summary>
internal static class TabCheck
{
    /// <summary>What a tab wants of the edge, as a multiple of its width: common practice, no source.</summary>
    private const double Share = 1.5;

    public static IEnumerable<Fault> Find(VesselDesign design, PortSites sites)
    {
        var whole = design.Shell;
        return whole.Courses.Where(course => !course.IsCone).SelectMany(course => Find(
            new(design.Units),
            course.At(course.Start),
            sites.Openings.Where(hole => whole.IsPlain || hole.Site.OnShell!.Course == course),
            design.All<BracketDesign>().Where(bracket => whole.IsPlain || whole.CourseAt(bracket.Height) == course)));
    }

    /// <param name="shell">Section of a cylinder.</param>
    private static IEnumerable<Fault> Find(
        UnitFormat shown, ShellSection shell, IEnumerable<ShellOpening> holes, IEnumerable<BracketDesign> brackets)
    {
        var taken = new List<(string Name, Polygon[] Flat)>(
            holes.Select(hole => ($"the hole of '{hole.Port.Name}'", hole.Flat(shell.OuterRadius).ToArray())));
        foreach (var bracket in brackets)
        {
            if (bracket.Tabs is not { Count: > 0 } tabs || !IsWhole(shell, bracket, tabs))
                continue;
            if (!shell.Course.IsRolled)
            {
                yield return new Fault(FaultCodes.KeyDoesNotApply, tabs.Path,
                    "Tabs stand in slots that are cut in the shell's flat, and this shell is made from tube.", "tube", "sheet",
                    "Delete 'tabs', or make the shell from sheet.");
            }
            else if (OnEdge(shown, shell, bracket, tabs) is { } fault)
            {
                yield return fault;
            }
            else
            {
                foreach (var inWay in OnShell(shown, shell, bracket, taken))
                    yield return inWay;
                taken.Add(($"a slot of '{bracket.Name}'", [.. ShellTab.Of(bracket).Select(tab => Flat(tab, shell, 0))]));
            }
        }
    }

    /// <summary>Without a value at fault, and on a bracket that meets the shell.</summary>
    private static bool IsWhole(ShellSection shell, BracketDesign bracket, TabsDesign tabs) =>
        double.IsFinite(bracket.Height + bracket.Angle + bracket.Thickness + bracket.EdgeLength + tabs.Width + tabs.Clearance
            + shell.InnerRadius + shell.Seams.First + shell.Course.RootGap)
        && shell.InnerRadius > 0
        && ShellTab.Of(bracket).All(tab => double.IsFinite(tab.Middle.U) && double.IsFinite(
            bracket.EdgeLevel(bracket.EdgeLength / 2, shell.OuterRadius)));

    private static Fault? OnEdge(UnitFormat shown, ShellSection shell, BracketDesign bracket, TabsDesign tabs)
    {
        var each = Math.Max(Share * tabs.Width, tabs.Width + (2 * tabs.Clearance) + shell.Wall);
        var length = bracket.EdgeLength;
        if (tabs.Count * each > length + Ring.Hair)
        {
            return new Fault(FaultCodes.TabsDoNotFit, $"{tabs.Path}.width", "The tabs find no room side by side on the bracket's edge.",
                $"{tabs.Count} that want {shown.Length(each)} each", $"{shown.Length(length)} of edge", "Use fewer or narrower tabs.");
        }

        var furthest = ShellTab.Of(bracket).Max(tab => tab.Furthest);
        return furthest < shell.InnerRadius ? null : new Fault(FaultCodes.TabsDoNotFit, $"{tabs.Path}.width",
            "A tab's slot reaches beside the bore.", $"{shown.Length(furthest)} from the axis",
            $"less than {shown.LengthDown(shell.InnerRadius)}",
            "Make the tabs narrower, or the bracket.");
    }

    /// <summary>The first thing that is in the way of each tab's slot.</summary>
    private static IEnumerable<Fault> OnShell(
        UnitFormat shown, ShellSection shell, BracketDesign bracket, IReadOnlyCollection<(string Name, Polygon[] Flat)> taken)
    {
        var (course, girth) = (shell.Course, Turns.Full * shell.OuterRadius);
        foreach (var tab in ShellTab.Of(bracket))
        {
            // A bracket beyond the shell's end is told as such.
            if (tab.Grown(0).Corners.Any(corner => corner.V < course.Start || corner.V > course.End))
                yield break;
            var (low, high) = (tab.Slot.Corners.Min(corner => corner.V), tab.Slot.Corners.Max(corner => corner.V));
            var (least, most) = (course.Start + shell.Wall, course.End - shell.Wall);
            if (low < least - Ring.Hair || high > most + Ring.Hair)
            {
                yield return new Fault(FaultCodes.SlotInTheWay, $"{bracket.Path}.at.height",
                    "A tab's slot leaves less than one wall of metal to an end of the shell.",
                    $"{shown.Length(low)} to {shown.Length(high)}", $"{shown.LengthUp(least)} to {shown.LengthDown(most)}",
                    "Move the bracket along the shell.");
                yield break;
            }

            var own = Flat(tab, shell, shell.Wall);
            var half = course.RootGap / 2;
            var (left, right) = (own.EnvelopeInternal.MinX, own.EnvelopeInternal.MaxX);
            var other = taken.FirstOrDefault(one => one.Flat.Any(flat => Repeats(girth).Any(shift =>
                new NetTopologySuite.Geometries.Utilities.AffineTransformation().Translate(shift, 0).Transform(flat).Intersects(own))));
            var seams = from angle in shell.Seams.Angles from shift in Repeats(girth) select (angle * shell.OuterRadius) + shift;
            var name = seams.Any(seam => seam + half > left && seam - half < right)
                ? (shell.Seams.Count > 1 ? "a long seam" : "the long seam")
                : other.Name;
            if (name is null)
                continue;
            yield return new Fault(FaultCodes.SlotInTheWay, $"{bracket.Path}.at",
                $"A tab's slot leaves less than one wall of metal to {name}.", null, $"at least {shown.LengthUp(shell.Wall)}",
                "Move one of the two round the shell or along it, or change the number of tabs.");
            yield break;
        }
    }

    /// <summary>The outside laid flat repeats every girth, and a slot may lie a turn and more from what is near it.</summary>
    private static IEnumerable<double> Repeats(double girth) => Enumerable.Range(-2, 5).Select(turn => turn * girth);

    /// <summary>The slot, grown by so much on all sides, on the outside laid flat: mm along it from angle 0, and up.</summary>
    private static Polygon Flat(ShellTab tab, ShellSection shell, double grown)
    {
        var corners = tab.Grown(tab.Bracket.Tabs!.Clearance + grown).Corners
            .Select(corner => new Coordinate(
                (tab.Bracket.Angle + Math.Asin(Math.Clamp(corner.U / shell.InnerRadius, -1, 1))) * shell.OuterRadius, corner.V))
            .ToList();
        return new(new LinearRing([.. corners, corners[0]]));
    }
}
