using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>
/// The sizes under <c>dimensions</c>, worked out in the order in which they need each other. A size that is wrong is
/// null, so that what uses it is not reported again.
/// </summary>
internal static partial class NamedSizes
{
    private static readonly ImmutableHashSet<string> _reserved =
        ["true", "false", "yes", "no", "on", "off", "null", "nan", "inf", "pi"];

    public static IReadOnlyDictionary<string, Quantity?> Read(
        YamlMapping sizes, UserUnits units, MaterialFamily? family, List<Fault> faults)
    {
        var known = new Dictionary<string, Quantity?>(StringComparer.Ordinal);
        var reader = new ValueReader(units, known, faults);
        var pending = new Dictionary<string, Size>(StringComparer.Ordinal);
        foreach (var entry in sizes.Entries)
        {
            var path = $"dimensions.{entry.Key}";
            if (NameIsFree(entry, path, faults)
                && Scalar(entry, path, faults) is { } scalar
                && reader.Parse(scalar, path) is { } expression)
            {
                pending.Add(entry.Key, new Size(entry, scalar, path, expression, [.. Needs(expression)]));
            }
            else
            {
                known.Add(entry.Key, null);
            }
        }

        foreach (var size in Ordered(pending))
        {
            known.Add(size.Entry.Key, reader.Evaluate(size.Expression, size.Scalar, size.Path, new(family, IsTube: false)));
            pending.Remove(size.Entry.Key);
        }

        ReportCircles(sizes.Entries.Select(e => e.Key).Where(pending.ContainsKey), pending, faults);
        foreach (var name in pending.Keys)
            known.Add(name, null);
        return known;
    }

    /// <summary>Each size after those that it needs; without those in a circle or that lead into one.</summary>
    private static List<Size> Ordered(Dictionary<string, Size> sizes)
    {
        var users = sizes.Values
            .SelectMany(user => user.Needs.Where(sizes.ContainsKey).Select(need => (need, user)))
            .ToLookup(u => u.need, u => u.user, StringComparer.Ordinal);
        var open = sizes.ToDictionary(s => s.Key, s => s.Value.Needs.Count(sizes.ContainsKey), StringComparer.Ordinal);
        var ordered = sizes.Values.Where(s => open[s.Entry.Key] == 0).ToList();
        for (var i = 0; i < ordered.Count; i++)
            ordered.AddRange(users[ordered[i].Entry.Key].Where(user => --open[user.Entry.Key] == 0));
        return ordered;
    }

    private static bool NameIsFree(YamlEntry entry, string path, List<Fault> faults)
    {
        var why = Unit.Find(entry.Key) is not null ? "is a unit"
            : _reserved.Contains(entry.Key.ToLowerInvariant()) ? "is a reserved word"
            : !Word().IsMatch(entry.Key) ? "is not one word of letters, digits and _"
            : null;
        if (why is null)
            return true;
        faults.Add(new Fault(FaultCodes.DimensionName, path, $"'{entry.Key}' cannot name a size: it {why}.", entry.Key,
            null, "Use another name.", entry.KeyAt));
        return false;
    }

    private static YamlScalar? Scalar(YamlEntry entry, string path, List<Fault> faults)
    {
        if (entry.Value is YamlScalar { Text.Length: > 0 } scalar)
            return scalar;
        faults.Add(entry.Value is YamlScalar
            ? new Fault(FaultCodes.MissingValue, path, $"'{entry.Key}' has no value.", null, null,
                "Write a value after the colon, or delete the key.", entry.KeyAt)
            : new Fault(FaultCodes.WrongKind, path, $"'{entry.Key}' is not a single value.", null, null,
                "Write one number, quantity or expression.", entry.Value.At));
        return null;
    }

    private static IEnumerable<string> Needs(Expression expression) => expression switch
    {
        NameExpression name => [name.Name],
        NegatedExpression negated => Needs(negated.Operand),
        BinaryExpression binary => Needs(binary.Left).Concat(Needs(binary.Right)),
        _ => [],
    };

    /// <summary>Reports each circle once; what merely leads into one is not at fault.</summary>
    private static void ReportCircles(IEnumerable<string> names, Dictionary<string, Size> pending, List<Fault> faults)
    {
        var walked = new HashSet<string>(StringComparer.Ordinal);
        foreach (var name in names)
        {
            var way = new List<string>();
            var next = name;
            while (walked.Add(next))
            {
                way.Add(next);
                next = pending[next].Needs.Where(pending.ContainsKey).Order(StringComparer.Ordinal).First();
            }

            if (way.IndexOf(next) is >= 0 and var start)
                faults.Add(Circle([.. way.Skip(start)], pending));
        }
    }

    private static Fault Circle(ImmutableArray<string> circle, Dictionary<string, Size> byName)
    {
        var first = circle.Select(name => byName[name]).MinBy(s => (s.Scalar.At.Line, s.Scalar.At.Column))!;
        var from = circle.IndexOf(first.Entry.Key);
        var turned = circle.Skip(from).Concat(circle.Take(from)).Append(first.Entry.Key);
        return new Fault(FaultCodes.DimensionCycle, first.Path,
            $"Sizes are defined by each other in a circle: {string.Join(" -> ", turned)}.", null, null,
            "Give one of them a value of its own.", first.Scalar.At);
    }

    [GeneratedRegex(@"^[\p{L}_][\p{L}\p{Nd}_]*$")]
    private static partial Regex Word();

    private sealed record Size(
        YamlEntry Entry, YamlScalar Scalar, string Path, Expression Expression, HashSet<string> Needs);
}
