using System.Reflection;
using Vessel.Function;

namespace Vessel.Cli;

internal static class ToolVersion
{
    public static string Text { get; } =
        typeof(ToolVersion).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;
}
