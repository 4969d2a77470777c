using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Members.Straps;

/// <summary>Both halves of a strap as convex bodies, for questions of distance.</summary>
internal static class StrapForm
{
    /// <summary>The turn that one slice of a bend covers at most, radians.</summary>
    private const double Slice = Math.PI / 48;

    public static OutsideBody Of(Strap strap)
    {
        var spec = strap.Spec;
        var bulge = Math.Max(strap.Halves[0].OuterRadius, spec.InsideRadius + spec.Thickness) * (1 - Math.Cos(Slice / 2));
        ImmutableArray<ConvexBody> hulls = [.. strap.Halves.SelectMany(Half)];
        return new(Slug.Of(strap.Halves[0].Name), strap.Name, strap.Path, [.. hulls.Select(hull => (hull, bulge))], Ball.Round(hulls));
    }

    private static IEnumerable<Hull> Half(StrapSite site)
    {
        var (sheet, from) = (site.Sheet, 0.0);
        foreach (var bend in sheet.Bends)
        {
            var zone = bend.Zone(sheet.Thickness);
            yield return Body(from, zone.Start);
            var slices = (int)Math.Ceiling(Math.Abs(bend.Angle) / Slice);
            for (var i = 0; i < slices; i++)
                yield return Body(zone.At((double)i / slices), zone.At((i + 1.0) / slices));
            from = zone.End;
        }

        yield return Body(from, site.Developed);

        Hull Body(double start, double end) => new(
        [
            .. from x in new[] { start, end }
               from y in new[] { 0, site.Strap.Width }
               from depth in new[] { 0, sheet.Thickness }
               select site.Frame.ToOuter(sheet.At(new(x, y), depth)),
        ]);
    }
}
