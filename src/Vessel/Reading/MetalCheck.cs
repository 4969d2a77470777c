using Vessel.Design;
using Vessel.Members;
using Vessel.Stock;

namespace Vessel.Reading;

/// <summary>Parts that are welded together and whose metals do not join.</summary>
internal static class MetalCheck
{
    public static IEnumerable<Fault> Find(Section file)
    {
        var shell = file.Child("shell");
        foreach (var end in new[] { "top", "bottom" })
        {
            if (Between(file.Child(end), shell, end, "the shell") is { } fault)
                yield return fault;
        }

        foreach (var port in file.Items("ports"))
        {
            var host = port.Text("in");
            if (host is not null && Between(port, file.Child(host), Name(port), host) is { } fault)
                yield return fault;
        }

        foreach (var (part, host, name, hostName) in Welded(file))
        {
            if (Between(part, host, name, hostName) is { } fault)
                yield return fault;
        }
    }

    private static IEnumerable<(Section Part, Section? Host, string Name, string HostName)> Welded(Section file)
    {
        foreach (var (part, host, hostName) in MemberKinds.All.SelectMany(kind => kind.Welded(file)))
            yield return (part, host, Name(part), hostName);
    }

    private static string Name(Section part) => part.Text("name") ?? part.Path;

    private static Fault? Between(Section? part, Section? host, string name, string hostName) =>
        part?.Material is { } a && host?.Material is { } b && Fillers.Between(a, b) is null
            ? new Fault(FaultCodes.MetalsDoNotJoin, $"{part.Path}.material",
                $"'{name}' of {a.Name} cannot be welded to {hostName} of {b.Name}.", a.Name, b.Name,
                "Make both of aluminium, or both of steel.")
            : null;
}
