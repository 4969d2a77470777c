using System.Collections.Immutable;

namespace Vessel.Design;

/// <summary>A single value as a design file would hold it, read by the same grammar.</summary>
public static class SingleValue
{
    /// <summary>Value in the units of the model; a bare number is in mm, L/min, degrees. Null when it cannot be read.</summary>
    public static double? Read(KeyKind kind, string text)
    {
        var faults = new List<Fault>();
        var reader = new ValueReader(UserUnits.Millimetres, ImmutableDictionary<string, Quantity?>.Empty, faults);
        var scalar = new YamlScalar(text, false, null, new Span(1, 1, 1, 1));
        if (reader.Read(scalar, "", default) is not { } value || (!value.IsBare && value.Dimension != kind.Dimension()))
            return null;
        var unit = kind.ShownUnit(UserUnits.Millimetres);
        return (value.IsBare ? (value.Value * unit.Factor) + unit.Shift : value.Value) / kind.ModelFactor();
    }
}
