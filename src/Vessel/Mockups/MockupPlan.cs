using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Mockups;

/// <summary>
/// What the mock-up is made of, worked out without a mesh: cheap enough to be asked with every design. Whatever stands in the
/// way of one clean solid is told in <see cref="Obstacles"/>, and there is no mock-up then.
/// </summary>
public sealed record MockupPlan
{
    private MockupPlan(
        Profile outside, Profile? inside, ImmutableArray<PortForm> ports, BracketForm? bracket, ImmutableArray<Obstacle> obstacles)
    {
        (Outside, Inside, Ports, Bracket, Obstacles) = (outside, inside, ports, bracket, obstacles);
    }

    public ImmutableArray<Obstacle> Obstacles { get; }

    public Profile Outside { get; }

    /// <summary>Null where walls leave no room, or nothing opens into it.</summary>
    public Profile? Inside { get; }

    internal ImmutableArray<PortForm> Ports { get; }

    internal BracketForm? Bracket { get; }

    /// <summary>Handles of the solid: bores that meet in one room, bolt holes, and the loop that a bracket makes with the vessel.</summary>
    public int Genus => Math.Max(0, Ports.Count(port => port.Bore is not null) - 1)
        + (Bracket is null ? 0 : Bracket.Site.BoltPlaces.Length + 1);

    public static MockupPlan Of(VesselDesign design, ImmutableArray<PortSite> sites, double leastWall)
    {
        var outside = BodyProfiles.Outside(design);
        var inside = BodyProfiles.Inside(design, leastWall);
        ImmutableArray<PortForm> Forms(Profile? room) => [.. sites.Select(site => PortForm.Of(site, outside, room, leastWall))];
        var ports = Forms(inside);
        // A room that nothing opens into would be a hollow that no resin or powder leaves.
        if (inside is not null && ports.All(port => port.Bore is null))
            (inside, ports) = (null, Forms(null));
        var bracket = design.Bracket is { } given ? new BracketForm(BracketSite.Of(given, design), outside) : null;
        return new(outside, inside, ports, bracket, [.. Clearances.Of(outside, inside, ports, bracket)]);
    }
}
