namespace Vessel.Design;

/// <summary>Parts inside the vessel that take up the same place; reported at the later of the two.</summary>
internal static class InsideCollisionCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design)
    {
        var shown = new Shown(design.Units);
        var tubes = InsideBodies.OfPorts(design).ToList();
        var sleeves = design.Inside.Sleeves.Select(s => (Design: s, Body: InsideBodies.Of(design, s))).ToList();
        var caps = design.Inside.Caps.Select(c => (Design: c, Body: InsideBodies.Of(design, c))).ToList();
        var discs = design.Inside.Discs.Select(d => (Design: d, Body: InsideBodies.Of(d))).ToList();
        var hanging = tubes.Concat(sleeves.Select(s => s.Body)).Concat(caps.Select(c => c.Body)).ToList();
        return
        [
            .. Pairs(sleeves, tubes).Select(p => Both(p.Later.Body, p.Earlier)),
            .. Pairs(caps, tubes).Select(p => Both(p.Later.Body, p.Earlier)),
            .. sleeves.SelectMany((s, i) => sleeves.Take(i)
                .Where(e => e.Body.Meets(s.Body))
                .Select(e => Both(s.Body, e.Body))),
            .. caps.SelectMany((c, i) => caps.Take(i)
                .Where(e => e.Body.Meets(c.Body))
                .Select(e => Both(c.Body, e.Body))),
            .. caps.SelectMany(c => sleeves
                .Where(s => s.Body.Meets(c.Body))
                .Select(s => CapAndSleeve(shown, c.Design, c.Body, s.Design, s.Body))),
            .. discs.SelectMany(d => hanging
                .Where(h => h.Meets(d.Body) && !IsHost(design, d.Design, h))
                .Select(h => DiscAndOther(shown, d.Design, d.Body, h))),
            .. discs.SelectMany((d, i) => discs.Take(i)
                .Where(e => e.Body.Meets(d.Body))
                .Select(e => Both(d.Body, e.Body))),
        ];
    }

    private static IEnumerable<((T Design, InsideBody Body) Later, InsideBody Earlier)> Pairs<T>(
        IEnumerable<(T Design, InsideBody Body)> later, IReadOnlyList<InsideBody> earlier) =>
        later.SelectMany(l => earlier.Where(e => e.Meets(l.Body)).Select(e => (l, e)));

    /// <summary>A disc that is pressed into a sleeve is wider than its bore, on purpose.</summary>
    private static bool IsHost(VesselDesign design, DiscDesign disc, InsideBody other) => design.Inside.Sleeves
        .Any(s => s.Path == other.Path && InsideNames.AreOne(disc.Fits, s.Name));

    private static Fault Both(InsideBody later, InsideBody earlier) => new(FaultCodes.PartsCollide, later.Path,
        $"'{earlier.Name}' and '{later.Name}' take up the same place.", null, null,
        "Move one of the two, or make one smaller.");

    private static Fault CapAndSleeve(
        Shown shown, CapDesign cap, InsideBody capBody, SleeveDesign sleeve, InsideBody sleeveBody)
    {
        // A cap that is wide enough to stand round the sleeve is not too wide: its plate is too high.
        var standsRound = (cap.OutsideDiameter / 2) - cap.Wall >= sleeve.OutsideDiameter / 2;
        return standsRound
            ? Both(capBody, sleeveBody)
            : new Fault(FaultCodes.TooWideInside, $"{cap.Path}.outside_diameter",
                $"'{cap.Name}' does not enter '{sleeve.Name}'.", shown.Length(cap.OutsideDiameter),
                $"at most {shown.LengthDown(2 * sleeve.InnerRadius)}", "Make the cap narrower, or the sleeve wider.");
    }

    private static Fault DiscAndOther(Shown shown, DiscDesign disc, InsideBody discBody, InsideBody other)
    {
        var need = 2 * other.OuterBeside(discBody);
        var canPass = need < disc.OutsideDiameter;
        return new Fault(FaultCodes.PartsCollide, canPass ? $"{disc.Path}.bore" : $"{disc.Path}.at.height",
            $"'{other.Name}' runs into '{disc.Name}'.", shown.Length(disc.Bore), $"at least {shown.LengthUp(need)}",
            canPass
                ? $"Give the disc a bore of at least {shown.LengthUp(need)}, or move it."
                : "Move the disc; it is too small to have an opening for that.");
    }
}
