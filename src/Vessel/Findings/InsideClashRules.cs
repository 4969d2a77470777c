using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;
using static Vessel.Model.Allowed;

namespace Vessel.Findings;

/// <summary>Tubes that reach in slanted and nearly touch what stands inside; what they run into is a fault already.</summary>
internal static class InsideClashRules
{
    /// <summary>Less room than a bead or a tube out of true takes up, mm: common practice, no source.</summary>
    public const double Least = 1;

    /// <summary>Bounds on a distance are no further apart, mm.</summary>
    private const double Width = 0.05;

    public static IEnumerable<Measure> Of(Assembly assembly)
    {
        var bodies = InsideSpec.BodiesIn(assembly.Design).ToList();
        return
            from site in assembly.Sites
            let port = site.Port
            where port.InsideLength > 0 && site.Leans
            from body in bodies
            let distance = body.Rings.Select(ring => Between(site, ring)).Where(found => found is not null)
                .MinBy(found => found!.Value.Start)
            where distance is not null
            select new Measure(
                FindingCodes.InsideClash,
                Severity.Warning,
                [Slug.Of(port.Name), Slug.Of(body.Name)],
                () => $"the inner end of '{port.Name}' comes within {NoteText.Length(distance.Value.Start)} to "
                + $"{NoteText.Length(distance.Value.End)} mm of "
                + $"'{body.Name}': a bead or a tube out of true closes that; make its inside length smaller.",
                [new("distance", distance.Value.Start, AtLeast(Least), "mm")],
                assembly.Design.PlaceOf($"{port.Path}.inside_length"),
                $"between the inner end of '{port.Name}' and '{body.Name}'");
    }

    /// <summary>Bounds on the distance of a tube's outside and end from a ring, mm; null where it is surely more than the least.</summary>
    /// <remarks>
    /// A patch of the outside (round the tube, along it) or of its end (round it, from bore to outside) lies within half its
    /// lengths of its middle, and a distance changes by no more than one moves. Patches that cannot bear the least one are left.
    /// </remarks>
    private static Interval? Between(PortSite site, Ring ring)
    {
        var (port, axis) = (site.Port, site.Inward);
        Vector3 At(double around, double radius, double along) =>
            axis.ToOuter(new(radius * Math.Cos(around), radius * Math.Sin(around), along));
        var patches = new List<Patch>
        {
            new(new(0, Turns.Full), new(port.OuterRadius, port.OuterRadius), new(0, port.InsideLength)),
            new(new(0, Turns.Full), new(port.BoreRadius, port.OuterRadius), new(port.InsideLength, port.InsideLength)),
        };
        var best = double.PositiveInfinity;
        while (true)
        {
            var looked = patches.ConvertAll(
                patch => (Patch: patch, Middle: ring.DistanceTo(At(patch.Round.At(0.5), patch.Radius.At(0.5), patch.Along.At(0.5)))));
            best = Math.Min(best, looked.Min(at => at.Middle));
            var low = Math.Max(0, looked.Min(at => at.Middle - at.Patch.Reach));
            if (low > Least)
                return null;
            if (best - low <= Width)
                return new(low, best);
            patches = [.. looked.Where(at => at.Middle - at.Patch.Reach <= best).SelectMany(at => at.Patch.Halves())];
        }
    }

    /// <param name="Round">Angle about the tube's axis.</param>
    /// <param name="Along">Range from where the axis passes the inside.</param>
    private readonly record struct Patch(Interval Round, Interval Radius, Interval Along)
    {
        /// <summary>No place of it lies further from its middle, mm.</summary>
        public double Reach => ((Radius.End * Round.Length) + Radius.Length + Along.Length) / 2;

        public IEnumerable<Patch> Halves()
        {
            var (round, radius, along) = (Radius.End * Round.Length, Radius.Length, Along.Length);
            return round >= radius && round >= along ? [this with { Round = Lower(Round) }, this with { Round = Upper(Round) }]
                : radius >= along ? [this with { Radius = Lower(Radius) }, this with { Radius = Upper(Radius) }]
                : [this with { Along = Lower(Along) }, this with { Along = Upper(Along) }];
        }

        private static Interval Lower(Interval of) => new(of.Start, of.At(0.5));

        private static Interval Upper(Interval of) => new(of.At(0.5), of.End);
    }
}
