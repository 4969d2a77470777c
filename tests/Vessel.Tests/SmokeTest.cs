using Xunit;
namespace Vessel.Tests;

public sealed class SmokeTest
{
    [Fact]
    public void Runs() => Assert.True(true);
}
