using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Members.Brackets;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Members.Plates;

/// <summary>Two fillets along the coped edge of a plate, one on each of its sides.</summary>
internal static class PlateSeam
{
    /// <summary>Roll from which on the sides are called left and right rather than upper and lower.</summary>
    private const double Steep = Math.PI / 4;

    public static ImmutableArray<Joint> Of(PlateSite site, VesselDesign vessel)
    {
        var bracket = site.Bracket;
        var wall = Math.Min(bracket.Thickness, vessel.Shell.Wall);
        return [Side("face", 1), Side("back", -1)];

        Joint Side(string key, int side)
        {
            Station Along(double along) => At(site, side, along - (bracket.Width / 2));
            return new(
                $"{SideName(bracket, side)} side of {bracket.Name} to shell",
                BracketSeams.Between(bracket, vessel, new(0, bracket.Width), Along),
                JointKind.Fillet,
                new(0, bracket.Width),
                [.. site.Cope.Breaks().Select(u => u + (bracket.Width / 2))],
                Along,
                FilletThroat.Of(wall),
                wall,
                $"{bracket.Path}.width.{key}")
            {
                Role = WeldRole.Mount,
                Owner = bracket.Path,
                OwnWall = bracket.Thickness,
                Words = new(BracketSeams.FitUp(bracket, string.Empty))
                {
                    Heed = "tack both sides against a square; short beads on either side in turn, or it leans towards the first",
                    Check = "square to the shell, bolt holes by the set-up table",
                },
            };
        }
    }

    /// <summary>
    /// Name of the side as seen from outside; <paramref name="side"/> is that to which the plate's own Z points, or the other.
    /// </summary>
    private static string SideName(PlateDesign bracket, int side)
    {
        if (Math.Abs(bracket.Roll) < Steep)
            return side > 0 ? "upper" : "lower";
        // Rolled upright the plate's Z points towards decreasing angle, which lies to the left.
        return side * bracket.Roll > 0 ? "left" : "right";
    }

    /// <summary>
    /// Where the plate's face, carried on, meets the shell; the square cut lies back from it by what the gap says.
    /// </summary>
    /// <param name="u">Along the edge from its middle, mm.</param>
    private static Station At(PlateSite site, int side, double u)
    {
        var (way, cope, radius) = (site.Way, site.Cope, site.ShellRadius);
        var depth = side * site.Bracket.Thickness / 2;
        var (sin, cos) = Math.SinCos(site.Bracket.Roll);
        var aside = cope.Aside(u) - (depth * sin);
        var level = Circles.HalfChord(radius, aside);
        // Out of the shell at the root, and along it: u runs aside by cos and outward by the circle's slope.
        var normal = ((aside / radius) * site.Sideways) + ((level / radius) * site.Outward);
        var tangent = way.X + ((-aside / level * cos) * site.Outward);
        var along = tangent.Unit();
        var face = side * way.Z;
        var alongHost = normal.Cross(along) is var host && host.Dot(face) > 0 ? host : -host;
        var alongPart = face.Cross(along) is var part && part.Dot(site.Outward) > 0 ? part : -part;
        return new(
            way.ToOuter(new(u, -level, depth)),
            tangent,
            alongHost,
            alongPart,
            Math.Acos(Math.Clamp(alongHost.Dot(alongPart), -1, 1)),
            new Point2(aside, cope.Level(u)).Length - radius,
            cope.Level(u) - level);
    }
}
