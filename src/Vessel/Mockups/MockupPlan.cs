using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Mockups;

/// <summary>
/// What the mock-up is made of, worked out without a mesh: cheap enough to be asked with every design. Whatever stands in the
/// way of one clean solid is told in <see cref="Obstacles"/>, and there is no mock-up then.
/// </summary>
public sealed record MockupPlan
{
    private MockupPlan(MockupDesign options, Profile outside, Profile? inside)
    {
        (Options, Outside, Inside) = (options, outside, inside);
    }

    public MockupDesign Options { get; }

    public ImmutableArray<Obstacle> Obstacles { get; private init; } = [];

    public Profile Outside { get; }

    /// <summary>Null where it is filled: by choice, because walls leave no room, or because nothing opens into it.</summary>
    public Profile? Inside { get; }

    /// <summary>mm of the vessel.</summary>
    public double ShellHeight { get; private init; }

    internal ImmutableArray<PortForm> Ports { get; private init; } = [];

    internal ImmutableArray<DrainForm> Drains { get; private init; } = [];

    internal ImmutableArray<PrintForm> Members { get; private init; } = [];

    /// <summary>Names and seams on the outside, where the design asks for them.</summary>
    internal ImmutableArray<PrintMark> Marks { get; private init; } = [];

    /// <summary>Those for which there is no place.</summary>
    internal ImmutableArray<MissingMark> MissingMarks { get; private init; } = [];

    /// <summary>Handles of the solid: ways into one room, bolt holes, and the loops that members make with the vessel.</summary>
    public int Genus => Math.Max(0, Ports.Count(port => port.Bore is not null) + Drains.Length - 1)
        + Members.Sum(member => member.Handles);

    /// <summary>Size of the print along x, y and z, mm, but for what bends bulge.</summary>
    public Vector3 Size
    {
        get
        {
            var wide = Outside.Joints.Max(joint => Outside.At(joint).U);
            List<ConvexBody> bodies =
            [
                new Bar(new(0, 0, Outside.Start.V), new(0, 0, Outside.End.V), wide),
                .. Ports.SelectMany(port => port.Bodies(0)),
                .. Members.SelectMany(member => member.Hulls(member.InnerLevel)),
            ];
            double Along(Vector3 way) =>
                bodies.Max(body => body.Furthest(way).Dot(way)) + bodies.Max(body => body.Furthest(-way).Dot(-way));
            return Options.Scale * new Vector3(Along(Vector3.UnitX), Along(Vector3.UnitY), Along(Vector3.UnitZ));
        }
    }

    internal static MockupPlan Of(
        VesselDesign design, Chamber chamber, ImmutableArray<PortSite> sites, ImmutableArray<Member> members)
    {
        var options = design.Mockup;
        var outside = BodyProfiles.Outside(design.Shell, chamber);
        var plan = With(options.IsSolid ? null : BodyProfiles.Inside(design.Shell, chamber, LeastWall(design, sites)));
        // A room that nothing opens into would be a hollow that no resin or powder leaves.
        if (plan.Inside is not null && plan.Drains.IsEmpty && plan.Ports.All(port => port.Bore is null))
            plan = With(null);
        plan = plan with { Obstacles = [.. Clearances.Of(plan)] };
        if (options.Names == PrintNames.None || !plan.Obstacles.IsEmpty)
            return plan;
        var (marks, missing) = MarkLayout.Of(plan, design);
        return plan with { Marks = marks, MissingMarks = missing };

        // A bore over a head's seam passes no step between two walls.
        static double LeastWall(VesselDesign design, ImmutableArray<PortSite> sites) => sites.Select(site => site.Over).OfType<VesselEnd>()
            .Select(end => Math.Max(design.Head(end).Wall, design.Shell.Wall)).Append(design.Mockup.LeastWall).Max();

        MockupPlan With(Profile? inside) => new(options, outside, inside)
        {
            ShellHeight = design.Shell.Height,
            Ports = [.. sites.Select(site => PortForm.Of(site, outside, inside, options))],
            Drains = inside is null ? [] : [.. options.DrainHoles.Select(hole => DrainForm.Of(hole, outside, inside, options.Scale))],
            Members = [.. members.Select(member => member.Print).OfType<PrintForm>()],
        };
    }
}
