using System.Collections.Concurrent;
using Vessel.Design;
using Vessel.Function;
using Vessel.Planning;

namespace Vessel.Tests.Support;

/// <summary>Plans of the designs in the repository, each made once.</summary>
internal static class Plans
{
    private static readonly ConcurrentDictionary<string, Plan> _plans = new();

    public static Plan Of(string file) =>
        _plans.GetOrAdd(file, name => OfText(Repository.Design(name)));

    /// <param name="with">As path=value.</param>
    public static Plan OfText(string text, params string[] with) =>
        Plan.Of(Compiler.Assemble(Compiler.Read(text, new(null, [.. with])).Value!));

    /// <summary>The same metal under another duty: what the design asks of it may differ, its shape may not.</summary>
    public static Assembly Under(VesselDesign design, Assembly built) =>
        new(built, design, built.Parts, built.Welds);

    /// <summary>The same vessel with its parts and welds listed the other way round.</summary>
    public static Assembly Reversed(Assembly assembly) =>
        new(assembly, assembly.Design, [.. assembly.Parts.Reverse()], [.. assembly.Welds.Reverse()]);
}
