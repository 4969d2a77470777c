using System.Globalization;
using Vessel.Joints;
using Vessel.Stock;

namespace Vessel.Planning;

/// <summary>What is done to the edges before they are tacked.</summary>
internal static class WeldPreparation
{
    /// <param name="aim">Root opening to aim for, mm.</param>
    public static string Of(WeldFigures weld, double aim)
    {
        var joint = weld.Joint;
        var gap = Text(weld.GapNormal);
        var isTight = gap == "0";
        if (EdgePreparation.IsBevelled(joint.Kind, joint.Wall))
        {
            var held = joint.HeldOpen > weld.GapNormal
                ? $"gap {Text(joint.HeldOpen)} mm; the drawing has {(isTight ? "none" : $"{gap} mm")}: the vessel comes out longer by the "
                    + "difference, less the weld's shrinkage"
                : isTight ? "edges that touch" : $"gap {gap} mm";
            return $"bevel to a V of 60 deg, root face {Text(Bevel.RootFace)} mm, {held}";
        }

        if (joint.Kind == JointKind.Fillet)
        {
            return weld.GrooveShare > 0
                ? $"bevel the attached part where the surfaces open beyond 135 deg ({Text(100 * weld.GrooveShare)} % of the way); "
                    + $"{Fillet()}"
                : $"square, {Fillet()}";
        }

        return isTight
            ? $"square edges, tight; no gap over {Tenths(aim)} mm"
            : $"square edges, gap {gap} "
                + $"mm{(Tenths(weld.GapNormal) != Tenths(aim) && weld.GapNormal < aim ? $", at most {Tenths(aim)} mm" : "")}";

        string Fillet() =>
            isTight ? "fitted without a gap" : $"fitted; gap up to {(weld.GapNormal < 0.05 ? gap : Tenths(weld.GapNormal))} mm";
    }

    /// <summary>Number as a feeler gauge or a wire is picked.</summary>
    private static string Tenths(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);

    private static string Text(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
