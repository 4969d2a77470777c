using Vessel.Function;
using Vessel.Planning;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Planning;

public sealed class TaperThreadTests
{
    /// <summary>A parallel thread seals on a face, which is machined after welding; a taper one in itself.</summary>
    [Theory]
    [InlineData("1/4 NPT", false)]
    [InlineData("M18x1.5", true)]
    public void Only_a_parallel_thread_has_its_face_machined(string thread, bool faced)
    {
        var plan = Plans.OfText(Repository.Design("harbour-launch-breather.yaml"), $"ports[2].bung.thread={thread}");

        var told = plan.Steps.Where(step => step.Task.Parts is ["drain"] && step.Kind is StepKind.Make or StepKind.Chase)
            .Select(step => step.What).ToList();

        Assert.Contains(told, what => what.Contains("chase", StringComparison.Ordinal));
        Assert.All(told, what => Assert.Equal(faced, what.Contains("sealing face", StringComparison.Ordinal)));
    }

    /// <summary>A bung is turned from a bar, which is ordered by its diameter.</summary>
    [Fact]
    public void A_bung_is_told_by_its_bar()
    {
        var plan = Plans.Of("harbour-launch-breather.yaml");
        string Section(string id) =>
            StockWords.Section(plan.Assembly.Parts.Single(part => part.Id == id), mm => FormattableString.Invariant($"{mm:0.##}"));

        Assert.Equal("bar 26", Section("drain"));
        Assert.Equal("sheet 2", Section("shell"));
        Assert.Equal("tube 34 x 2", Section("outlet"));
    }
}
