using Vessel.Design;
using Vessel.Findings;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using static Vessel.Model.Allowed;

namespace Vessel.Heads.Cones;

/// <summary>Rolling a cone that closes an end, and where its seams run.</summary>
internal static class ConeRules
{
    /// <summary>A cone's radius of bending is told square to its line, and least at its tip.</summary>
    public static Measure Tip(VesselEnd end, ConeHead cone, VesselDesign design)
    {
        var ratio = cone.SheetAt(end, design).Inner.A.U / Math.Cos(cone.HalfAngle) / cone.Wall;
        return new(
            FindingCodes.TightRoll,
            Severity.Warning,
            [.. Names.RimParts(end, design)],
            () => $"at its tip the {Names.Of(end)} cone is bent to {NoteText.Length(ratio)} walls inside, below "
                + $"{NoteText.Length(ShellRules.MeanLineRatio)}: "
                + "form the tip over a bar and try it on its port before welding the seam, or use a larger port there.",
            [new("inside radius over wall", ratio, AtLeast(ShellRules.MeanLineRatio), string.Empty)],
            design.PlaceOf($"{cone.Path}.wall"),
            $"inside radius over its wall at the tip of {Names.Of(end)}");
    }

    public static Measure Crossing(VesselEnd end, ConeHead cone, VesselDesign design)
    {
        var shell = design.Shell.AtEnd(end);
        var apart = shell.OuterRadius * cone.Seams.Apart(shell.Seams);
        var name = cone.Segments == 1 ? "the seam" : "a seam";
        var remedy = cone.Segments == 1 && shell.Seams.Count == 1
            ? $"'seam_angle: {NoteText.Degrees(shell.Seams.Between(1))}' lies opposite"
            : $"'seam_angle: {NoteText.Degrees(shell.Seams.Between(cone.Segments) % cone.Pitch)}' keeps clear of it";
        return new(
                FindingCodes.SeamsMeet,
                Severity.Warning,
                [.. Names.ShellParts(end, design), .. Names.RimParts(end, design)],
                () => $"{name} of the {Names.Of(end)} cone reaches the round seam {NoteText.Length(apart)} mm from "
                + $"{(shell.Seams.Count > 1 ? "a long seam of the shell" : "the shell's long seam")}, nearer than "
                + $"{NoteText.Length(ShellRules.SeamsApart)} mm: turn the cone, {remedy}.",
                [new("apart", apart, AtLeast(ShellRules.SeamsApart), "mm")],
                design.PlaceOf($"{cone.Path}.seam_angle"),
                $"between the long seams of shell and {Names.Of(end)} cone");
    }
}
