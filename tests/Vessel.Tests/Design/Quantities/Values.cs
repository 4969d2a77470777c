using Vessel.Design;
using Vessel.Stock;
using Xunit;

namespace Vessel.Tests.Design;

/// <summary>Reads single values without a file round them.</summary>
internal static class Values
{
    private static readonly Dictionary<string, Quantity?> _none = [];

    /// <summary>In mm, radians, cubic mm ... (see <see cref="Unit"/>); a bare number as written.</summary>
    public static double Of(string text, MaterialFamily? family = null) => Quantity(text, family).Value;

    public static Quantity Quantity(string text, MaterialFamily? family = null)
    {
        var (quantity, faults) = Read(text, family);
        Assert.Empty(faults);
        return quantity!.Value;
    }

    /// <summary>The code of the one fault of a text.</summary>
    public static string Fault(string text) => Assert.Single(Read(text, null).Faults).Code;

    /// <summary>Where in the text, from 0, its one fault lies.</summary>
    public static int Place(string text) => Assert.Single(Read(text, null).Faults).At!.Value.Column - 1;

    public static (Quantity? Quantity, List<Fault> Faults) Read(
        string text, MaterialFamily? family, Dictionary<string, Quantity?>? names = null, bool isTube = false)
    {
        var faults = new List<Fault>();
        var scalar = new YamlScalar(text, false, 1, new Span(1, 1, 1, text.Length));
        var quantity = new ValueReader(UserUnits.Millimetres, names ?? _none, faults).Read(scalar, "key", new(family, isTube));
        return (quantity, faults);
    }
}
