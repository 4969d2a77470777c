namespace Vessel.Design;

/// <summary>Sheets of a rolled shell that are hardly there.</summary>
internal static class SheetCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design) => design.Shell.Courses.Where(course => course.IsRolled)
        .Select(course => Narrow(new(design.Units), course)).OfType<Fault>();

    /// <summary>A sheet keeps at least one wall round the girth, as a cone's does at its tip.</summary>
    public static Fault? Narrow(UnitFormat shown, ShellCourse course)
    {
        var wide = (course.Seams.Pitch * (Math.Min(course.Low, course.High) - (course.Wall / 2))) - course.RootGap;
        // Written so that a NaN, which is told elsewhere, does not pass as narrow.
        return !(wide < course.Wall && course.Seams.Count > 1) ? null : new Fault(
            FaultCodes.SegmentsDoNotFit, course.SheetsPath, $"The sheets of the {course.Name} are less than one wall wide.",
            shown.Length(Math.Max(0, wide)), $"at least {shown.LengthUp(course.Wall)}", "Use fewer sheets.");
    }
}
