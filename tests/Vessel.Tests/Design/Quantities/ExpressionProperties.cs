using System.Globalization;
using FsCheck.Xunit;
using Vessel.Design;
using Xunit;

namespace Vessel.Tests.Design;

/// <summary>Laws of expressions, over random trees that are worked out here and, as text, by the reader.</summary>
public sealed class ExpressionProperties
{
    [Property]
    public void A_tree_written_with_the_fewest_parentheses_has_the_value_of_the_tree(int seed)
    {
        var (text, value, _) = Tree(new Random(seed), 5);

        // The reader does the same operations on the same doubles in the same order.
        Assert.Equal(value, Values.Of(text));
    }

    [Property]
    public void A_sum_in_inches_is_that_sum_in_bare_numbers_times_an_inch(int seed)
    {
        var random = new Random(seed);
        var terms = Enumerable.Range(0, 6).Select(_ => random.Next(1, 1000)).ToList();
        var signs = terms.Select(_ => random.Next(2) == 0 ? "+" : "-").ToList();
        string Sum(string unit) => string.Concat(terms.Zip(signs, (t, s) => $" {s} {Plain(t)}{unit}"));

        // At most 6000 in with six roundings of a double.
        Assert.Equal(25.4 * Values.Of("0" + Sum("")), Values.Of("0 in" + Sum(" in")), 1e-9);
    }

    [Property]
    public void Scaling_goes_through_mixed_units(short a, short b, short k)
    {
        var together = Values.Of($"{Plain(k)} * ({Plain(a)} in + {Plain(b)} mm)");
        var apart = Values.Of($"{Plain(k)} * {Plain(a)} in + {Plain(k)} * {Plain(b)} mm");

        // Values up to 32768^2 x 26.4 = 3e10, some roundings of 2^-53 each.
        Assert.Equal(together, apart, 1e-4);
    }

    [Property]
    public void A_number_survives_being_written_and_read_in_any_unit(double number)
    {
        // Beyond these a factor would leave the doubles of full precision.
        if (!(Math.Abs(number) is > 1e-200 and < 1e200))
            return;
        foreach (var unit in Unit.All.Where(u => u != Unit.Gauge && u.Shift == 0))
        {
            var read = Values.Of($"{Plain(number)} {unit.Name}");

            // One rounding in the product, one in the quotient.
            Assert.Equal(number, read / unit.Factor, Math.Abs(number) * 4.5e-16);
        }
    }

    [Property]
    public void Blanks_change_nothing(int seed)
    {
        var text = Tree(new Random(seed), 4).Text;

        Assert.Equal(Values.Of(text), Values.Of("  " + text.Replace(" ", "   ", StringComparison.Ordinal) + " "));
    }

    [Property]
    public void No_text_makes_the_reader_throw(string? text)
    {
        var (quantity, faults) = Values.Read(text ?? "", null);

        Assert.Equal(quantity is null, faults.Count > 0);
    }

    private static string Plain(double number) => number.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>Rank 1 for sums, 2 for products, 3 for what needs no parentheses. No division by zero, no overflow.</summary>
    private static (string Text, double Value, int Rank) Tree(Random random, int depth)
    {
        if (depth == 0 || random.Next(4) == 0)
        {
            var number = random.Next(1, 100) / 4.0;
            return (Plain(number), number, 3);
        }

        var left = Tree(random, depth - 1);
        var right = Tree(random, depth - 1);
        var sign = "+-*/"[random.Next(right.Value == 0 ? 3 : 4)];
        var rank = sign is '+' or '-' ? 1 : 2;
        var value = sign switch
        {
            '+' => left.Value + right.Value,
            '-' => left.Value - right.Value,
            '*' => left.Value * right.Value,
            _ => left.Value / right.Value,
        };
        var text = $"{Wrapped(left, left.Rank < rank)} {sign} {Wrapped(right, right.Rank <= rank)}";
        return (text, value, rank);
    }

    private static string Wrapped((string Text, double Value, int Rank) tree, bool wrap) => wrap ? $"({tree.Text})" : tree.Text;
}
