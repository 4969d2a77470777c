using System.Collections.Immutable;
using Vessel.Export.Drawing;
using Vessel.Export.Paper;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;

namespace Vessel.Export.General;

/// <summary>Figures, balloons and weld symbols round the views.</summary>
internal static class SheetNotes
{
    /// <summary>Distance from a view to the columns beside it, mm.</summary>
    private const double Gap = 5;

    /// <summary>A weld's place counts as on the plane of the section when it lies this near, mm.</summary>
    private const double OnPlane = 1.5;

    /// <summary>Cosine of the angle between a seam and the way one looks, at most: a seam seen from its end is a point.</summary>
    private const double MostSteep = 0.9;

    private static readonly Dimensions _dimensions = new(2.2);

    public static IEnumerable<Item> Items(Build build, DrawnVessel drawn, ImmutableArray<PlacedView> placed)
    {
        PlacedView At(DrawnView view) => placed.Single(p => p.Drawn == view);
        var (front, side, top, section) = (At(drawn.Front), At(drawn.Side), At(drawn.Top), At(drawn.Section));
        var callouts = new Dictionary<PlacedView, List<Callout>>();
        foreach (var (view, callout) in Balloons(build, [section, front, side, top]).Concat(Welds(build, [front, top, side], section)))
            (callouts.TryGetValue(view, out var here) ? here : callouts[view] = []).Add(callout);
        return
        [
            .. placed.SelectMany(view => CalloutColumn.Items(
                callouts.GetValueOrDefault(view, []), view.Box.Max.U + Gap, 1, new(view.Cell.Min.V + 2, view.Cell.Max.V - 6))),
            .. Heights(build, front, section),
            .. Widths(build, front),
            .. Angles(build, top),
        ];
    }

    /// <summary>Each part once: on its cut face where it has one, else on the longest line of it that is seen.</summary>
    private static IEnumerable<(PlacedView View, Callout Callout)> Balloons(Build build, PlacedView[] order)
    {
        for (var i = 0; i < build.Parts.Length; i++)
        {
            foreach (var view in order)
            {
                if (Target(view.Drawn, i) is not { } target)
                    continue;
                yield return (view, new Balloon(view.On(target), i + 1));
                break;
            }
        }
    }

    private static Point2? Target(DrawnView view, int part)
    {
        var outlines = view.Cut.Where(cut => cut.Part == part).SelectMany(cut => cut.Outlines).ToList();
        // The callouts of the section stand on its right.
        if (outlines.Count > 0)
            return LongestMiddle(outlines.OrderByDescending(outline => outline.Max(p => p.U)).Take(1));
        var lines = view.Lines.Where(line => line.Part == part && line.Points.Length > 1).Select(line => line.Points).ToList();
        return lines.Count > 0 ? LongestMiddle(lines) : null;
    }

    private static Point2 LongestMiddle(IEnumerable<ImmutableArray<Point2>> lines) => lines
        .SelectMany(line => line.Zip(line.Skip(1)))
        .OrderByDescending(pair => Math.Round((pair.Second - pair.First).Length, 3))
        .ThenByDescending(pair => pair.First.U)
        .Select(pair => 0.5 * (pair.First + pair.Second))
        .First();

    /// <summary>Welds of one kind and size between the same parts share a symbol; it stands where the seam is seen.</summary>
    private static IEnumerable<(PlacedView View, Callout Callout)> Welds(Build build, PlacedView[] outside, PlacedView section)
    {
        var inside = build.Parts.Where(built => built.Part.IsInside).Select(built => built.Part.Id).ToHashSet();
        var units = new TwoUnits(build.Assembly.Design.Units);
        var groups = build.Welds.Select(weld => weld.Figures)
            .GroupBy(weld => (weld.Joint.Kind, weld.Joint.Between[0], weld.Joint.Between[1], NoteText.Length(weld.Joint.Throat),
                NoteText.Length(weld.Length)));
        foreach (var group in groups)
        {
            var numbers = group.Select(weld => weld.Joint.Number).ToList();
            var words = numbers.Count == 1 ? numbers[0] : $"{numbers[0]}-{numbers[^1]}";
            // Through a wide port one may look at a seam inside, but nobody welds it from there.
            var order = group.First().Joint.Between.Any(inside.Contains) ? [section] : outside.Append(section);
            var places = order.Select(view => (View: view, Best: Best(view, group.First()))).ToList();
            if (places.Where(p => p.Best.Seen > 2).Concat(places.Where(p => p.Best.Seen == 2)).FirstOrDefault() is { View: { } view } found)
                yield return (view, Symbol(view, found.Best.Place, words, hidden: false));
            else if (group.First().Stations is [.., var last])
                yield return (places[0].View, Symbol(places[0].View, last.At.Root, $"{words} far side", hidden: true));

            WeldCallout Symbol(PlacedView on, Vector3 place, string tail, bool hidden) =>
                new(on.On(place), new(group.First(), tail, build.Options.WeldSymbols, units), hidden);
        }
    }

    /// <summary>The station that is seen best and, of equals, lies furthest to the right, where the symbols stand.</summary>
    private static (Vector3 Place, int Seen) Best(PlacedView view, WeldFigures weld)
    {
        var drawn = view.Drawn;
        // The ends of a seam that is no ring lie on rims, over which one sees past it.
        var stations = weld.Joint.IsRound ? weld.Stations : weld.Stations[1..];
        return stations
            .Where(station => !drawn.Cut.IsEmpty || IsOpenTo(drawn.View.Toward, station.At))
            .Select(station => station.At.Root)
            .Select(root => (Place: root,
                Seen: drawn.Cut.IsEmpty ? drawn.Hidden.SeenRound(root) : Math.Abs(drawn.View.Depth(root)) < OnPlane ? 4 : 0))
            .OrderByDescending(found => found.Seen)
            .ThenByDescending(found => Math.Round(drawn.View.On(found.Place).U, 3))
            .FirstOrDefault();
    }

    /// <summary>
    /// Neither seen from its end nor from behind: a gap beside a tube lets one see a seam that is laid from the other side.
    /// </summary>
    private static bool IsOpenTo(Vector3 toward, Station at) =>
        Math.Abs(at.Tangent.Dot(toward)) < MostSteep * at.Tangent.Length && (at.AlongHost + at.AlongPart).Dot(toward) > -0.1;

    private static IEnumerable<Item> Heights(Build build, PlacedView front, PlacedView section)
    {
        var (design, units) = (build.Assembly.Design, new TwoUnits(build.Assembly.Design.Units));
        (double, string) Figure(PlacedView view, double z) => (view.On(new Vector3(0, 0, z)).V, units.Of(z).First);
        double[] outside =
        [
            front.Drawn.Bounds.Min.V, 0,
            .. build.Assembly.Sites.Where(site => site.Port.Host == Design.PortHost.Shell).Select(site => site.Port.Place.Height),
            .. design.Shell.Girths, design.Shell.Height, front.Drawn.Bounds.Max.V,
        ];
        var inside = build.Parts
            .Where(built => built.Part.IsInside)
            .SelectMany(built => built.Part.Placements.SelectMany(frame =>
            {
                var heights = built.Mesh.Vertices.Select(v => frame.ToOuter(v).Z).ToList();
                return new[] { heights.Min(), heights.Max() };
            }))
            .Append(0)
            .Concat(design.Shell.Girths)
            .Append(design.Shell.Height);
        return
        [
            .. _dimensions.Ordinates(
                outside.Select(z => Figure(front, z)), front.Box.Min.U - 2, front.Box.Min.U - 9,
                new(front.Cell.Min.V, front.Cell.Max.V - 5)),
            .. _dimensions.Ordinates(
                inside.Select(z => Figure(section, z)), section.Box.Min.U - 2, section.Box.Min.U - 9,
                new(section.Cell.Min.V, section.Cell.Max.V - 5)),
        ];
    }

    /// <summary>Width across the lower edge, and below it across the upper one where that differs.</summary>
    private static IEnumerable<Item> Widths(Build build, PlacedView front)
    {
        var (shell, units) = (build.Assembly.Design.Shell, new TwoUnits(build.Assembly.Design.Units));
        IEnumerable<Item> Across(double radius, double drop, string where) => _dimensions.Between(
            front.On(new Vector3(0, -radius, 0)),
            front.On(new Vector3(0, radius, 0)),
            new(0, front.Box.Min.V - drop - front.On(new Vector3(0, 0, 0)).V),
            $"dia {units.Of(2 * radius).First}{where}");
        var (low, high) = (shell.OuterRadius, shell.AtEnd(Design.VesselEnd.Top).OuterRadius);
        return low == high ? Across(low, 7, string.Empty) : Across(low, 7, " below").Concat(Across(high, 14, " above"));
    }

    /// <summary>Where ports and members stand round the vessel, on lines from its axis.</summary>
    private static IEnumerable<Item> Angles(Build build, PlacedView top)
    {
        var design = build.Assembly.Design;
        var angles = build.Assembly.Sites.Where(site => site.Port.Host == Design.PortHost.Shell).Select(site => site.Port.Place.Angle)
            .Concat(build.Assembly.Members.Select(member => member.Angle).OfType<double>())
            .Select(angle => Turns.From(angle, 0))
            .DistinctBy(angle => NoteText.Degrees(angle));
        foreach (var angle in angles)
        {
            var way = top.Drawn.View.On(new Vector3(Math.Cos(angle), Math.Sin(angle), 0));
            var axis = top.On(default(Point2));
            var rim = Reach(axis, way, top.Box) + 3;
            yield return Stroke.Line(axis, axis + (rim * way), Pens.Chain);
            // Above its line, to be read from below or from the right.
            var along = way.U < -1e-6 || (Math.Abs(way.U) < 1e-6 && way.V < 0) ? -way : way;
            // Ends inside the outline, clear of the weld symbols; right of an upright line, as the letters of the cutting plane stand on
            // its left.
            var words = $"{NoteText.Degrees(angle)} deg";
            var side = Math.Abs(way.U) < 1e-6 ? -along.Turned : along.Turned;
            yield return Text.Middle(words, axis + ((rim - 4 - (Strokes.Width(words, 2.2) / 2)) * way) + (1.8 * side), 2.2, along.Angle);
        }
    }

    /// <summary>Distance from a point inside along a direction to the edge of a box.</summary>
    private static double Reach(Point2 from, Point2 way, Box2 box)
    {
        var across = way.U > 1e-9 ? (box.Max.U - from.U) / way.U : way.U < -1e-9 ? (box.Min.U - from.U) / way.U : double.PositiveInfinity;
        var up = way.V > 1e-9 ? (box.Max.V - from.V) / way.V : way.V < -1e-9 ? (box.Min.V - from.V) / way.V : double.PositiveInfinity;
        return Math.Min(across, up);
    }
}
