using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Planning;
using Vessel.Stock;

namespace Vessel.Export.Summary;

/// <summary>One entry of summary.json's <c>welds</c>.</summary>
internal static class WeldJson
{
    public static void Write((WeldFigures Figures, WeldCost Cost) weld, WeldProcedure procedure, Assembly assembly, SummaryWriter json)
    {
        var (figures, cost) = weld;
        var joint = figures.Joint;
        json.Object(() =>
        {
            json.Put("number", joint.Number);
            json.Put("name", joint.Name);
            json.List("between", joint.Between, json.Value);
            json.Put("kind", joint.Kind.ToString().ToLowerInvariant());
            json.Put("length_mm", figures.Length);
            json.Limits("leg_mm", figures.Leg.Start, figures.Leg.End);
            json.Put("throat_mm", joint.Throat);
            json.Limits("dihedral_deg", Turns.ToDegrees(figures.Dihedral.Start), Turns.ToDegrees(figures.Dihedral.End));
            json.Put("groove_share", figures.GrooveShare);
            json.Put("deposit_mm3", figures.Deposit);
            json.Put("filler", cost.Filler.Name);
            json.Put("filler_g", cost.FillerMass);
            json.Put("rod_mm", cost.Rod.Diameter);
            json.Put("rods", cost.Rods);
            json.Put("travel_mm_per_min", cost.Travel.Value);
            json.Put("travel_source", cost.Travel.Source);
            json.Put("arc_min", cost.ArcMinutes);
            json.Put("gap_normal_mm", figures.GapNormal);
            json.Put("gap_axial_mm", figures.GapAxial);
            json.Put("lip_mm", Lip(joint, assembly));
            json.Object("procedure", () => WriteProcedure(procedure, json));
            json.List("stations", figures.Stations, station => WriteStation(joint, station.Parameter, station.At, json));
        });
    }

    private static void WriteProcedure(WeldProcedure weld, SummaryWriter json)
    {
        json.Put("preparation", weld.Preparation);
        json.Put("least_leg_mm", weld.LeastLeg);
        json.Put("passes", weld.Passes);
        json.Put("current", weld.Current.Short());
        json.Put("tungsten_mm", weld.Tungsten?.Diameter);
        json.Put("cup", (double?)weld.Tungsten?.Cup);
        json.Limits("amps", weld.Settings.Low, weld.Settings.High);
        json.Put("gas", weld.Settings.GasName);
        json.Put("gas_l_per_min", weld.Settings.Gas);
        json.Put("settings_source", weld.Settings.Source);
        json.Limits("volts", weld.Volts.Low, weld.Volts.High);
        json.Put("heat_kj_per_mm", weld.HeatInput);
        WriteLoad("shear", weld.Strength.Shear, json);
        WriteLoad("pull", weld.Strength.Pull, json);
        json.Put("purged", weld.Purged);
        json.Put("cool_below_c", weld.CoolBelow);
        json.List("notes", weld.Notes, json.Value);
    }

    private static void WriteLoad(string name, AllowedLoad load, SummaryWriter json) => json.Object(name, () =>
    {
        json.Put("n_per_mm", load.Value);
        json.Put("weakest", load.By);
        json.Put("source", load.Source);
    });

    private static double Lip(Joint joint, Assembly assembly) =>
        assembly.Sites.FirstOrDefault(site => joint.Role == WeldRole.PortSeam && site.Port.Path == joint.Owner) is { } site ? PortFit.Lip(site, assembly.Design) : 0;

    private static void WriteStation(Joint joint, double parameter, Station at, SummaryWriter json) => json.Object(() =>
    {
        // A seam of one part is told by height, a path round something by its angle.
        if (joint.IsRound)
            json.Put("at_deg", Turns.ToDegrees(parameter));
        else
            json.Put("at_mm", parameter);
        json.List("point_mm", [at.Root.X, at.Root.Y, at.Root.Z], json.Value);
        json.Put("dihedral_deg", Turns.ToDegrees(at.Dihedral));
        json.Put("leg_mm", Bead.Of(joint, at).Leg);
        json.Put("gap_normal_mm", at.GapNormal);
        json.Put("gap_axial_mm", at.GapAxial);
    });
}
