using Vessel.Design;
using Vessel.Sites;

namespace Vessel.Ports;

/// <summary>Parts inside the vessel that take up the same place; reported at the later of the two.</summary>
internal static class InsideCollisionCheck
{
    public static IEnumerable<Fault> Find(PortSites sites)
    {
        var design = sites.Design;
        var shown = new UnitFormat(design.Units);
        var all = sites.Found.Select(site => site.UprightBody).OfType<InsideBody>().Select(body => (Spec: (InsideSpec?)null, Body: body))
            .Concat(design.All<InsideSpec>().Select(spec => (Spec: (InsideSpec?)spec, Body: spec.Body(design))))
            .ToList();
        return
            from later in all.Select((one, i) => (one.Spec, one.Body, Number: i))
            where later.Spec is not null
            from earlier in all.Take(later.Number)
            where earlier.Body.Meets(later.Body) && !(earlier.Spec is not null && later.Spec.StandsIn(earlier.Spec))
            select later.Spec.Clash(shown, later.Body, earlier.Spec, earlier.Body);
    }
}
