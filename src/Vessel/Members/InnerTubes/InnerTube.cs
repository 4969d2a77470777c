using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Inside;
using Vessel.Parts;
using Vessel.Planning;

namespace Vessel.Members.InnerTubes;

/// <summary>An inner tube under its head.</summary>
internal sealed class InnerTube(InnerTubeDesign spec, VesselDesign vessel) : Member(spec.Path, spec.Name)
{
    private readonly Interval _heights = InternalHost.Heights(spec.Name, vessel);

    public override IEnumerable<Joint> Joints => spec.IsWelded
        ? [InsideSeams.ToHead(spec, vessel, (Slug.Of(Name), Name), spec.HangsFrom == VesselEnd.Top ? _heights.End : _heights.Start)]
        : [];

    public override IEnumerable<Part> Parts(Welds welds)
    {
        var part = InnerTubePart.Build(spec, _heights.Start, welds);
        yield return part with
        {
            Centre = TubeWalls.Centre(
                part, TubeWalls.Wall(spec.OutsideDiameter, spec.Wall, spec.Length), spec.Length,
                _heights.Start + TubeWalls.Middle(spec.Windows)),
        };
    }

    public override IEnumerable<Part> Printed(double play, Welds welds) => Parts(welds);

    public override IEnumerable<Body> Bodies =>
        [new RingBody(Slug.Of(Name), Frame3.Identity, spec.InnerRadius, spec.OutsideDiameter / 2, _heights.Start, _heights.End)];

    /// <summary>Outside the tube and inside it, with what its windows leave open.</summary>
    public override Enclosure Enclosure(ImmutableArray<Part> parts)
    {
        ImmutableArray<(WindowsDesign Design, double Sill)> rows = [.. spec.Windows.Select(row => (row, _heights.Start + row.Up))];
        return new(
            Name, spec.InnerRadius, spec.OutsideDiameter / 2, _heights, _heights,
            spec.HangsFrom == VesselEnd.Top ? _heights.Start : _heights.End, null,
            rows,
            TubeWalls.InWindows(
                rows,
                TubeWalls.Wall(spec.OutsideDiameter, spec.Wall, spec.Length) - parts.Single(part => part.Path == Path).Volume,
                new(spec.InnerRadius, spec.OutsideDiameter / 2)),
            Path);
    }

    public override SetUp SetUp => SetUpTable.Inside(Name, _heights.Start, vessel, $"lower end; hangs from the {Names.Of(spec.HangsFrom)}");

    public override IEnumerable<WorkTask> Tasks => spec.IsWelded ? [] :
    [
        new(
            WorkTask.Fitting(Path), WorkKind.Fit, $"{InsideWords.Verb(spec.Fixed)} '{Name}' to the {Names.Of(spec.HangsFrom)}",
            WorkRank.Inside,
            [Names.Of(spec.HangsFrom), Slug.Of(Name)]),
    ];
}
