using Vessel.Function;

namespace Vessel.Planning;

/// <summary>Which port lets the air out while the last seam is heated.</summary>
internal static class Vents
{
    /// <summary>The widest that is open in use; else the widest bung, with its plug out; null when there is no port.</summary>
    public static string? Of(Assembly assembly)
    {
        var open = assembly.Design.Ports.Where(port => port.Thread is null).MaxBy(port => port.Bore);
        return open is not null ? $"'{open.Name}'"
            : assembly.Design.Ports.MaxBy(port => port.Bore) is { } bung ? $"'{bung.Name}', its plug out," : null;
    }
}
