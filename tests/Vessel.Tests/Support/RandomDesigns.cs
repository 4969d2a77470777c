using System.Collections.Concurrent;
using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Heads.Cones;
using Vessel.Heads.Dishes;
using Vessel.Heads.FlatHeads;
using Vessel.Ports;
using Vessel.Reading;
using Vessel.Stock;
using Xunit;

namespace Vessel.Tests.Support;

/// <summary>
/// Valid designs, the same for the same seed: sheet and tube, thick and thin walls, offsets up to near the tangent, tilts
/// to 60 degrees either way, shells of one to four sheets, branches nearly as wide as the shell, every joint, cut and head, ports anywhere on heads, upright
/// and square to them, some over a spun dish's seam. Holes stay two walls off ends, heads, seam and each other.
/// </summary>
internal static class RandomDesigns
{
    private const int Dividers = 100;

    /// <summary>How many there are; VESSEL_SEEDS asks for fewer in a quick look, or for more in a campaign.</summary>
    private static readonly int _count = int.TryParse(Environment.GetEnvironmentVariable("VESSEL_SEEDS"), out var asked) ? asked : 100;

    private const int Elbows = 7919;

    private const int Sheets = 15485863;

    private static readonly ConcurrentDictionary<int, VesselDesign> _designs = new();

    private static readonly ImmutableArray<Lazy<Assembly>> _assemblies =
        [.. Enumerable.Range(0, _count).Select(seed => new Lazy<Assembly>(() => Compiler.Assemble(At(seed))))];

    /// <summary>The test's name shows the seed.</summary>
    public static TheoryData<int> Seeds { get; } = new(Enumerable.Range(0, _count));

    /// <summary>Built once for all laws; those beyond the count each time.</summary>
    public static Assembly Built(int seed) => seed < _count ? _assemblies[seed].Value : Compiler.Assemble(At(seed));

    /// <summary>Made once for all laws: most of it is thrown away by the checks, which is what takes the time.</summary>
    public static VesselDesign At(int seed) => _designs.GetOrAdd(seed, Made);

    private static VesselDesign Made(int seed)
    {
        var dice = new Dice(seed);
        var form = dice.Chance(0.5) ? StockForm.Sheet : StockForm.Tube;
        var diameter = dice.Between(40, 300);
        var shell = Designs.Shell(
            diameter, Math.Max(0.8, diameter / 2 * dice.Between(0.015, 0.12)), diameter * dice.Between(2, 5), form) with
        {
            SeamAngle = form == StockForm.Sheet ? dice.Between(0, Turns.Full) : 0,
            RootGap = form == StockForm.Sheet ? dice.Between(0, 2) : 0,
            Sheets = form == StockForm.Sheet && new Dice(seed + Sheets) is var other && other.Chance(0.4) ? 2 + other.Pick(3) : 1,
        };
        var vessel = Designs.Vessel(shell) with { Top = Head(dice, shell, "top"), Bottom = Head(dice, shell, "bottom") };
        // Dice of their own, lest every design changes with each new choice.
        var more = new Dice(seed + Dividers);
        vessel = vessel with { Top = Divided(more, shell, vessel.Top), Bottom = Divided(more, shell, vessel.Bottom) };
        var spun = new Dice(seed + (2 * Dividers));
        vessel = vessel with { Top = Spun(spun, shell, vessel.Top), Bottom = Spun(spun, shell, vessel.Bottom) };
        for (var i = 0; i < 3; i++)
            vessel = With(vessel, 20, () => Branch(dice, vessel.Shell, $"branch {i}"));
        foreach (var end in (PortHost[])[PortHost.Top, PortHost.Bottom])
        {
            if (vessel.Head(end) is ConeHead)
                vessel = WithTip(dice, vessel, end);
            for (var i = 0; i < 2; i++)
                vessel = With(vessel, 6, () => OnHead(dice, vessel, end, $"{end} {i}"));
        }

        vessel = vessel with { Ports = [.. Flush(new Dice(seed - Elbows), vessel)] };
        vessel = vessel with { Ports = [.. Windowed(new Dice(seed + (2 * Elbows)), vessel)] };
        return Bent(new Dice(seed + Elbows), vessel);
    }

    /// <summary>Windows in some of the tubes that stand free inside: round, slots, rectangles, one or many, up to a wall from each other.</summary>
    private static IEnumerable<PortDesign> Windowed(Dice dice, VesselDesign vessel) => vessel.Ports.Select(port =>
    {
        var room = PortSites.Of(vessel).Of(port).FreeLength - (2 * port.Wall);
        if (!(port.Thread is null && room > port.Wall && dice.Chance(0.7)))
            return port;
        var count = 1 + dice.Pick(6);
        var width = dice.Between(0.2, 0.95) * ((Math.PI * port.OutsideDiameter / count) - port.Wall);
        var isRound = dice.Chance(0.3);
        var height = isRound ? width = Math.Min(0.95 * room, Math.Min(width, port.OutsideDiameter)) : dice.Between(0.2, 0.95) * room;
        var half = Math.Min(width, height) / 2;
        var row = new WindowsDesign(
            $"{port.Path}.windows", count, width, height, isRound ? half : half * (dice.Pick(3) / 2.0), port.Wall + dice.Between(0, room - height),
            dice.Between(0, Turns.Full))
        {
            IsRound = isRound,
        };
        var grown = vessel with { Ports = [port with { Windows = [row] }] };
        return PortWindowCheck.Find(PortSites.Of(grown)).Any() ? port : grown.Ports[0];
    });

    /// <summary>Some that are set in end flush inside, where the language takes that.</summary>
    private static IEnumerable<PortDesign> Flush(Dice dice, VesselDesign vessel) => vessel.Ports.Select(port =>
        port is { Joint: PortJoint.SetIn, Thread: null } && dice.Chance(0.4) && port with { IsFlush = true, InsideLength = 0 } is var flush
        && PortSites.Of(vessel) is var sites && sites.Stand(flush).Site?.Over == sites.Stand(port).Site?.Over ? flush : port);

    /// <summary>Some of the tubes with elbows; whether the pieces keep clear of the vessel is no matter of its parts.</summary>
    private static VesselDesign Bent(Dice dice, VesselDesign vessel)
    {
        for (var i = 0; i < vessel.Ports.Length; i++)
        {
            if (vessel.Ports[i] is not { Thread: null } port || !dice.Chance(0.4))
                continue;
            var bent = vessel with { Ports = vessel.Ports.SetItem(i, Bent(dice, port)) };
            if (!BranchReachCheck.Find(PortSites.Of(bent)).Concat(ElbowCheck.Find(bent)).Any())
                vessel = bent;
        }

        return vessel;
    }

    private static PortDesign Bent(Dice dice, PortDesign port)
    {
        var pieces = 2 + dice.Pick(4);
        var shape = new ElbowDesign(
            $"{port.Path}.elbow", Math.Min(Math.PI, (pieces - 1) * dice.Between(0.1, 1) * ElbowDesign.MostTurn), 0, pieces, dice.Between(0, Turns.Full), 0,
            (MitreCut)dice.Pick(2));
        var elbow = shape with { Radius = port.OuterRadius + (port.Wall / shape.Slope * dice.Between(0.5, 5)) };
        if (pieces == 2 && dice.Chance(0.5))
            elbow = elbow with { Radius = 0 };
        elbow = elbow with { EndLength = port.Wall + (port.OuterRadius * elbow.Slope) + dice.Between(1, 40) };
        return port with { Elbow = elbow, Length = port.Length + port.Wall + (port.OuterRadius * elbow.Slope) };
    }

    private static HeadDesign Head(Dice dice, ShellDesign shell, string end)
    {
        var wall = shell.Wall * dice.Between(0.8, 2.5);
        var thin = shell.Wall * dice.Between(0.7, 1.3);
        var flange = dice.Chance(0.5) ? 0 : shell.OutsideDiameter * dice.Between(0.02, 0.2);
        return dice.Pick(6) switch
        {
            0 => Designs.Inset(shell, end, wall, dice.Chance(0.5) ? 0 : dice.Between(0, 3 * shell.Wall), dice.Between(0, 0.4)),
            1 => Designs.Overlay(end, shell.OutsideDiameter * dice.Between(0.99, 1.15), wall),
            2 => Designs.Dome(shell, end) with { Wall = thin, Flange = flange },
            3 => new EllipsoidHead(end, Designs.Stainless, thin) { Flange = flange },
            4 => Torisphere(dice, shell, end, thin) with { Flange = flange },
            _ => new ConeHead(
                end, Designs.Stainless, thin, dice.Between(15, 70) * Math.PI / 180, dice.Between(0, Turns.Full), dice.Between(0, 1)),
        };
    }

    /// <summary>A dish now and then of gores, a cone of segments.</summary>
    private static HeadDesign Divided(Dice dice, ShellDesign shell, HeadDesign head) => head switch
    {
        DishedHead dish when dice.Chance(0.4) => dish with { Gores = Gores(dice, shell, dish) },
        ConeHead cone when dice.Chance(0.5) => cone with { Segments = 2 + dice.Pick(4) },
        _ => head,
    };

    /// <summary>A plate now and then with a flange, a cone with nose and knuckle.</summary>
    private static HeadDesign Spun(Dice dice, ShellDesign shell, HeadDesign head)
    {
        var (wall, bore) = (shell.Wall * dice.Between(0.7, 1.3), shell.InnerRadius);
        var flange = dice.Chance(0.5) ? 0 : shell.OutsideDiameter * dice.Between(0.02, 0.2);
        return head switch
        {
            FlatHead when dice.Chance(0.4) => new PanHead(head.Path, head.Material, wall, bore * dice.Between(0.03, 0.5)) { Flange = flange },
            ConeHead cone when dice.Chance(0.5) => new ToriconeHead(
                head.Path, head.Material, wall, cone.HalfAngle, bore * dice.Between(0.03, 0.4), bore * dice.Between(0.03, 0.4))
            { Flange = flange },
            _ => head,
        };
    }

    /// <summary>The polar cap is from just wider than so many tips want to nearly as wide as the dish.</summary>
    private static GoreDesign Gores(Dice dice, ShellDesign shell, DishedHead head)
    {
        var count = 6 + dice.Pick(9);
        var least = 1.05 * count * head.Wall / Math.PI;
        var most = 0.9 * (shell.OutsideDiameter - (2 * head.Wall));
        return new($"{head.Path}.gores", count, least + (dice.Between(0.2, 1) * (most - least)), dice.Between(0, Turns.Full));
    }

    private static TorisphereHead Torisphere(Dice dice, ShellDesign shell, string end, double wall)
    {
        var (crown, knuckle) = dice.Pick(3) switch
        {
            0 => (1, 0.1),
            1 => (0.8, 0.154),
            _ => (dice.Between(0.55, 1.2), dice.Between(0.05, 0.3)),
        };
        return new(end, Designs.Stainless, wall, crown * shell.OutsideDiameter, knuckle * shell.OutsideDiameter, null);
    }

    /// <summary>With the port that closes a cone, or with a plate instead of the cone where none of the tries fits.</summary>
    private static VesselDesign WithTip(Dice dice, VesselDesign vessel, PortHost end)
    {
        for (var i = 0; i < 20; i++)
        {
            var port = OnHead(dice, vessel, end, $"{end} tip");
            var grown = With(vessel, 1, () => port with { Place = new(0, port.Place.Angle, 0, 0, 0) });
            if (grown != vessel)
                return grown;
        }

        var plate = Designs.Inset(vessel.Shell, vessel.Head(end).Path);
        return end == PortHost.Top ? vessel with { Top = plate } : vessel with { Bottom = plate };
    }

    /// <summary>The vessel with one more port, or without where none of the tries fits.</summary>
    private static VesselDesign With(VesselDesign vessel, int tries, Func<PortDesign> next)
    {
        for (var i = 0; i < tries; i++)
        {
            var port = next() with { Path = $"ports[{vessel.Ports.Length}]" };
            var grown = vessel with { Ports = vessel.Ports.Add(port) };
            if (!DesignCheck.Find(grown).Any() && HasRoom(vessel, port))
                return grown;
        }

        return vessel;
    }

    private static PortDesign Branch(Dice dice, ShellDesign shell, string name)
    {
        var setIn = dice.Chance(0.4);
        var clearance = setIn && dice.Chance(0.6) ? dice.Between(0.02, 0.4) : 0;
        var room = (setIn ? shell.InnerRadius : shell.OuterRadius) - clearance;
        var radius = room * (dice.Chance(0.2) ? dice.Between(0.9, 0.97) : dice.Between(0.06, 0.5));
        var side = room - radius;
        var offset = dice.Pick(4) switch
        {
            0 => 0,
            1 => 0.999 * side * (dice.Chance(0.5) ? 1 : -1),
            _ => dice.Between(-side, side),
        };
        var tilt = dice.Chance(0.4) ? 0 : dice.Between(-Math.PI / 3, Math.PI / 3);
        var place = new PortPlace(dice.Between(0, shell.Height), dice.Between(0, Turns.Full), offset, tilt, 0);
        var port = Designs.Branch(name, 2 * radius, radius * dice.Between(0.04, 0.3), place) with
        {
            Joint = setIn ? PortJoint.SetIn : PortJoint.SetOn,
            Cut = setIn ? EndCut.Square : (EndCut)dice.Pick(3),
            Clearance = clearance,
            InsideLength = setIn ? dice.Between(0, shell.InnerRadius / 4) : 0,
        };
        return port with { Length = (2 * radius * Math.Abs(Math.Tan(tilt))) + dice.Between(5, 60) };
    }

    private static PortDesign OnHead(Dice dice, VesselDesign vessel, PortHost end, string name)
    {
        var setIn = dice.Chance(0.5);
        var bung = dice.Chance(0.3);
        var formed = vessel.Head(end) is not FlatHead;
        var radius = bung ? dice.Between(8.6, 14) : vessel.Shell.InnerRadius * dice.Between(0.05, 0.6);
        return (Designs.OnHead(
            name,
            end,
            2 * radius,
            bung ? radius - (Designs.Thread.TapDrill / 2) : radius * dice.Between(0.04, 0.3),
            dice.Chance(formed ? 0.3 : 0.2) ? 0 : vessel.Shell.InnerRadius * dice.Between(formed ? 0.1 : 0, 0.9),
            dice.Between(0, Turns.Full)) is var port && dice.Chance(0.5)
            ? port with { Place = port.Place with { SquareToSurface = true } }
            : port) with
        {
            Joint = setIn ? PortJoint.SetIn : PortJoint.SetOn,
            Cut = setIn ? EndCut.Square : (EndCut)dice.Pick(3),
            Clearance = setIn ? dice.Between(0, 0.3) : 0,
            InsideLength = setIn ? dice.Between(0, 20) : 0,
            Length = dice.Between(5, 60) + (formed ? radius : 0),
            Thread = bung ? Designs.Thread : null,
        };
    }

    private static bool HasRoom(VesselDesign vessel, PortDesign port) => port.Host == PortHost.Shell
        ? HasRoomOnShell(vessel, port)
        : HasRoomOnHead(vessel, port);

    /// <summary>Grown by two walls it would still be taken.</summary>
    private static bool HasRoomOnHead(VesselDesign vessel, PortDesign port)
    {
        var wall = vessel.Head(port.Host).Wall;
        var wider = port with { OutsideDiameter = port.OutsideDiameter + (4 * wall), Bore = port.Bore + (4 * wall), Length = 1000 };
        var crowded = vessel with { Ports = vessel.Ports.Add(wider) };
        var overSeams = vessel.Head(port.Host) switch
        {
            ConeHead cone => ConeCheck.OverSeams(new(vessel.Units), crowded, port.Host, cone),
            DishedHead { Gores: { } gores } dish => GoreCheck.Find(new(vessel.Units), crowded, port.Host, dish, gores),
            _ => [],
        };
        var sites = PortSites.Of(crowded);
        return !HeadPortCheck.Find(sites).Any() && !overSeams.Any() && !OverlapCheck.InHeads(sites).Any();
    }

    private static double Wide(PortDesign port) => port.OuterRadius + port.Clearance;

    private static bool HasRoomOnShell(VesselDesign vessel, PortDesign port)
    {
        var shell = vessel.Shell;
        if (Math.Abs(port.Place.Offset) + port.BoreRadius > 0.9999 * shell.InnerRadius
            || Math.Abs(port.Place.Offset) + port.OuterRadius > 0.9999 * shell.OuterRadius)
        {
            return false;
        }

        var box = Box(shell, port);
        var over = PortSites.Of(vessel).Stand(port).Site?.Over;
        var wider = port with { OutsideDiameter = port.OutsideDiameter + (4 * shell.Wall), Bore = port.Bore + (4 * shell.Wall), Length = 1000 };
        return (over == PortHost.Bottom ? !OverlapCheck.InHeads(PortSites.Of(vessel with { Ports = vessel.Ports.Add(wider) })).Any() : box.Low.V > Depth(vessel.Bottom))
            && (over == PortHost.Top ? !OverlapCheck.InHeads(PortSites.Of(vessel with { Ports = vessel.Ports.Add(wider) })).Any() : box.High.V < shell.Height - Depth(vessel.Top))
            && (shell.MadeFrom == StockForm.Tube || !Covers(box, shell.SeamAngle, shell.SeamAngle))
            && vessel.Ports.Where(other => other.Host == PortHost.Shell).Select(other => Box(shell, other)).All(other =>
                other.High.V < box.Low.V || other.Low.V > box.High.V || !Covers(box, other.Low.U, other.High.U));
    }

    private static double Depth(HeadDesign head) => head is FlatHead { Seat: Seat.Inset } flat ? flat.Recess + flat.Wall : 0;

    private static bool Covers((Point2 Low, Point2 High) box, double from, double to) =>
        Turns.From(from, box.Low.U) < box.High.U || Turns.From(box.Low.U, from) < to;

    /// <summary>Hole and footprint on every radius of the wall and one wall round them, in (angle, height).</summary>
    private static (Point2 Low, Point2 High) Box(ShellDesign shell, PortDesign port)
    {
        var (place, margin) = (port.Place, shell.Wall);
        var r = Wide(port);
        var away = Math.Sqrt((shell.OuterRadius * shell.OuterRadius) - (place.Offset * place.Offset));
        var points =
            from share in (double[])[0, 0.5, 1]
            from i in Enumerable.Range(0, 360)
            let p = shell.OuterRadius - (share * shell.Wall)
            let phi = Turns.Full * i / 360
            // A set-on tube may stand wider than the inner face.
            let y = Math.Clamp(place.Offset + (r * Math.Sin(phi)), -p, p)
            let x = Math.Sqrt((p * p) - (y * y))
            select new Point2(
                place.Angle + Math.Atan2(y, x),
                place.Height + ((x - away) * Math.Tan(place.Tilt)) - (r * Math.Cos(phi) / Math.Cos(place.Tilt)));
        var all = points.ToList();
        var side = margin / shell.InnerRadius;
        return (new(all.Min(q => q.U) - side, all.Min(q => q.V) - margin), new(all.Max(q => q.U) + side, all.Max(q => q.V) + margin));
    }
}
