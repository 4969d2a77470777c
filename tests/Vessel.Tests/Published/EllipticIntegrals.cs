using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>
/// The measure of the other checks. E(1/2) as known from the lemniscate; the identity of Legendre (NIST Digital Library
/// of Mathematical Functions 19.7.1) ties K and E of m and 1 - m.
/// </summary>
public sealed class EllipticIntegrals
{
    [Fact]
    public void E_of_one_half() => Near.Printed("1.350643881", Elliptic.E(0.5));

    [Theory]
    [InlineData(0.001)]
    [InlineData(0.3)]
    [InlineData(0.5)]
    [InlineData(0.9)]
    public void Legendres_relation_holds(double m)
    {
        var sum = (Elliptic.E(m) * Elliptic.K(1 - m)) + (Elliptic.E(1 - m) * Elliptic.K(m)) - (Elliptic.K(m) * Elliptic.K(1 - m));

        // A dozen roundings of numbers below ten.
        Near.Absolute(Math.PI / 2, sum, 1e-14);
    }

    [Fact]
    public void Ends_of_the_range()
    {
        Assert.Equal(Math.PI / 2, Elliptic.K(0));
        Assert.Equal(Math.PI / 2, Elliptic.E(0));
        Assert.Equal(1, Elliptic.E(1));
    }
}
