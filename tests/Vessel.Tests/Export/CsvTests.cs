using System.Text;
using Vessel.Export;
using Xunit;

namespace Vessel.Tests.Export;

public sealed class CsvTests
{
    [Fact]
    public void Rows_end_with_carriage_return_and_line_feed() => Assert.Equal("a,b\r\n1,x\r\n", Written(1, "x"));

    [Theory]
    [InlineData("a,b", "\"a,b\"")]
    [InlineData("4\" pipe", "\"4\"\" pipe\"")]
    [InlineData("two\nlines", "\"two\nlines\"")]
    public void Words_with_commas_quotes_or_line_ends_are_quoted(string words, string cell) =>
        Assert.Equal($"a,b\r\n1,{cell}\r\n", Written(1, words));

    [Theory]
    [InlineData("=1+2")]
    [InlineData("+1")]
    [InlineData("-SUM(A1)")]
    [InlineData("@x")]
    public void Words_that_a_spreadsheet_would_run_are_made_plain(string words) =>
        Assert.Equal($"a,b\r\n1,'{words}\r\n", Written(1, words));

    [Fact]
    public void A_negative_figure_stays_a_figure() => Assert.Equal("a,b\r\n-2.5,\r\n", Written(-2.5, (double?)null));

    [Fact]
    public void A_row_of_the_wrong_length_is_our_bug() => Assert.Throws<ArgumentException>(() => Written(1));

    private static string Written(params CsvCell[] row)
    {
        using var stream = new MemoryStream();
        Csv.Write(stream, ["a", "b"], [row]);
        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
