using Vessel.Cli;
using Vessel.Function;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Cli.Commands;

/// <summary><c>explain --of</c>: a figure of a design with all that it rests on.</summary>
public sealed class FigureCommandTests
{
    private static readonly string _demo = Repository.Designs.Single(file => file.Contains("harbour", StringComparison.Ordinal));

    private static readonly Assembly _assembly = Compiler.Assemble(Compiler.Read(File.ReadAllText(_demo)).Value!);

    [Fact]
    public void Every_figure_of_a_design_is_listed_and_some_are_explained()
    {
        var list = CommandRun.Of("explain", "--of", _demo);

        Assert.Equal(ExitCodes.Good, list.Code);
        foreach (var (figure, i) in FunctionFigures.Of(_assembly).SelectMany(group => group.Figures).Select((figure, i) => (figure, i)))
        {
            Assert.Contains(figure.Name, list.Output, StringComparison.Ordinal);
            // Each run builds the design anew.
            if (i % 6 != 0)
                continue;
            var one = CommandRun.Of("explain", figure.Name, "--of", _demo);
            Assert.Equal(ExitCodes.Good, one.Code);
            foreach (var part in figure.Inputs.Select(input => input.From).Append(figure.Formula).Append(figure.Source)
                .Append(figure.Validity.Range))
                Assert.Contains(part, one.Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Names_are_unique_and_every_figure_has_its_texts()
    {
        var groups = FunctionFigures.Of(_assembly);
        var figures = groups.SelectMany(group => group.Figures).ToList();

        Assert.Distinct(figures.Select(figure => figure.Name));
        Assert.Distinct(groups.SelectMany(group => group.Tables).Select(table => table.Name));
        Assert.All(figures, figure => Assert.True(
            figure.Title.Length > 0 && figure.Formula.Length > 0 && figure.Source.Length > 0 && figure.Validity.Range.Length > 0));
        Assert.All(figures, figure => Assert.Matches("^[a-z][a-z0-9-]+$", figure.Name));
    }

    [Fact]
    public void A_figure_that_is_not_there_is_met_with_the_nearest()
    {
        var run = CommandRun.Of("explain", "gas-los", "--of", _demo);

        Assert.Equal(ExitCodes.Usage, run.Code);
        Assert.Contains("gas-loss", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_check_says_flow_oil_and_capacity()
    {
        var run = CommandRun.Of("check", _demo);

        Assert.All(["loss of pressure", "narrowest", "drop", "usable"],
            word => Assert.Contains(word, run.Output, StringComparison.Ordinal));
    }
}
