using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Brackets;
using Vessel.Members.Plates;
using Vessel.Members.Saddles;

namespace Vessel.Tests.Reassembly;

/// <summary>Brackets of every kind on the shell.</summary>
internal static class BracketMeetings
{
    public static IEnumerable<Meeting> Of(BracketDesign bracket, ShellSection shell, CutPiece piece) => bracket switch
    {
        SaddleDesign saddle => Saddle(saddle, shell, piece),
        PlateDesign plate => Plate(plate, shell, piece),
        _ => throw new NotSupportedException(bracket.Name),
    };

    private static double FromAxis(Vector3 p) => Math.Sqrt((p.X * p.X) + (p.Y * p.Y));

    /// <summary>
    /// Set where the design says, a plate's coped edge touches the shell with some of its thickness all along and cuts into it
    /// nowhere; its width and depth are those of the design.
    /// </summary>
    private static IEnumerable<Meeting> Plate(PlateDesign plate, ShellSection shell, CutPiece piece)
    {
        var (sin, cos) = Math.SinCos(plate.Angle);
        var (outward, side) = (new Vector3(cos, sin, 0), new Vector3(-sin, cos, 0));
        var edge = (Math.Cos(plate.Roll) * side) + (Math.Sin(plate.Roll) * Vector3.UnitZ);
        var middle = (plate.Height * Vector3.UnitZ) + (plate.Offset * side);
        var free = piece.Outline.Max(at => piece.InVessel(at, plate.Thickness / 2).Dot(outward));
        var lowest = Math.Sqrt(Math.Pow(shell.OuterRadius, 2) - Math.Pow(plate.Offset, 2));
        var deepest = double.NegativeInfinity;
        double Out(Point2 at) => piece.InVessel(at, plate.Thickness / 2).Dot(outward);
        double Along(Point2 at) => (piece.InVessel(at, plate.Thickness / 2) - middle).Dot(edge);
        // No other edge of the outline lies nearer to the vessel on the line outward through a place of the coped one.
        bool IsLowest(Point2 at) => piece.Outline.Zip([.. piece.Outline[1..], piece.Outline[0]])
            .Where(side => side.First != at && side.Second != at && Along(side.First) != Along(side.Second)
                && (Along(side.First) - Along(at)) * (Along(side.Second) - Along(at)) <= 0)
            .All(side => Out(side.First) + ((Along(at) - Along(side.First)) / (Along(side.Second) - Along(side.First))
                * (Out(side.Second) - Out(side.First))) > Out(at));
        foreach (var at in piece.Outline)
        {
            // 33 of its thickness hold the ridge to a part of 1e-3 of what it stands out.
            var through = Enumerable.Range(0, 33).Select(i => piece.InVessel(at, plate.Thickness * i / 32)).ToList();
            var (u, off) = ((through[16] - middle).Dot(edge), through.Min(FromAxis) - shell.OuterRadius);
            yield return new($"{plate.Name} into shell", Math.Max(0, -off), piece.Allowed);
            if (Math.Abs(u) < (plate.Width / 2) - 0.01 && IsLowest(at))
            {
                yield return new($"{plate.Name} on shell", Math.Abs(off), piece.Allowed + 2e-3);
                deepest = Math.Max(deepest, Math.Abs(u));
            }

            yield return new($"{plate.Name}'s middle",
                Math.Abs((through[0] + through[32] - (2 * middle)).Dot(edge.Cross(outward))) / 2, piece.Allowed);
        }

        yield return new($"{plate.Name}'s edge was measured", deepest > 0.3 * plate.Width ? 0 : 1, 0.5);
        if (plate.Roll == 0)
            yield return new($"{plate.Name}'s depth", Math.Abs(free - lowest - plate.Depth), 2 * piece.Allowed);
    }

    /// <summary>The ends of both ears lie on the shell: at the ends all through, at the sides along the edge nearer to the axis.</summary>
    private static IEnumerable<Meeting> Saddle(SaddleDesign bracket, ShellSection shell, CutPiece piece)
    {
        var atSides = bracket.Ears == SaddleEars.Sides;
        double Along(Point2 p) => atSides ? p.U : p.V;
        double Beside(Point2 p) => atSides ? p.V : p.U;
        var (low, high) = (piece.Outline.Min(Beside), piece.Outline.Max(Beside));
        var middle = (piece.Outline.Min(Along) + piece.Outline.Max(Along)) / 2;
        // The straight sides of the sheet run from ear to ear across the bends.
        var ends = piece.Outline.Where(p => Beside(p) > low + piece.Allowed && Beside(p) < high - piece.Allowed
            && Math.Abs(Along(p) - middle) > middle / 2);
        foreach (var at in ends)
        {
            var off = Enumerable.Range(0, 5)
                .Select(i => FromAxis(piece.InVessel(at, bracket.Thickness * i / 4)) - shell.OuterRadius).ToList();
            yield return new($"{bracket.Name} on shell", Math.Abs(off.Min()), piece.Allowed);
            if (!atSides)
                yield return new($"{bracket.Name} on shell", Math.Abs(off.Max()), piece.Allowed);
        }
    }
}
