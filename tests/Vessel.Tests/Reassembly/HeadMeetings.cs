using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Heads.Dishes;
using Vessel.Parts;

namespace Vessel.Tests.Reassembly;

/// <summary>
/// Dished heads against their shell and the shape asked for: gores as cut by girth at every level and by length along the meridian,
/// blanks of spun heads and of polar caps by area, all on the middle of the wall told by formulas that stand here.
/// </summary>
internal static class HeadMeetings
{
    /// <summary>A gore's side leans by half its angle at the most, 30 degrees:
    /// how much longer a way across is than one square to it.</summary>
    private const double Lean = 1.16;

    public static IEnumerable<Meeting> Of(Assembly vessel, IReadOnlyDictionary<string, CutPiece> blanks) =>
        new[] { VesselEnd.Top, VesselEnd.Bottom }.SelectMany(end => vessel.Design.Head(end) switch
        {
            DishedHead { Gores: { } gores } head => Gores(vessel.Design, end, head, gores, blanks),
            DishedHead head => Blank(Names.Of(end), Middle.Of(vessel.Design.Shell.AtEnd(end), head), blanks[Names.Of(end)]),
            _ => [],
        });

    private static IEnumerable<Meeting> Gores(
        VesselDesign design, VesselEnd end, DishedHead head, GoreDesign gores, IReadOnlyDictionary<string, CutPiece> blanks)
    {
        var (middle, piece) = (Middle.Of(design.Shell.AtEnd(end), head), blanks[Slug.Of(GoreDesign.GoreOf(Names.Of(end)))]);
        var (name, up) = (piece.Part.Name, end == VesselEnd.Top ? 1 : -1);
        var length = piece.Outline.Max(at => up * at.V);
        yield return new($"{name}'s rim", Math.Abs(piece.Outline.Min(at => up * at.V)), piece.Allowed);
        foreach (var at in piece.Outline)
        {
            // On the two ends only the corners reach the girth.
            var m = up * at.V;
            var girth = Turns.Full * middle.RadiusAt(Math.Clamp(m, 0, middle.Length));
            var lacking = (girth / gores.Count / 2) - Math.Abs(at.U);
            var isEnd = m < piece.Allowed || m > length - piece.Allowed;
            yield return new($"{name}'s girth at {m}", isEnd
                ? Math.Max(0, -lacking) : Math.Abs(lacking), (piece.Allowed * Lean) + middle.Error);
        }

        var rims = piece.Outline.Where(at => up * at.V < piece.Allowed).Max(at => at.U) * 2 * gores.Count;
        yield return new($"{name} round the shell", Math.Abs(rims - (Math.PI * (design.Shell.AtEnd(end).OutsideDiameter - head.Wall))),
            2 * gores.Count * piece.Allowed * Lean);
        // The cap goes on where the gores end.
        yield return new(
            $"{name} to cap", Math.Abs(middle.RadiusAt(length) - (gores.CapDiameter / 2)), (2 * piece.Allowed) + middle.Error);
        foreach (var meeting in Blank($"{GoreDesign.CapOf(Names.Of(end))}", middle.Beyond(length),
            blanks[Slug.Of(GoreDesign.CapOf(Names.Of(end)))]))
            yield return meeting;
    }

    /// <summary>Its area is that of the surface that it becomes, within a ring as wide as it may be off.</summary>
    private static IEnumerable<Meeting> Blank(string name, Middle middle, CutPiece piece)
    {
        var radius = piece.Outline.Max(at => at.Length);
        yield return new($"{name}'s blank", Math.Abs(radius - Math.Sqrt(middle.Area / Math.PI)), piece.Allowed + (4 * middle.Error));
    }

    /// <summary>The middle of a head's wall as a chain of points from the rim to the pole: distance from the axis, length so far.</summary>
    private sealed record Middle(IReadOnlyList<(double Radius, double Along)> Chain, double Error)
    {
        public double Length => Chain[^1].Along;

        /// <summary>Frusta between neighbours.</summary>
        public double Area => Chain.Zip(Chain.Skip(1)).Sum(pair =>
            Math.PI * (pair.First.Radius + pair.Second.Radius) * (pair.Second.Along - pair.First.Along));

        public static Middle Of(ShellSection shell, DishedHead head)
        {
            var curve = DishCurve.Of(shell, head, head.Wall / 2);
            var places = DishCurve.Ends.Select(curve.At).ToList();
            var chain = new List<(double Radius, double Along)> { (places[0].U, 0) };
            if (head.Flange > 0)
                chain.Add((places[0].U, head.Flange));
            for (var i = 1; i < places.Count; i++)
                chain.Add((places[i].U, chain[^1].Along + (places[i] - places[i - 1]).Length));
            // Where the torisphere's curve passes from knuckle to crown within a chord, nothing is lost but that chord's arrow.
            return new(chain, curve.Error);
        }

        public double RadiusAt(double along)
        {
            var i = 1;
            while (i + 1 < Chain.Count && Chain[i].Along < along)
                i++;
            var (a, b) = (Chain[i - 1], Chain[i]);
            return a.Radius + ((b.Radius - a.Radius) * (along - a.Along) / (b.Along - a.Along));
        }

        /// <summary>What is left towards the pole.</summary>
        public Middle Beyond(double along) =>
            new([(RadiusAt(along), along), .. Chain.Where(place => place.Along > along)], Error);
    }
}
