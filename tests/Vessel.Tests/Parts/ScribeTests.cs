using Vessel.Design;
using Vessel.Export.Drawing;
using Vessel.Export.Dxf;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Parts;

/// <summary>Scribed curves are drawn to the tolerance of the cut, and what they are off is told.</summary>
public sealed class ScribeTests
{
    private static Part Cone(double bore, double offset, double tilt)
    {
        var shell = Designs.Shell(1200, 3, 900) with { TopDiameter = 900 };
        return Compiler.Assemble(
            Designs.Vessel(shell, Designs.Branch("inlet", bore + 6, 3, new(430, 0.3, offset, tilt, 0)) with { Length = 400 }) with
            {
                Top = Designs.Overlay("top", 900),
                Bottom = Designs.Inset(shell.AtEnd(VesselEnd.Bottom), "bottom"),
            }).Parts.Single(part => part.Kind == PartKind.Cone);
    }

    /// <summary>The flat's places are found apart, from the drill's own lines on the cone's outside by its distance from the tip.</summary>
    [Theory]
    [InlineData(488, 0, 0)]
    [InlineData(300, 120, 0.2)]
    [InlineData(40, -300, -0.1)]
    public void What_is_drilled_in_a_cone_is_scribed_within_the_tolerance(double bore, double offset, double tilt)
    {
        const double tolerance = 0.01;
        var part = Cone(bore, offset, tilt);
        var curve = part.Flat!.Marks.OfType<CurveMark>().Single().Curve;
        var fitted = FittedFlat.Of(part.Flat, tolerance);
        var path = (Stroke)fitted.Marks[part.Flat.Marks.IndexOf(part.Flat.Marks.OfType<CurveMark>().Single())];
        var chain = new Loop2([.. path.Edges]);
        var drawn = chain.Edges.SelectMany(edge => Enumerable.Range(0, 400).Select(i => edge.At(edge.Domain.At(i / 400.0)))).ToList();

        Assert.InRange(fitted.Deviation, 1e-6, tolerance);
        // Between the places of either the other runs straight, but for far less than the tolerance.
        var exact = Enumerable.Range(0, 720).Select(i => curve.At(curve.Domain.At(i / 720.0))).ToList();
        Assert.All(exact, at =>
            Assert.InRange(drawn.Zip(drawn.Skip(1).Append(drawn[0]), (a, b) => FromSegment(at, a, b)).Min(), 0, tolerance * 1.05));
        // The derivative is the curve's.
        Assert.All(Enumerable.Range(1, 60).Select(i => curve.Domain.At(i / 61.0)), t =>
            Assert.InRange((curve.Slope(t) - Slopes.Of(curve.At, t, curve.Domain)).Length, 0, 1e-6 * bore));
    }

    private static double FromSegment(Point2 at, Point2 a, Point2 b)
    {
        var along = b - a;
        var share = along.Length == 0 ? 0 : Math.Clamp((at - a).Dot(along) / along.Dot(along), 0, 1);
        return (at - a - (share * along)).Length;
    }

    /// <summary>Wraps of set-in tubes, notches over seams, holes that are cut later: every curve that random designs scribe.</summary>
    [Theory]
    [MemberData(nameof(RandomDesigns.Seeds), MemberType = typeof(RandomDesigns))]
    public void Every_scribed_curve_keeps_to_the_tolerance(int seed) => RandomDesigns.Hold(seed, vessel => Assert.All(
        vessel.Parts.Where(part => part.Flat is not null && part.Flat.Marks.OfType<CurveMark>().Any()),
        part =>
        {
            var fitted = FittedFlat.Of(part.Flat!, 0.01);
            Assert.InRange(fitted.Deviation, 0, 0.01);
            Assert.All(fitted.Marks.Zip(part.Flat!.Marks).Where(pair => pair.Second is CurveMark), pair =>
            {
                var (path, curve) = ((Stroke)pair.First, ((CurveMark)pair.Second).Curve);
                Assert.InRange((path.Vertices[0].At - curve.Start).Length, 0, 0.01);
                Assert.InRange(((path.Closed ? path.Vertices[0] : path.Vertices[^1]).At - curve.End).Length, 0, 0.01);
            });
        }));
}
