namespace Vessel.Design;

/// <summary>Names that cannot become file names, or that two parts share.</summary>
internal static class NameCheck
{
    private static readonly string[] _ofTheVessel = ["shell", "top", "bottom"];

    public static IEnumerable<Fault> Find(Section file)
    {
        if (file.Text("vessel") is { } vessel && Slug.Of(vessel).Length == 0)
            yield return WithoutLetters("vessel", vessel);

        var taken = _ofTheVessel.ToDictionary(name => name, _ => "a part of every vessel", StringComparer.Ordinal);
        foreach (var port in file.Items("ports"))
        {
            if (port.Text("name") is not { } name)
                continue;
            var path = $"{port.Path}.name";
            var slug = Slug.Of(name);
            if (slug.Length == 0)
            {
                yield return WithoutLetters(path, name);
            }
            else if (!taken.TryAdd(slug, $"the name of {port.Path}"))
            {
                yield return new Fault(FaultCodes.NameTwice, path,
                    $"'{name}' gives the file name '{slug}', which is already {taken[slug]}.", name, null,
                    "Use a name that differs in its letters or digits.");
            }
        }
    }

    private static Fault WithoutLetters(string path, string name) => new(
        FaultCodes.NameWithoutLetters, path, $"'{name}' has no letter or digit that a file name can take.", name, null,
        "Use a name with the letters a to z or digits.");
}
