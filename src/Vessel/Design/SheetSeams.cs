using System.Collections.Immutable;
using System.Globalization;
using Vessel.Geometry;

namespace Vessel.Design;

/// <summary>Seams along what is put together from equal sheets round its axis: a shell, a cone, a head of gores.</summary>
/// <param name="First">Angle of the first, radians.</param>
/// <param name="Count">Number of seams, as many as there are sheets; sheet i lies between seams i and i + 1.</param>
public readonly record struct SheetSeams(double First, int Count)
{
    /// <summary>Most sheets round one axis; more would make staves of them.</summary>
    public const int Most = 24;

    /// <summary>Angle from one seam to the next, radians.</summary>
    public double Pitch => Turns.Full / Count;

    /// <summary>The least number of sheets above that of these for which something holds; null where none does.</summary>
    public int? More(Func<int, bool> holds) =>
        Enumerable.Range(Count + 1, Most - Count).Where(holds).Select(count => (int?)count).FirstOrDefault();

    /// <summary>Angles of all, upward from the first.</summary>
    public ImmutableArray<double> Angles => [.. Enumerable.Range(0, Math.Max(0, Count)).Select(Of)];

    public double Of(int number) => First + (Pitch * number);

    /// <summary>The sheet that holds an angle.</summary>
    public int SheetAt(double angle) => Math.Min(Count - 1, (int)((Turns.From(angle, First) - First) / Pitch));

    /// <summary>Where a sheet lies, radians; not brought into a turn.</summary>
    public Interval Sheet(int number) => new(Of(number), Of(number + 1));

    /// <summary>Turn from an angle to the seam nearest to it, radians, signed.</summary>
    public double To(double angle)
    {
        var past = (Turns.From(angle, First) - First) % Pitch;
        return past <= Pitch / 2 ? -past : Pitch - past;
    }

    /// <summary>The least angle between one of these and one of others, radians.</summary>
    public double Apart(SheetSeams other) => other.Angles.Select(To).Min(Math.Abs);

    /// <summary>A first seam for so many others that keeps them as far as may be from all of these, radians in [0, 2 pi).</summary>
    /// <remarks>Differences of two even rings repeat every turn over their least common multiple.</remarks>
    public double Between(int others) => Turns.From(First + (Math.PI * Divisor(Count, others) / ((double)Count * others)), 0);

    /// <summary>What sheets that are alike are called, or one that differs by what is cut in it.</summary>
    /// <param name="each">Name of any one: <c>shell sheet</c>.</param>
    public static string NameOf(string each, int? number = null) =>
        number is { } i ? string.Create(CultureInfo.InvariantCulture, $"{each} {i + 1}") : each;

    /// <summary>Every name that such sheets may have; none for a single one, which has the name of the whole.</summary>
    public static IEnumerable<string> NamesOf(string each, double count) => !(count > 1) ? []
        : Enumerable.Range(0, (int)count).Select(i => NameOf(each, i)).Prepend(NameOf(each));

    private static int Divisor(int a, int b) => b == 0 ? a : Divisor(b, a % b);
}
