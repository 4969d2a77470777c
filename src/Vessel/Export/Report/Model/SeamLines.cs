using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Joints;

namespace Vessel.Export.Report.Model;

/// <summary>A seam as lines to look at: its root, a line a run.</summary>
internal sealed record SeamLines(Joint Joint, ImmutableArray<ImmutableArray<Vector3>> Lines)
{
    public static SeamLines Of(WeldFigures figures)
    {
        var runs = figures.Joint.Welded;
        var each = figures.Stations.Length / runs.Length;
        return new(
            figures.Joint,
            [
                .. runs.Select((run, i) => figures.Stations
                    .Skip(i * each)
                    .Take(each)
                    .Select(station => station.At.Root)
                    .Append(figures.Joint.Along(run.End).Root)
                    .ToImmutableArray()),
            ]);
    }
}
