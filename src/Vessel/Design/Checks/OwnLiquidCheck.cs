namespace Vessel.Design;

/// <summary>A liquid of one's own, whose figures are read between temperatures.</summary>
internal static class OwnLiquidCheck
{
    /// <summary>Nearer to each other two temperatures are one, degC: they may be written in different units.</summary>
    private const double Same = 1e-6;

    public static IEnumerable<Fault> Find(Section file)
    {
        if (file.Child("flow")?.Child("own_liquid") is not { } own)
            yield break;
        var told = new List<double>();
        foreach (var point in own.Items("at"))
        {
            var temperature = point.Number("temperature");
            var isTold = told.Exists(other => Math.Abs(other - temperature) < Same);
            told.Add(temperature);
            if (isTold)
            {
                yield return new(FaultCodes.OutOfRange, $"{point.Path}.temperature", "The liquid has two lines for one temperature.",
                    FormattableString.Invariant($"{temperature:0.##} degC"), "each temperature once", "Delete one of them, or change its temperature.");
            }
        }
    }
}
