using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Members.Brackets;
using Vessel.Parts;

namespace Vessel.Members.Saddles;

/// <summary>
/// One fillet along the outside of each ear. Behind the plate there is no room for a torch, and on ears at the sides
/// the angle there is a sharp one.
/// </summary>
internal static class SaddleSeam
{
    public static ImmutableArray<Joint> Of(SaddleSite site, VesselDesign vessel)
    {
        var bracket = site.Bracket;
        var wall = Math.Min(bracket.Thickness, vessel.Shell.Wall);
        Joint Ear(string side, double length, Func<double, Station> along) => new(
            $"{side} ear of {bracket.Name} to shell",
            BracketSeams.Between(bracket, vessel, new(0, length), along),
            JointKind.Fillet,
            new(0, length),
            [],
            along,
            FilletThroat.Of(wall),
            wall,
            $"{bracket.Path}.ears.{side}")
        {
            Role = WeldRole.Mount,
            Owner = bracket.Path,
            OwnWall = bracket.Thickness,
            Words = new(BracketSeams.FitUp(bracket, "plate at its height, clock angle and stand-off by the set-up table; "))
            {
                Heed = "clamp the plate at its stand-off; one ear, cool, then the other: the shell is pulled flat there",
                Leaks = ": its toes, where an undercut may go through",
                Check = "stand-off and bolt holes by the set-up table",
            },
        };
        if (site.AtSides)
        {
            return
            [
                Ear("left", bracket.PlateHeight, up => OnSide(site, -1, up)),
                Ear("right", bracket.PlateHeight, up => OnSide(site, 1, up)),
            ];
        }

        var girth = 2 * site.HalfAngle * site.ShellRadius;
        return
        [
            Ear("upper", girth, arc => OnEnd(site, 1, arc)),
            Ear("lower", girth, arc => OnEnd(site, -1, arc)),
        ];
    }

    /// <summary>
    /// Up the line where the ear's outside, carried on, meets the shell's. The ear's end, cut square, lies back from it.
    /// </summary>
    private static Station OnSide(SaddleSite site, int side, double up)
    {
        var (way, half) = (site.Way, site.Bracket.Width / 2);
        var level = site.ShellLevel(half);
        var (sin, cos) = (half / site.ShellRadius, level / site.ShellRadius);
        var corner = new Point2(half, site.EarEnd);
        return new(
            way.ToOuter(new(side * half, up - (site.Bracket.PlateHeight / 2), level)),
            Vector3.UnitZ,
            way.Turn(new(side * cos, 0, -sin)),
            way.Turn(Vector3.UnitZ),
            (Math.PI / 2) + site.HalfAngle,
            corner.Length - site.ShellRadius,
            site.EarEnd - level);
    }

    /// <summary>Round the shell, square to it: a level ear that is cut to the shell's circle touches all through.</summary>
    private static Station OnEnd(SaddleSite site, int end, double arc)
    {
        var way = site.Way;
        var (sin, cos) = Math.SinCos((arc / site.ShellRadius) - site.HalfAngle);
        return new(
            way.ToOuter(new(site.ShellRadius * sin, end * site.Bracket.PlateHeight / 2, site.ShellRadius * cos)),
            way.Turn(new(cos, 0, -sin)),
            end * Vector3.UnitZ,
            way.Turn(new(sin, 0, cos)),
            Math.PI / 2,
            0,
            0);
    }
}
