namespace Vessel.Tests.Support;

/// <summary>Complete elliptic integrals of parameter m = k^2 by the arithmetic-geometric mean; to about 1e-15.</summary>
/// <remarks>
/// a, b, c from 1, sqrt(1 - m), sqrt m: K = pi / 2a and E = K (1 - sum 2^(n - 1) c_n^2) (Gauss; NIST Digital Library of
/// Mathematical Functions 19.8).
/// </remarks>
internal static class Elliptic
{
    public static double K(double m) => Both(m).K;

    public static double E(double m) => m == 1 ? 1 : Both(m).E;

    private static (double K, double E) Both(double m)
    {
        var (a, b, square, weight, sum) = (1.0, Math.Sqrt(1 - m), m, 0.5, 0.0);
        // Convergence is quadratic: what is left out is the square of this.
        while (square > 1e-24)
        {
            sum += weight * square;
            var c = (a - b) / 2;
            (a, b, square, weight) = ((a + b) / 2, Math.Sqrt(a * b), c * c, 2 * weight);
        }

        sum += weight * square;

        var k = Math.PI / (2 * a);
        return (k, k * (1 - sum));
    }
}
