using System.Reflection;

namespace Vessel.Cli;

internal static class ToolVersion
{
    public static string Text { get; } =
        typeof(ToolVersion).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;
}
