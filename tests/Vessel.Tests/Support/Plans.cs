using System.Collections.Concurrent;
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
}
