using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Tests.Support;

/// <summary>Closed curves that tests share, as functions of a parameter.</summary>
internal static class Curves
{
    public static Loop2 Ellipse(double a, double b, double turned = 0) => Smooth(
        t => Turn(new(a * Math.Cos(t), b * Math.Sin(t)), turned),
        t => Turn(new(-a * Math.Sin(t), b * Math.Cos(t)), turned));

    /// <summary>The hole that a branch of radius r, offset by e, makes in the unrolled cylinder of radius R.</summary>
    public static Loop2 Saddle(double shell, double offset, double branch) => Smooth(
        t => new(shell * Math.Asin((offset + (branch * Math.Sin(t))) / shell), -branch * Math.Cos(t)),
        t =>
        {
            var side = offset + (branch * Math.Sin(t));
            return new(shell * branch * Math.Cos(t) / Math.Sqrt((shell - side) * (shell + side)), branch * Math.Sin(t));
        });

    /// <summary>A strip whose upper edge is a wave: the flat of a coped tube looks like it.</summary>
    public static Loop2 WavyStrip(double width, double height, double depth)
    {
        var k = 2 * Math.PI / width;
        var wave = new GraphCurve2(
            t => new(width - t, height + (depth * Math.Sin(k * t))), t => new(-1, depth * k * Math.Cos(k * t)), new(0, width), []);
        Point2 left = new(0, 0), right = new(width, 0);
        return new([new Line2(left, right), new Line2(right, wave.Start), wave, new Line2(wave.End, left)]);
    }

    public static Loop2 Reversed(Loop2 loop) =>
        new([.. loop.Edges.Reverse().Select(edge => edge switch
        {
            Line2 line => new Line2(line.B, line.A),
            Arc2 arc => new Arc2(arc.Center, arc.Radius, arc.From + arc.Sweep, -arc.Sweep),
            _ => (Curve2)new GraphCurve2(
                t => edge.At(-t), t => -edge.Slope(-t), new(-edge.Domain.End, -edge.Domain.Start),
                [.. edge.Breaks.Reverse().Select(t => -t)]),
        })]);

    public static Loop2 Smooth(Func<double, Point2> at, Func<double, Point2> slope, params ImmutableArray<double> breaks) =>
        new([new GraphCurve2(at, slope, Interval.Turn, breaks)]);

    private static Point2 Turn(Point2 p, double angle) => (p.U * Point2.Polar(1, angle)) + (p.V * Point2.Polar(1, angle).Turned);
}
