using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Heads.Cones;
using Vessel.Heads.FlatHeads;
using Vessel.Members.Brackets;
using Vessel.Members.Cups;
using Vessel.Members.InnerTubes;
using Vessel.Members.Screens;
using Vessel.Members.Straps;
using Vessel.Parts;
using Vessel.Tests.Support;

namespace Vessel.Tests.Reassembly;

/// <summary>Lids, what hangs inside, the brackets and the straps.</summary>
internal static class OtherMeetings
{
    public static IEnumerable<Meeting> Of(Assembly vessel, IReadOnlyDictionary<string, CutPiece> pieces) =>
    [
        .. Lid(VesselEnd.Top, vessel, pieces),
        .. Lid(VesselEnd.Bottom, vessel, pieces),
        .. Cone(VesselEnd.Top, vessel, pieces),
        .. Cone(VesselEnd.Bottom, vessel, pieces),
        .. vessel.Design.Inside.Sleeves.SelectMany(sleeve => Sleeve(sleeve, vessel, pieces[Slug.Of(sleeve.Name)])),
        .. vessel.Design.Inside.Caps.SelectMany(cap => Cap(cap, vessel, pieces)),
        .. vessel.Design.Inside.Discs.SelectMany(disc => Disc(disc, vessel, pieces)),
        .. vessel.Design.All<BracketDesign>().SelectMany(bracket => BracketMeetings.Of(
            bracket, vessel.Design.Shell.At(bracket.Height),
            TabMeetings.Plain(bracket, vessel.Design.Shell.At(bracket.Height), pieces[Slug.Of(bracket.Name)]))),
        .. vessel.Design.All<BracketDesign>().SelectMany(bracket => TabMeetings.Of(
            bracket, vessel.Design.Shell.At(bracket.Height), pieces[Slug.Of(bracket.Name)],
            [.. Names.ShellParts(bracket.Height, vessel.Design).Select(id => pieces[id])])),
        .. vessel.Design.All<StrapDesign>().SelectMany(strap => StrapMeetings.Of(strap, vessel.Design.Shell.At(strap.Height), pieces)),
    ];

    private static double FromAxis(Vector3 p) => Math.Sqrt((p.X * p.X) + (p.Y * p.Y));

    /// <summary>An inset lid keeps its clearance from the bore; any lid's holes are round their ports' axes.</summary>
    private static IEnumerable<Meeting> Lid(VesselEnd end, Assembly vessel, IReadOnlyDictionary<string, CutPiece> pieces)
    {
        if (vessel.Design.Head(end) is not FlatHead lid)
            yield break;
        var (name, shell) = (end == VesselEnd.Top ? "top" : "bottom", vessel.Design.Shell.AtEnd(end));
        var piece = pieces[name];
        var (level, up) = end == VesselEnd.Top ? (vessel.Design.Shell.Height, 1) : (0, -1);
        foreach (var at in piece.Outline)
        {
            var (outer, inner) = (piece.InVessel(at, 0), piece.InVessel(at, lid.Wall));
            if (lid.Seat == Seat.Inset)
            {
                yield return new($"{name} in shell",
                    Math.Abs(FromAxis(inner) + lid.Clearance - (shell.OuterRadius - shell.Wall)), piece.Allowed);
                yield return new($"{name}'s recess", Math.Abs((up * (level - outer.Z)) - lid.Recess), piece.Allowed);
            }
            else
            {
                yield return new($"{name} on shell", Math.Abs(inner.Z - level), piece.Allowed);
            }
        }

        var holes = piece.Holes.ToList();
        foreach (var port in vessel.Design.Ports.Where(port => port.End == end))
        {
            var axis = Point2.Polar(port.Place.Radius, port.Place.Angle);
            var radius = port.Joint == PortJoint.SetOn ? port.Bore / 2 : (port.OutsideDiameter / 2) + port.Clearance;
            double Off(Point2 at)
            {
                var p = piece.InVessel(at, 0);
                return Math.Abs((new Point2(p.X, p.Y) - axis).Length - radius);
            }

            yield return new($"{port.Name} in {name}", holes.Min(hole => hole.Max(Off)), piece.Allowed);
        }
    }

    /// <summary>
    /// Rolled up, a cone's inside meets the end of the shell's bore, its narrow edge is round the port at its pole, and the edges
    /// of each seam stand the gap apart.
    /// </summary>
    private static IEnumerable<Meeting> Cone(VesselEnd end, Assembly vessel, IReadOnlyDictionary<string, CutPiece> pieces)
    {
        if (vessel.Design.Head(end) is not ConeHead cone)
            yield break;
        var (name, shell) = (end == VesselEnd.Top ? "top" : "bottom", vessel.Design.Shell.AtEnd(end));
        var level = end == VesselEnd.Top ? vessel.Design.Shell.Height : 0;
        var port = vessel.Design.Ports.Single(port => port.End == end && port.Place.Radius == 0);
        var sheets = pieces.Values.Where(piece => piece.Part.Kind == PartKind.Cone && piece.Part.Path == name)
            .SelectMany(piece => Enumerable.Range(0, piece.Part.Quantity).Select(number => (Cut: piece, Number: number)))
            .ToList();
        yield return new($"{name}'s sheets", sheets.Count == cone.Segments ? 0 : 1, 0);
        foreach (var (piece, number) in sheets)
        {
            var (wide, narrow) = (piece.Outline.Max(at => at.Length), piece.Outline.Min(at => at.Length));
            foreach (var at in piece.Outline.Where(at => at.Length > wide - piece.Allowed))
            {
                var edge = piece.InVessel(at, cone.Wall, number);
                yield return new($"{name} in line with shell", Math.Abs(FromAxis(edge) - (shell.OuterRadius - shell.Wall)), piece.Allowed);
                yield return new($"{name} on shell", Math.Abs(edge.Z - level), piece.Allowed);
            }

            foreach (var at in piece.Outline.Where(at => at.Length < narrow + piece.Allowed))
            {
                var (outside, inside) = (FromAxis(piece.InVessel(at, 0, number)), FromAxis(piece.InVessel(at, cone.Wall, number)));
                var off = port.Joint == PortJoint.SetOn ? outside - (port.Bore / 2) : inside - (port.OutsideDiameter / 2) - port.Clearance;
                yield return new($"{port.Name} in {name}", Math.Abs(off), piece.Allowed);
            }
        }

        foreach (var meeting in ConeSeams.Of(name, sheets, cone.HalfAngle, cone.RootGap, cone.Wall, end == VesselEnd.Top))
            yield return meeting;
    }

    /// <summary>A sleeve touches the head that it hangs from, and is as long as it was asked for.</summary>
    private static IEnumerable<Meeting> Sleeve(InnerTubeDesign sleeve, Assembly vessel, CutPiece piece)
    {
        var heights = piece.InVessel(piece.Outline, 0).Select(p => p.Z).ToList();
        var face = HeadSite.Of(sleeve.HangsFrom, vessel.Design).InnerFace;
        var (near, far) = sleeve.HangsFrom == VesselEnd.Top ? (heights.Max(), heights.Min()) : (heights.Min(), heights.Max());
        yield return new($"{sleeve.Name} on head", Math.Abs(near - face), piece.Allowed);
        yield return new($"{sleeve.Name}'s length", Math.Abs(Math.Abs(far - near) - sleeve.Length), 2 * piece.Allowed);
    }

    /// <summary>Plate and skirt are flush outside and touch; a cup that opens up touches its head.</summary>
    private static IEnumerable<Meeting> Cap(CupDesign cap, Assembly vessel, IReadOnlyDictionary<string, CutPiece> pieces)
    {
        var (plate, skirt) = (pieces[Slug.Of(CupDesign.PlateOf(cap.Name))], pieces[Slug.Of(CupDesign.SkirtOf(cap.Name))]);
        var up = cap.Opens == CupOpening.Up;
        var heights = skirt.InVessel(skirt.Outline, 0).Select(p => p.Z).ToList();
        var allowed = plate.Allowed + skirt.Allowed;
        foreach (var at in plate.Outline)
        {
            yield return new($"{cap.Name} plate's rim",
                Math.Abs(FromAxis(plate.InVessel(at, 0)) - (cap.OutsideDiameter / 2)), plate.Allowed);
            // The flat shows the outside of the cup; the skirt stands on the other face.
            yield return new($"{cap.Name} skirt on plate",
                Math.Abs(plate.InVessel(at, cap.Wall).Z - (up ? heights.Min() : heights.Max())), allowed);
        }

        foreach (var p in skirt.InVessel(skirt.Outline, 0))
            yield return new($"{cap.Name} skirt's outside", Math.Abs(FromAxis(p) - (cap.OutsideDiameter / 2)), skirt.Allowed);
        if (up)
            yield return new($"{cap.Name} on head",
                Math.Abs(heights.Max() - HeadSite.Of(cap.HangsFrom, vessel.Design).InnerFace), skirt.Allowed);
    }

    private static IEnumerable<Meeting> Disc(ScreenDesign disc, Assembly vessel, IReadOnlyDictionary<string, CutPiece> pieces)
    {
        var piece = pieces[Slug.Of(disc.Name)];
        var sleeve = vessel.Design.Inside.Sleeves.FirstOrDefault(sleeve => sleeve.Name == disc.Fits);
        var seat = sleeve is null ? vessel.Design.Shell.InnerRadius : (sleeve.OutsideDiameter / 2) - sleeve.Wall;
        return piece.Outline.Select(at => new Meeting(
            $"{disc.Name} in its seat", Math.Abs(FromAxis(piece.InVessel(at, 0)) + disc.Clearance - seat), piece.Allowed));
    }
}
