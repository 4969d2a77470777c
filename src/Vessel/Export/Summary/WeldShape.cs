using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Planning;
using Vessel.Sites;
using Vessel.Stock;

namespace Vessel.Export.Summary;

/// <summary>What one entry of summary.json's <c>welds</c> is written from.</summary>
internal sealed record WeldEntry(WeldFigures Figures, WeldCost Cost, WeldProcedure Procedure, Assembly Assembly)
{
    public Joint Joint => Figures.Joint;

    public static IEnumerable<WeldEntry> Of(Build build) =>
        build.Welds.Zip(build.Plan.Procedures, (weld, procedure) => new WeldEntry(weld.Figures, weld.Cost, procedure, build.Assembly));

    public double Lip => Assembly.Sites.FirstOrDefault(site => Joint.Role == WeldRole.PortSeam && site.Port.Path == Joint.Owner) is { } site
        ? PortLip.Of(site, Assembly.Design)
        : 0;

    public IEnumerable<StationEntry> Stations => Figures.Stations.Select(station => new StationEntry(Joint, station.Parameter, station.At));
}

/// <summary>One point along a seam.</summary>
internal sealed record StationEntry(Joint Joint, double Parameter, Station At);

/// <summary>Layout of one entry of summary.json's <c>welds</c>.</summary>
internal static class WeldShape
{
    public static Shape<WeldEntry> Entry { get; } = new RecordShape<WeldEntry>("A weld")
        .Text("number", "As on the flats", weld => weld.Joint.Number)
        .Text("name", "Parts that it joins", weld => weld.Joint.Name)
        .Texts("between", "Ids of the parts", "Id", weld => weld.Joint.Between)
        .Text("kind", "fillet, butt, groove ...", weld => weld.Joint.Kind.ToString().ToLowerInvariant())
        .Number("length_mm", "Along the root", weld => weld.Figures.Length)
        .MinMax("leg_mm", "Legs; zero for a butt", weld => weld.Figures.Leg)
        .Number("throat_mm", "Asked for", weld => weld.Joint.Throat)
        .MinMax("dihedral_deg", "Between the surfaces", weld => new(
            Turns.ToDegrees(weld.Figures.Dihedral.Start), Turns.ToDegrees(weld.Figures.Dihedral.End)))
        .Number("groove_share", "Share of the length too flat for a fillet, 0 to 1", weld => weld.Figures.GrooveShare)
        .Number("deposit_mm3", "Metal", weld => weld.Figures.Deposit)
        .Text("filler", "Alloy of the rod", weld => weld.Cost.Filler.Name)
        .Likely("filler_g", "Likely", weld => weld.Cost.FillerMass)
        .Number("rod_mm", "Diameter", weld => weld.Cost.Rod.Diameter)
        .Likely("rods", "Likely", weld => weld.Cost.Rods)
        .Number("travel_mm_per_min", "Speed of the torch", weld => weld.Cost.Travel.Value)
        .Text("travel_source", "Of the speed", weld => weld.Cost.Travel.Source)
        .Number("arc_min", "Likely", weld => weld.Cost.ArcMinutes)
        .Number("gap_normal_mm", "Greatest, at right angles to the host", weld => weld.Figures.GapNormal)
        .Number("gap_axial_mm", "Greatest, along the part's axis", weld => weld.Figures.GapAxial)
        .Number(
            "lip_mm", "Greatest width of the host's lip in a set-on port's bore; 0 for other joints", weld => weld.Lip)
        .Of("procedure", weld => weld.Procedure, Procedure())
        .List("stations", "Points along the seam", weld => weld.Stations, Point());

    private static RecordShape<WeldProcedure> Procedure() =>
        new RecordShape<WeldProcedure>("Settings of the weld: a start for a trial on scrap")
        .Text("preparation", "Of the edges", weld => weld.Preparation)
        .MaybeNumber("least_leg_mm", "Published least leg; null where none holds", weld => weld.LeastLeg)
        .Count("passes", "Beads over each other", weld => weld.Passes)
        .Choice("current", "Alternating, or direct with the electrode negative", weld => weld.Current.Short(), "AC", "DCEN")
        .MaybeNumber(
            "tungsten_mm", "Diameter of the electrode; null where none of the table carries the amps", weld => weld.Tungsten?.Diameter)
        .MaybeCount("cup", "Number of the gas cup: bore in sixteenths of an inch", weld => weld.Tungsten?.Cup)
        .MinMax("amps", "By the table", weld => new(weld.Settings.Low, weld.Settings.High))
        .Choice("gas", "Through the cup", weld => weld.Settings.GasName, "argon", "argon/helium")
        .Number("gas_l_per_min", "Through the cup", weld => weld.Settings.Gas)
        .Text("settings_source", "Of amps and gas", weld => weld.Settings.Source)
        .MinMax("volts", "Of the arc, by the low and high amps", weld => new(weld.Volts.Low, weld.Volts.High))
        .Likely("heat_kj_per_mm", "Of a pass, at the middle of the amps", weld => weld.HeatInput)
        .Object("shear", "Load that a millimetre may carry along the seam; static, no rating", weld => weld.Strength.Shear, Load)
        .Object("pull", "The same across the seam; of a fillet its shear", weld => weld.Strength.Pull, Load)
        .Flag("purged", "Whether the root is flooded with argon", weld => weld.Purged)
        .MaybeNumber(
            "cool_below_c", "To wait for before the next weld, degrees Celsius; null where it is that cool by then", weld => weld.CoolBelow)
        .Texts("notes", "For the bench", "A line", weld => weld.Notes);

    private static RecordShape<AllowedLoad> Load(RecordShape<AllowedLoad> load) => load
        .Number("n_per_mm", "The least of the weld's metal and the metal beside it", of => of.Value)
        .Text("weakest", "The weaker of the two: a filler or a metal", of => of.By)
        .Text("source", "Of its stress", of => of.Source);

    /// <summary>A seam of one part is told by the way along it, a path round something by its angle.</summary>
    private static RecordShape<StationEntry> Point() => new RecordShape<StationEntry>("A point")
        .OptionalNumber("at_deg", "Angle round the part, of a round seam", at => at.Joint.IsRound ? Turns.ToDegrees(at.Parameter) : null)
        .OptionalNumber("at_mm", "Way along a straight seam", at => at.Joint.IsRound ? null : at.Parameter)
        .List("point_mm", "Of the root", at => [at.At.Root.X, at.At.Root.Y, at.At.Root.Z], Items.Number("x, y, z"))
        .Number("dihedral_deg", "Between the surfaces", at => Turns.ToDegrees(at.At.Dihedral))
        .Number("leg_mm", "Of the fillet", at => Bead.Of(at.Joint, at.At).Leg)
        .Number("gap_normal_mm", "At right angles to the host", at => at.At.GapNormal)
        .Number("gap_axial_mm", "Along the part's axis", at => at.At.GapAxial);
}
