using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;
using Vessel.Design;
using Vessel.Stock;

namespace Vessel.Tests.Support;

/// <summary>A design in words: what was chosen of it, without what follows from that.</summary>
internal static class DesignText
{
    public static string Of(VesselDesign vessel)
    {
        var text = new StringBuilder();
        foreach (var piece in new object[] { vessel.Shell, vessel.Top, vessel.Bottom }.Concat(vessel.Ports).Concat(vessel.Members))
            text.Append("  ").AppendLine(Told(piece));
        return text.ToString();
    }

    private static string Told(object? value) => value switch
    {
        null => "none",
        string or Enum or bool => $"{value}",
        Material metal => metal.Name,
        ThreadSize thread => thread.Name,
        IFormattable number => number.ToString("R", CultureInfo.InvariantCulture),
        IEnumerable list => $"[{string.Join(", ", list.Cast<object>().Select(Told))}]",
        _ => $"{value.GetType().Name} {{ {string.Join(", ", Chosen(value))} }}",
    };

    private static IEnumerable<string> Chosen(object record) =>
        from property in record.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance)
        where property.CanWrite && property.GetValue(record) is not (null or 0.0 or false)
        select $"{property.Name} = {Told(property.GetValue(record))}";
}
