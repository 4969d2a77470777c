using System.Globalization;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Planning;

/// <summary>The five lines of a weld.</summary>
internal sealed class StepText(Assembly assembly, Purge purge)
{
    private readonly VesselDesign _design = assembly.Design;

    public IEnumerable<(StepKind Kind, string What)> OfWeld(WeldProcedure weld)
    {
        var joint = weld.Joint;
        yield return (StepKind.Fit, $"{joint.Name}: {weld.Preparation}; bright metal 25 mm to each side, wiped");
        yield return (StepKind.Tack, Tacks.Of(weld.Weld).Text(joint));
        yield return (StepKind.Weld, Laid(weld));
        yield return (StepKind.Cool, "let it cool until a hand can rest on it, clamps on; no water");
        yield return (StepKind.Check, Checked(weld));
    }

    private string Laid(WeldProcedure weld)
    {
        var size = weld.Joint.Kind == JointKind.Fillet
            ? Text($"legs {weld.Weld.Leg.Start:0.0} to {weld.Weld.Leg.End:0.0} mm, throat {weld.Joint.Throat:0.0} mm all along")
            : Text($"through the wall, {weld.Joint.Wall:0.0} mm");
        var passes = weld.Passes == 1 ? "one pass" : Text($"{weld.Passes} passes");
        var machine = Text(
            $"{weld.Filler.Name} {weld.Rod.Diameter:0.0} mm, {weld.Settings.Low:0} to {weld.Settings.High:0} A, argon {weld.Settings.Gas:0.#} L/min, cup {weld.Tungsten.Cup}, electrode {weld.Tungsten.Diameter:0.0} mm");
        if (weld.Role == WeldRole.DiscHold)
            size = $"on the {(weld.Joint.Along(0).AlongHost.Z > 0 ? "upper" : "lower")} face: {size}";
        return $"{size}; {passes}; {machine}{Vented(weld)}{Purged(weld)}";
    }

    private string Vented(WeldProcedure weld) => IsClosing(weld)
        ? Vents.Of(assembly) is { } vent ? $"; {vent} stays open as vent" : "; NO PORT IS OPEN: do not heat it"
        : "";

    private bool IsClosing(WeldProcedure weld) => weld.Joint.Path == _design.Head(WorkTasks.ClosingEnd(_design)).Path;

    private string Purged(WeldProcedure weld) => !weld.Purged ? ""
        : weld.Role == WeldRole.HeadSeam ? Text($"; root in argon: {purge.Minutes:0.0} min at {purge.Flow:0.#} L/min before the arc, with a way out at the top{(IsClosing(weld) ? "" : ", the open end shut with foil")}")
        : "; root in argon behind a dam";

    private string Checked(WeldProcedure weld) => weld.Role switch
    {
        WeldRole.LongSeam => Text($"root through all along; girth {Math.PI * _design.Shell.OutsideDiameter:0.0} mm by tape"),
        WeldRole.HeadSeam => "no undercut, no pinhole; the head square to the shell on the flat",
        WeldRole.PortSeam => Place(weld),
        WeldRole.BracketEar => "stand-off and bolt holes by the set-up table",
        WeldRole.GoreSeam or WeldRole.CrownSeam => "root through all along; the girth at the rim and a template over the dome",
        _ => "square and central; bead whole, nothing loose when tapped",
    };

    private string Place(WeldProcedure weld)
    {
        var site = assembly.Sites.Single(s => s.Port.Path == weld.Joint.Path);
        var place = site.Port.Place;
        return site.Port.Host == PortHost.Shell
            ? Text($"height {place.Height:0.0} mm, clock angle {Turns.ToDegrees(place.Angle):0.0} deg, tilt {Turns.ToDegrees(place.Tilt):0.0} deg")
            : Text($"{place.Radius:0.0} mm from the middle at {Turns.ToDegrees(place.Angle):0.0} deg, square to the {Names.Of(site.Port.Host)}");
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
