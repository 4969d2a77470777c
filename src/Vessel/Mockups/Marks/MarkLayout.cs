using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;

namespace Vessel.Mockups;

/// <summary>
/// Finds the place of each port's name, of the long seams and of their numbers on the outside of a mock-up. Seams come first, then
/// names in the order of the ports; each takes the largest letters for which there is room.
/// </summary>
internal sealed class MarkLayout
{
    /// <summary>Sizes that are tried, from the wanted to the least.</summary>
    private const int Sizes = 4;

    /// <summary>Steps away from what is named, and sideways.</summary>
    private const int Steps = 12;

    /// <summary>A step away, mm of the print.</summary>
    private const double Step = 2;

    /// <summary>The shortest piece of a seam's line, in its widths.</summary>
    private const double ShortestLine = 3;

    private const double Hair = 1e-6;

    private const string NoGround = "the walls are too thin to sink it";

    /// <summary>Sideways from the middle of a port, in half widths.</summary>
    private static readonly ImmutableArray<double> _shares = [0, 0.25, -0.25, 0.5, -0.5];

    private readonly MockupDesign _options;
    private readonly double _rise;
    private readonly MarkRoom _room;
    private readonly ImmutableArray<MarkGround> _grounds;
    private readonly ImmutableArray<PrintMark>.Builder _marks = ImmutableArray.CreateBuilder<PrintMark>();
    private readonly ImmutableArray<MissingMark>.Builder _missing = ImmutableArray.CreateBuilder<MissingMark>();

    private MarkLayout(MockupPlan plan, VesselDesign design)
    {
        _options = plan.Options;
        _rise = (_options.Names == PrintNames.Sunk ? -1 : 1) * _options.LetterDepth / _options.Scale;
        _room = new(plan, _options.Scale, _rise);
        _grounds = [.. MarkGrounds.Of(plan, design).Where(ground => -_rise <= ground.Deepest)];
    }

    /// <param name="plan">Without obstacles.</param>
    public static (ImmutableArray<PrintMark> Marks, ImmutableArray<MissingMark> Missing) Of(MockupPlan plan, VesselDesign design)
    {
        var (layout, numbers) =
            (new MarkLayout(plan, design), new Welds([.. design.Shell.Courses.SelectMany(course => LongSeam.Of(course, design))]));
        if (!layout._room.HasCircle)
            return ([],
                [.. plan.Ports.Select(
                    port => new MissingMark(port.Site.Port.Name, "no edge of the outline is free of ports", port.Site.Port.Path))]);
        foreach (var course in design.Shell.Courses)
        {
            foreach (var (number, angle) in numbers.Up(course).Zip(course.Seams.Angles))
                layout.AddSeam(course, course.SeamPath, angle, number);
        }

        foreach (var port in plan.Ports)
            layout.AddName(port);
        return (layout._marks.ToImmutable(), layout._missing.ToImmutable());
    }

    private void AddSeam(ShellCourse course, string path, double angle, string number)
    {
        if (_grounds.FirstOrDefault(ground => ground.Name == course.Name) is not { } ground)
        {
            _missing.Add(new(number, NoGround, path));
            return;
        }

        // Arcs are true where the course is narrowest.
        var width = LetterSize.Of(_options.LetterHeight, _options.Scale).Bar;
        var chart = ground.About(angle, course.Low < course.High ? ground.Stations.Start : ground.Stations.End);
        Box2 Line(Interval along) => new(new(-width / 2, along.Start), new(width / 2, along.End));
        var lines = _room.Free(chart, width)
            .Where(along => along.Length >= ShortestLine * width)
            .Select(Line)
            .Where(line => _room.IsFreeInAir(chart, line))
            .ToList();
        if (lines.Count == 0)
        {
            _missing.Add(new(number, "nothing of its seam is free", path));
            return;
        }

        _marks.Add(new(number, chart, [.. lines.Select(Outline)], null, _rise));
        foreach (var line in lines)
            _room.Take(chart, line);
        Add(number, path, size => AlongSeam(number, chart, (width / 2) + Away, size));
    }

    private void AddName(PortForm port)
    {
        var (name, host, path) = (port.Site.Port.Name, port.Site.Port.Host, port.Site.Port.Path);
        if (!PrintLetters.Shows(name))
            _missing.Add(new(name, "none of its letters can be printed", path));
        else if (host == PortHost.Shell)
            Add(name, path, size => Beside(port, null, size));
        else
            Add(name, path, size => [.. _grounds.Where(ground => ground.Name == Names.Of(host))
                .SelectMany(head => Beside(port, head, size)), .. NearEnd(port, size)]);
    }

    /// <summary>The first place that is free, in the largest letters.</summary>
    private void Add(string text, string path, Func<LetterSize, IEnumerable<Place>> places)
    {
        for (var i = 0; i < Sizes; i++)
        {
            var height = _options.LetterHeight + ((LetterSize.LeastHeight - _options.LetterHeight) * i / (Sizes - 1));
            var size = LetterSize.Of(height, _options.Scale);
            foreach (var (shown, chart, centre) in places(size))
            {
                var corner = centre - (0.5 * new Point2(PrintLetters.Width(shown, size), size.Height));
                var box = new Box2(corner, (2 * centre) - corner);
                if (!_room.Holds(chart, box))
                    continue;
                _marks.Add(new(text, chart, [.. PrintLetters.Bars(shown, size).Select(bar => Moved(bar.Corners, corner))], height, _rise));
                _room.Take(chart, box);
                return;
            }
        }

        _missing.Add(new(text, _grounds.IsEmpty ? NoGround : "there is no free room for it in letters of 5 mm", path));
    }

    /// <summary>Beside a seam's line, from its middle outward.</summary>
    private IEnumerable<Place> AlongSeam(string number, MarkChart chart, double away, LetterSize size) =>
        from step in Enumerable.Range(0, 8 * Steps)
        from side in (int[])[1, -1]
        let up = (step % 2 == 0 ? 1 : -1) * ((step + 1) / 2) * Step / _options.Scale
        select new Place(number, chart, new(side * (away + (PrintLetters.Width(number, size) / 2)), chart.Ground.Stations.At(0.5) + up));

    /// <summary>Under, over or to one side of a port, the nearest first.</summary>
    /// <param name="head">Head that it stands in; null for the shell.</param>
    private IEnumerable<Place> Beside(PortForm port, MarkGround? head, LetterSize size)
    {
        var (name, taken) = (port.Site.Port.Name, _room.Of(port));
        var own = head?.About(0, 0) ?? ChartAt(port.Angle, taken.Stations.At(0.5));
        if (own?.BoxOf(taken.Points, taken.Stations, taken.Angle) is not { } foot)
            yield break;
        var middle = 0.5 * (foot.Min + foot.Max);
        var half = 0.5 * new Point2(PrintLetters.Width(name, size) + foot.Width, size.Height + foot.Height);
        for (var step = 0; step < Steps; step++)
        {
            var away = Away + (step * Step / _options.Scale);
            foreach (var share in _shares)
            {
                foreach (var up in (int[])[-1, 1])
                {
                    var centre = middle + new Point2(share * half.U, up * (half.V + away));
                    if ((head is null ? ChartAt(port.Angle, centre.V) : own) is { } chart)
                        yield return new(name, chart, centre);
                }
            }

            foreach (var side in (int[])[1, -1])
                yield return new(name, own, middle + new Point2(side * (half.U + away), 0));
        }
    }

    /// <summary>Places on the shell at the end that a head's port stands beyond, with an arrow to it.</summary>
    private IEnumerable<Place> NearEnd(PortForm port, LetterSize size)
    {
        var isTop = port.Site.Port.Host == PortHost.Top;
        var text = $"{(isTop ? PrintLetters.Up : PrintLetters.Down)} {port.Site.Port.Name}";
        var courses = _grounds.Where(ground => !ground.IsFlat).ToList();
        if (courses.Count == 0)
            yield break;
        var stations = courses[isTop ? ^1 : 0].Stations;
        for (var step = 0; step < Steps; step++)
        {
            var inward = _room.Edge + Hair + (size.Height / 2) + (step * Step / _options.Scale);
            for (var slide = 0; slide <= 2 * Steps; slide++)
            {
                var aside = (slide % 2 == 0 ? 1 : -1) * ((slide + 1) / 2) * 2 * Step / _options.Scale;
                if (ChartAt(port.Angle, isTop ? stations.End - inward : stations.Start + inward) is { } chart)
                    yield return new(text, chart, new(aside, isTop ? stations.End - inward : stations.Start + inward));
            }
        }
    }

    private double Away => _room.Clear + Hair;

    private MarkChart? ChartAt(double angle, double station) =>
        _grounds.FirstOrDefault(ground => !ground.IsFlat && ground.Stations.Contains(station))?.About(angle, station);

    private static ImmutableArray<Point2> Outline(Box2 box) => [box.Min, new(box.Max.U, box.Min.V), box.Max, new(box.Min.U, box.Max.V)];

    private static ImmutableArray<Point2> Moved(ImmutableArray<Point2> outline, Point2 by) =>
        ImmutableArray.CreateRange(outline, p => p + by);

    /// <summary>Somewhere that a text may stand.</summary>
    /// <param name="Centre">Centre in the chart.</param>
    private readonly record struct Place(string Text, MarkChart Chart, Point2 Centre);
}
