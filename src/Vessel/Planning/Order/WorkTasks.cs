using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Joints;
using Vessel.Parts;

namespace Vessel.Planning;

/// <summary>What there is to be done for a vessel, in the order of the parts and welds.</summary>
internal static class WorkTasks
{
    private const double LeastLip = 0.2;

    public static IEnumerable<WorkTask> Of(
        VesselDesign design, ImmutableArray<PortSite> sites, ImmutableArray<Part> parts, ImmutableArray<PlannedWeld> welds)
    {
        foreach (var part in parts)
            yield return new(WorkTask.Making(part), WorkKind.Make, Making(part), Ranks.Make, [part.Id]);
        foreach (var weld in welds)
        {
            yield return new(
                WorkTask.Welding(weld.Joint.Number), WorkKind.Weld, weld.Joint.Name, RankOf(weld, design),
                [.. weld.Joint.Between.Distinct()], weld);
            if (weld.Role is WeldRole.LongSeam or WeldRole.SkirtSeam)
            {
                yield return new(
                    Rounding(weld), WorkKind.Round, $"re-round {weld.Joint.Between[0]} over a bar, dress the seam's root flush",
                    RankOf(weld, design), [weld.Joint.Between[0]]);
            }
        }

        foreach (var site in sites)
        {
            foreach (var task in OfPort(site, design))
                yield return task;
        }

        foreach (var disc in design.Inside.Discs.Where(disc => !DiscSeam.IsWelded(disc)))
        {
            yield return new(
                Fitting(disc.Path), WorkKind.Fit, $"{Verb(disc.Fixed)} {disc.Name} into {InternalHost.Name(disc.Fits)}",
                Ranks.Inside, [InternalHost.Id(disc.Fits), Slug.Of(disc.Name)]);
        }

        foreach (var sleeve in design.Inside.Sleeves.Where(sleeve => sleeve.Fixed != Fixing.Weld))
        {
            yield return new(
                Fitting(sleeve.Path), WorkKind.Fit, $"{Verb(sleeve.Fixed)} {sleeve.Name} to {Names.Of(sleeve.HangsFrom)}",
                Ranks.Inside, [Names.Of(sleeve.HangsFrom), Slug.Of(sleeve.Name)]);
        }

        foreach (var packing in design.Inside.Packings)
        {
            yield return new(
                Fitting(packing.Path), WorkKind.Fit,
                $"stuff {packing.Name}, clean and dry; keep the arc a hand's width from it", Ranks.Inside, []);
        }

        yield return new(Cleaning, WorkKind.Clean, WorkText.Cleaning(parts), Ranks.Clean, []);
        yield return new(Testing, WorkKind.Test, WorkText.Testing(design), Ranks.Test, []);
        if (design.Finish != Finish.None)
            yield return new(Finishing, WorkKind.Finish, WorkText.Finishing(design), Ranks.Finish, []);
    }

    public const string Cleaning = "clean";

    public const string Testing = "leak test";

    public const string Finishing = "finish";

    public static string Rounding(PlannedWeld weld) => $"round {weld.Joint.Between[0]}";

    public static string Fitting(string path) => $"fit {path}";

    public static string Plugging(PortDesign port) => $"plug {port.Path}";

    public static string Chasing(PortDesign port) => $"chase {port.Path}";

    public static string Dressing(PortDesign port) => $"dress {port.Path}";

    /// <summary>Which end is welded last: the one that carries the internals, for they go in with it; else the top.</summary>
    public static PortHost ClosingEnd(VesselDesign design)
    {
        var ends = design.Inside.Sleeves.Select(sleeve => sleeve.HangsFrom).Concat(design.Inside.Caps.Select(cap => cap.HangsFrom)).ToList();
        return ends.Count > 0 && ends.TrueForAll(end => end == PortHost.Bottom) ? PortHost.Bottom : PortHost.Top;
    }

    private static IEnumerable<WorkTask> OfPort(PortSite site, VesselDesign design)
    {
        var (port, id) = (site.Port, Slug.Of(site.Port.Name));
        if (port.Thread is { } thread)
        {
            yield return new(
                Plugging(port), WorkKind.Plug, $"screw a brass or old plug into {port.Name} ({thread.Name}), threads coated", Ranks.Ports, [id]);
            yield return new(
                Chasing(port), WorkKind.Chase,
                $"take the plug out of {port.Name} when cold, chase {thread.Thread}; face what seals after welding: leave 0.3 mm for it",
                Ranks.Ports, [id]);
        }

        var lip = PortFit.Lip(site, design);
        if (lip > LeastLip)
        {
            yield return new(
                Dressing(port), WorkKind.Dress,
                FormattableString.Invariant($"dress the lip in the bore of {port.Name} ({lip:0.0} mm) while the shell is open"),
                Ranks.Dress, [id]);
        }
    }

    private static int RankOf(PlannedWeld weld, VesselDesign design) => weld.Role switch
    {
        WeldRole.LongSeam => Ranks.LongSeam,
        WeldRole.GoreSeam or WeldRole.CrownSeam => Ranks.Gores,
        WeldRole.PortSeam => Ranks.Ports,
        WeldRole.BracketEar => Ranks.Bracket,
        WeldRole.HeadSeam => weld.Joint.Path == design.Head(ClosingEnd(design)).Path ? Ranks.Close : Ranks.FirstHead,
        _ => Ranks.Inside,
    };

    private static string Making(Part part)
    {
        var openings = part.Holes.IsEmpty ? "" : ", wrap its drawing round it, cut its openings";
        var many = part.Quantity > 1 ? $"{part.Quantity} x " : "";
        return part.Kind switch
        {
            PartKind.Shell or PartKind.Skirt or PartKind.Sleeve => part.Stock.Form == "tube"
                ? $"saw {part.Name} from tube{openings}, deburr"
                : $"cut {part.Name} from sheet, deburr, roll",
            PartKind.Branch => $"saw {part.Name}, wrap its drawing round it, cut and grind its end, deburr",
            PartKind.Bung => $"turn and tap {part.Name}, or buy it",
            PartKind.Bracket => $"cut {part.Name}, deburr, drill, bend",
            PartKind.Gore => $"cut {many}{part.Name}, deburr, roll and dish to a gauge",
            PartKind.Head or PartKind.Crown => $"cut the blank of {part.Name} and have it spun or dished; trim, drill",
            _ => $"cut {many}{part.Name}, deburr, drill",
        };
    }

    private static string Verb(Fixing fixing) => fixing switch
    {
        Fixing.Screws => "screw",
        Fixing.Press => "press",
        _ => "lay",
    };

    /// <summary>Long seam first; internals while both ends are open; ports; the closing seam last. Common practice.</summary>
    private static class Ranks
    {
        public const int Make = 0;
        public const int LongSeam = 10;
        public const int Gores = 20;
        public const int Inside = 30;
        public const int Ports = 40;
        public const int Dress = 45;
        public const int Bracket = 50;
        public const int FirstHead = 60;
        public const int Clean = 70;
        public const int Close = 80;
        public const int Test = 90;
        public const int Finish = 95;
    }
}
