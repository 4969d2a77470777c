using Vessel.Design;
using Vessel.Heads;
using Vessel.Members;

namespace Vessel.Reading;

/// <summary>Names that cannot become file names, or that two parts share.</summary>
internal static class NameCheck
{
    private static readonly string[] _ofTheVessel = ["shell", "top", "bottom"];

    private static readonly string[] _ends = ["top", "bottom"];

    public static IEnumerable<Fault> Find(Section file)
    {
        foreach (var fault in Nameless(file))
            yield return fault;

        var taken = _ofTheVessel.ToDictionary(name => name, _ => "a part of every vessel", StringComparer.Ordinal);
        taken.Add("assembly", "the solid of the whole vessel");
        foreach (var name in OfShell(file.Child("shell") ?? Section.Absent("shell")))
            taken.TryAdd(Slug.Of(name), "a part of the shell");

        foreach (var name in MemberKinds.All.Where(kind => !kind.Sections(file).IsEmpty).Select(kind => kind.OnlyName).OfType<string>())
            taken.Add(name, $"the {name}");
        foreach (var (end, head) in _ends.Select(end => (end, file.Child(end))))
        {
            if (head is null || HeadKinds.Of(head) is not { } kind)
                continue;
            foreach (var (name, what) in kind.PartsOf(head, end))
                taken.Add(Slug.Of(name), what);
        }

        foreach (var port in file.Items("ports").Where(port => port.Has("elbow")))
        {
            if (port.Text("name") is not { } name)
                continue;
            var (piece, end) = (Slug.Of(ElbowDesign.PieceOf(name)), Slug.Of(ElbowDesign.EndOf(name)));
            taken.TryAdd(end, $"the end of the elbow of {port.Path}");
            if (piece == end)
            {
                yield return new Fault(FaultCodes.NameTwice, $"{port.Path}.name",
                    $"'{name}' is so long that all pieces of its elbow get the file name '{end}'.", name, null, "Use a shorter name.");
            }
            else
            {
                taken.TryAdd(piece, $"a piece of the elbow of {port.Path}");
            }
        }

        foreach (var (kind, member) in MemberKinds.All.SelectMany(kind => Named(kind, file), (kind, member) => (kind, member)))
        {
            if (member.Text("name") is not { } name)
                continue;
            var parts = kind.PartsOf(name);
            foreach (var fault in Clipped(member, name, [.. parts.Select(part => part.Name)]))
                yield return fault;
            // Two members of one name are told of below, once.
            foreach (var part in parts)
                taken.TryAdd(Slug.Of(part.Name), $"{part.What} of {member.Path}");
        }

        foreach (var part in Parts(file))
        {
            if (part.Text("name") is not { } name)
                continue;
            var path = $"{part.Path}.name";
            var slug = Slug.Of(name);
            if (slug.Length == 0)
            {
                yield return WithoutLetters(path, name);
            }
            else if (!taken.TryAdd(slug, $"the name of {part.Path}") && !taken[slug].EndsWith($" of {part.Path}", StringComparison.Ordinal))
            {
                yield return new Fault(FaultCodes.NameTwice, path,
                    $"'{name}' gives the file name '{slug}', which is already {taken[slug]}.", name, null,
                    "Use a name that differs in its letters or digits.");
            }
        }
    }

    /// <summary>Names of the courses, and of the sheets of those that are put together from several.</summary>
    private static IEnumerable<string> OfShell(Section shell)
    {
        var reducer = shell.Child("reducer");
        var courses = reducer is null ? ["shell"] : ShellDesign.NamesOfThree;
        // Those of the course with the most stand for all.
        var most = new[] { shell.Number("sheets"), reducer?.Number("sheets"), reducer?.Number("above_sheets") }.Max() ?? 1;
        return courses.Concat(courses.SelectMany(course => SheetSeams.NamesOf(ShellCourse.SheetOf(course), most)));
    }

    /// <summary>
    /// What has a name of its own; the usual name serves only a part that is the one of its kind. Of two of one name the later is told of:
    /// a port, whose name is always written, rather than a member outside that may have its usual one.
    /// </summary>
    private static IEnumerable<Section> Parts(Section file) =>
    [
        .. MemberKinds.All.Where(kind => kind.Under is null).SelectMany(kind => Named(kind, file)),
        .. file.Items("ports"),
        .. MemberKinds.All.Where(kind => kind.Under is not null).SelectMany(kind => Named(kind, file)),
    ];

    private static IEnumerable<Section> Named(MemberKind kind, Section file)
    {
        var all = kind.Sections(file);
        return all.Where(p => !kind.MayBeNameless || p.Given.Contains("name") || all.Length == 1);
    }

    private static IEnumerable<Fault> Nameless(Section file) => MemberKinds.All.Where(kind => kind.MayBeNameless)
        .Select(kind => (Kind: kind.Key.Name, All: kind.Sections(file)))
        .Where(kind => kind.All.Length > 1)
        .SelectMany(kind => kind.All
            .Where(p => !p.Given.Contains("name"))
            .Select(p => new Fault(FaultCodes.MissingKey, p.Path, $"'name' is missing: there are several under '{kind.Kind}'.",
                null, null, "Add 'name', as 'name: upper strap'.")));

    /// <summary>A name so long that what tells its parts apart is cut off.</summary>
    private static IEnumerable<Fault> Clipped(Section whole, string name, string[] parts)
    {
        var slugs = parts.Select(Slug.Of).ToList();
        if (Slug.Of(name).Length > 0 && slugs.Append(Slug.Of(name)).Distinct().Count() <= slugs.Count)
        {
            yield return new Fault(FaultCodes.NameTwice, $"{whole.Path}.name",
                $"'{name}' is so long that its parts get the file name '{slugs[0]}'.", name, null, "Use a shorter name.");
        }
    }

    private static Fault WithoutLetters(string path, string name) => new(
        FaultCodes.NameWithoutLetters, path, $"'{name}' has no letter or digit that a file name can take.", name, null,
        "Use a name with the letters a to z or digits.");
}
