namespace Vessel.Geometry;

/// <summary>How long a linear map can make a unit vector.</summary>
public static class SpectralNorm
{
    /// <summary>
    /// Norm of the map whose rows are given: the root of the greatest eigenvalue of their symmetric product, in closed form (the cubic by a
    /// cosine). Its error is some 1e-8 of itself where two eigenvalues nearly meet, else rounding.
    /// </summary>
    public static double Of(params ReadOnlySpan<Vector3> rows)
    {
        var (xx, yy, zz, xy, xz, yz) = (0.0, 0.0, 0.0, 0.0, 0.0, 0.0);
        foreach (var row in rows)
        {
            (xx, yy, zz) = (xx + (row.X * row.X), yy + (row.Y * row.Y), zz + (row.Z * row.Z));
            (xy, xz, yz) = (xy + (row.X * row.Y), xz + (row.X * row.Z), yz + (row.Y * row.Z));
        }

        var mean = (xx + yy + zz) / 3;
        var (a, b, c) = (xx - mean, yy - mean, zz - mean);
        var spread = Math.Sqrt(((a * a) + (b * b) + (c * c) + (2 * ((xy * xy) + (xz * xz) + (yz * yz)))) / 6);
        if (spread == 0)
            return Math.Sqrt(mean);
        var determinant = (a * ((b * c) - (yz * yz))) - (xy * ((xy * c) - (yz * xz))) + (xz * ((xy * yz) - (b * xz)));
        var angle = Math.Acos(Math.Clamp(determinant / (2 * spread * spread * spread), -1, 1)) / 3;
        return Math.Sqrt(mean + (2 * spread * Math.Cos(angle)));
    }
}
