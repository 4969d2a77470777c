using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Members.Brackets;

/// <summary>An edge that meets the shell, on the flat, with tabs that reach through the wall and end along the bore.</summary>
/// <param name="Between">The edge coped to a cylinder of that radius, from one place along it to another.</param>
internal sealed record TabbedEdge(Func<double, double, double, IEnumerable<Curve2>> Between, double ShellRadius, double BoreRadius)
{
    /// <summary>Curves from one end to the other, either way.</summary>
    public ImmutableArray<Curve2> Walk(double from, double to, IEnumerable<ShellTab> tabs)
    {
        var way = Math.Sign(to - from);
        var edges = ImmutableArray.CreateBuilder<Curve2>();
        var here = from;
        foreach (var tab in tabs.OrderBy(tab => way * tab.Along))
        {
            var half = way * tab.Bracket.Tabs!.Width / 2;
            Add(Between(ShellRadius, here, tab.Along - half));
            Add(Between(BoreRadius, tab.Along - half, tab.Along + half));
            here = tab.Along + half;
        }

        Add(Between(ShellRadius, here, to));
        return edges.ToImmutable();

        // A tab's side joins what it stands between.
        void Add(IEnumerable<Curve2> curves)
        {
            var next = curves.ToList();
            if (edges.Count > 0)
                edges.Add(new Line2(edges[^1].End, next[0].Start));
            edges.AddRange(next);
        }
    }
}
