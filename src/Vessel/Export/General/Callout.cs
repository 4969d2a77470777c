using System.Globalization;
using Vessel.Export.Drawing;
using Vessel.Export.Paper;
using Vessel.Geometry;

namespace Vessel.Export.General;

/// <summary>Something beside a view that points into it. A closed set: a balloon, a weld symbol.</summary>
/// <param name="Target">Where it points, on the sheet.</param>
internal abstract record Callout(Point2 Target)
{
    public abstract double Height { get; }

    /// <param name="at">Place on the side of the column that lies next to the view, half-way up.</param>
    /// <param name="way">+1 in a column on the right of the view, -1 on the left.</param>
    public abstract IEnumerable<Item> Items(Point2 at, int way);
}

/// <summary>The number of a part in the list of parts.</summary>
internal sealed record Balloon(Point2 Target, int Number) : Callout(Target)
{
    private const double Radius = 3.2;

    public override double Height => (2 * Radius) + 1;

    public override IEnumerable<Item> Items(Point2 at, int way)
    {
        var middle = at + new Point2(way * (Radius + 1), 0);
        yield return Stroke.Line(Target, at + new Point2(way, 0), Pens.Thin);
        yield return new Circle(middle, Radius, Pens.Thin);
        yield return Text.Middle(Number.ToString(CultureInfo.InvariantCulture), middle, 2.5);
        // ISO 128: a leader that ends within an outline ends with a dot.
        yield return new Area([new Circle(Target, 0.5, Pens.Arrow)], Pens.Arrow);
    }
}

/// <param name="Hidden">It lies on a side that no view shows.</param>
internal sealed record WeldCallout(Point2 Target, WeldSymbol Symbol, bool Hidden) : Callout(Target)
{
    public override double Height => WeldSymbol.Height;

    public override IEnumerable<Item> Items(Point2 at, int way)
    {
        var elbow = at + new Point2(way * 2, 0);
        yield return Stroke.Line(Target, elbow, Hidden ? Pens.Hidden : Pens.Thin);
        yield return Dimensions.Arrow(Target, elbow - Target, 2);
        foreach (var item in Symbol.Items(elbow, way))
            yield return item;
    }
}

/// <summary>A column of callouts in the order of what they point at, so that their lines do not cross.</summary>
internal static class CalloutColumn
{
    /// <param name="x">Place of the column's side next to the view.</param>
    /// <param name="room">Lowest and highest place.</param>
    public static IEnumerable<Item> Items(IEnumerable<Callout> callouts, double x, int way, Interval room)
    {
        var sorted = callouts.OrderBy(callout => callout.Target.V).ThenByDescending(callout => callout.Target.U).ToList();
        var places = Spread.Of([.. sorted.Select(callout => (callout.Target.V, callout.Height))], room);
        return sorted.Zip(places).SelectMany(callout => callout.First.Items(new(x, callout.Second), way));
    }
}
