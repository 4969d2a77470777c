using System.Collections.Immutable;
using System.Globalization;
using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Planning;

/// <summary>The lines of a weld.</summary>
internal sealed class StepText(Assembly assembly, Purge purge)
{
    private const string Bright = "; bright metal 25 mm to each side, wiped";

    private readonly VesselDesign _design = assembly.Design;

    /// <param name="isTacked">It was fitted and tacked with others before.</param>
    public IEnumerable<(StepKind Kind, string What)> OfWeld(WeldProcedure weld, bool isTacked)
    {
        var joint = weld.Joint;
        if (!isTacked)
        {
            yield return (StepKind.Fit, $"{joint.Name}: {Where(weld)}{weld.Preparation}{Bright}");
            // Short beads are their own tacks.
            if (Tacks.Of(weld.Weld) is { Places.IsEmpty: false } tacks)
                yield return (StepKind.Tack, tacks.Text(joint));
        }

        yield return (StepKind.Weld, Laid(weld));
        if (weld.CoolBelow is { } most)
        {
            yield return (StepKind.Cool, Text(
                $"clamps on, no water: wait until a contact thermometer or a temperature-indicating crayon beside the bead shows less than {most:0} degC"));
        }

        yield return (StepKind.Check, Checked(weld));
    }

    /// <summary>Steps of welds that are tacked together: fitted as one, all tacked before one of them is welded.</summary>
    public IEnumerable<(StepKind Kind, string What)> OfTacks(ImmutableArray<WeldProcedure> welds)
    {
        var names = string.Join(", ", welds.Select(weld => weld.Joint.Name));
        yield return (StepKind.Fit, $"{names}: {Where(welds[0])}{OfEach(welds, weld => weld.Preparation)}{Bright}");
        yield return (StepKind.Tack,
            $"{OfEach(welds, weld => Tacks.Of(weld.Weld).Text(weld.Joint))}; all of these tacks before the first of the beads");
    }

    /// <summary>Once where it is the same for all, else with each weld's number.</summary>
    private static string OfEach(ImmutableArray<WeldProcedure> welds, Func<WeldProcedure, string> text) =>
        welds.Select(text).Distinct().Count() == 1
        ? $"{string.Join(" and ", welds.Select(weld => weld.Joint.Number))}: {text(welds[0])}"
        : string.Join("; ", welds.Select(weld => $"{weld.Joint.Number}: {text(weld)}"));

    private string Laid(WeldProcedure weld)
    {
        var size = weld.Joint.Kind == JointKind.Fillet
            ? Text($"{Legs(weld.Weld.Leg)}, throat {weld.Joint.Throat:0.0} mm all along")
            : Text($"through the wall, {weld.Joint.Wall:0.0} mm");
        var passes = weld.Passes == 1 ? "one pass" : Text($"{weld.Passes} passes");
        var machine = Text(
            $"{weld.Filler.Name} {weld.Rod.Diameter:0.0} mm, {weld.Current.Words()}, {weld.Settings.Low:0} to {weld.Settings.High:0} A, {weld.Settings.GasName} {weld.Settings.Gas:0.#} L/min, {Electrode(weld.Tungsten)}");
        if (weld.Joint.IsTacked)
            size = Text($"{weld.Joint.Runs.Length} short beads, opposite ones after each other: {size}");
        // A ring on a level plate is laid on one of its faces.
        if (weld.Role == WeldRole.Hold && weld.Joint.Along(0).AlongPart is { Z: 0 })
            size = $"on the {(weld.Joint.Along(0).AlongHost.Z > 0 ? "upper" : "lower")} face: {size}";
        return $"{size}; {passes}; {machine}{Vented(weld)}{Purged(weld)}";
    }

    private static string Electrode(Tungsten? tungsten) => tungsten is { } one
        ? Text($"cup {one.Cup}, electrode {one.Diameter:0.0} mm")
        : "NO ELECTRODE OF THE TABLE CARRIES IT";

    private static string Legs(Interval leg)
    {
        var (low, high) = (Text($"{leg.Start:0.0}"), Text($"{leg.End:0.0}"));
        return low == high ? $"legs {low} mm" : $"legs {low} to {high} mm";
    }

    private string Vented(WeldProcedure weld) => IsClosing(weld)
        ? Vents.Of(assembly) is { } vent ? $"; {vent} stays open as vent" : "; NO PORT IS OPEN: do not heat it"
        : "";

    private bool IsClosing(WeldProcedure weld) => weld.Joint.Path == _design.Head(WorkTasks.ClosingEnd(_design, assembly.Sites)).Path;

    private string Purged(WeldProcedure weld) => !weld.Purged ? ""
        : weld.Role == WeldRole.HeadSeam
            ? Text($"; root in argon: {purge.Minutes:0.0} min at {purge.Flow:0.#} L/min before the arc, with a way out at the top{(IsClosing(weld) ? "" : ", the open end shut with foil")}")
        : "; root in argon behind a dam";

    private string Checked(WeldProcedure weld) => weld.Joint.Words?.Check ?? weld.Role switch
    {
        WeldRole.LongSeam => $"root through all along; {Girth(weld)} by tape",
        WeldRole.GirthSeam => "root through all round; straight by a rule along the outside, in four places",
        WeldRole.HeadSeam => "no undercut, no pinhole; the head square to the shell on the flat",
        WeldRole.PortSeam => $"measure again: {Place(weld)}; no undercut, no pinhole",
        WeldRole.MitreSeam => MitreCheck(weld),
        _ => "square and central; bead whole, nothing loose when tapped",
    };

    /// <summary>Check of the shell's circumference, which is measured at the last of several seams.</summary>
    private string Girth(WeldProcedure seam)
    {
        var course = Course(seam);
        if (seam.Joint.Path != course.SeamPaths[^1])
            return "edges in line, the sheet's arc against a gauge; height";
        return course.IsCone
            ? Text($"circumference {Turns.Full * course.Low:0.0} mm at the lower edge and {Turns.Full * course.High:0.0} mm at the upper, ")
                + "outside,"
            : Text($"circumference {Turns.Full * course.Low:0.0} mm");
    }

    private ShellCourse Course(WeldProcedure seam) => _design.Shell.Courses.First(course => course.SeamPaths.Contains(seam.Joint.Path));

    /// <summary>Words that say where a port, or what hangs inside, is placed; empty for what its neighbours place.</summary>
    private string Where(WeldProcedure weld) => weld.Joint.Words?.FitUp ?? weld.Role switch
    {
        WeldRole.PortSeam => $"{Place(weld)}; {(_design.Fixtures ? "held by its printed fixture where it has one; " : "")}",
        WeldRole.MitreSeam => "their lines in one, bend in one plane; ",
        WeldRole.LongSeam when Course(weld).Seams.Count > 1 => "all sheets clamped round; ",
        _ => "",
    };

    private string MitreCheck(WeldProcedure weld)
    {
        var elbow = _design.Ports.Single(port => port.Path == weld.Joint.Owner).Elbow!;
        return Text($"turns {Turns.ToDegrees(2 * elbow.Slant):0.0} deg by a bevel gauge; root through all round, no pinhole");
    }

    private string Place(WeldProcedure weld)
    {
        var site = assembly.Sites.Single(s => s.Port.Path == weld.Joint.Path);
        var (port, place) = (site.Port, site.Port.Place);
        var end = PortWords.FreeEnd(site);
        if (port.Host == PortHost.Shell)
        {
            var aside = place.Offset == 0 ? "" : Text($", offset {place.Offset:0.0} mm");
            var tilt = place.Tilt == 0 ? ", level" : Text($", tilt {Turns.ToDegrees(place.Tilt):0.0} deg");
            var over = site.Over is { } other
                ? $"; first drill it along its axis through shell and {Names.Of(other)}, their seam dressed flush there" : "";
            return Text($"height {place.Height:0.0} mm, clock angle {Turns.ToDegrees(place.Angle):0.0} deg{aside}{tilt}, {end}{over}");
        }

        var head = Names.Of(port.Host);
        var spot = place.Radius == 0 ? $"in the middle of the {head}"
            : Text($"{place.Radius:0.0} mm from the middle of the {head} at {Turns.ToDegrees(place.Angle):0.0} deg");
        var slope = Math.Acos(Math.Clamp(Math.Abs(site.Frame.Z.Z), 0, 1));
        return slope < 1e-6 ? $"{spot}, upright, {end}" : Text($"{spot}, {Turns.ToDegrees(slope):0.0} deg off upright, {end}");
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
