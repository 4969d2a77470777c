using Vessel.Geometry;

namespace Vessel.Export.Pictures;

/// <summary>Samples of a picture: what is nearest, how bright, and which body it is of.</summary>
internal sealed class Raster(Outlook outlook)
{
    /// <summary>Brightness of a sample of a cut face is told by a pattern instead.</summary>
    public const byte Cut = 255;

    private readonly float[] _depth = NewDepth(outlook);

    public Outlook Outlook => outlook;

    /// <summary>1-based; 0 where nothing is.</summary>
    public ushort[] Body { get; } = new ushort[outlook.Width * outlook.Height];

    /// <summary>0 to 254, or <see cref="Cut"/>.</summary>
    public byte[] Light { get; } = new byte[outlook.Width * outlook.Height];

    /// <summary>Depth of the nearest thing at a sample, in samples; minus infinity where nothing is.</summary>
    public float DepthAt(int place) => _depth[place];

    /// <param name="isCut">Whether a facet is a cut face: hatched, not lit.</param>
    public void Draw(Mesh mesh, Frame3 place, int body, Func<Triangle, bool>? isCut = null)
    {
        var seen = new Vector3[mesh.Vertices.Length];
        for (var i = 0; i < seen.Length; i++)
            seen[i] = outlook.Seen(place.ToOuter(mesh.Vertices[i]));
        var normals = new CornerNormals(mesh);
        for (var i = 0; i < mesh.Triangles.Length; i++)
        {
            var triangle = mesh.Triangles[i];
            var (a, b, c) = (seen[triangle.A], seen[triangle.B], seen[triangle.C]);
            // Twice the area as it is seen; y runs down, so a front facet turns the other way.
            var turn = ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));
            if (turn >= -1e-9 || !HoldsSample(a, b, c))
                continue;
            if (isCut?.Invoke(triangle) == true)
                Fill(a, b, c, turn, new(Cut, Cut, Cut), body);
            else
                Fill(a, b, c, turn, new(Lit(triangle.A, i), Lit(triangle.B, i), Lit(triangle.C, i)), body);
        }

        double Lit(int vertex, int facet) => Brightness(place.Turn(normals.At(vertex, facet)));
    }

    /// <summary>Whether a facet's box holds the middle of a sample.</summary>
    private static bool HoldsSample(Vector3 a, Vector3 b, Vector3 c) =>
        Math.Ceiling(Math.Min(a.Y, Math.Min(b.Y, c.Y)) - 0.5) <= Math.Floor(Math.Max(a.Y, Math.Max(b.Y, c.Y)) - 0.5)
        && Math.Ceiling(Math.Min(a.X, Math.Min(b.X, c.X)) - 0.5) <= Math.Floor(Math.Max(a.X, Math.Max(b.X, c.X)) - 0.5);

    /// <summary>Brightness by light from over the viewer's left shoulder, with a weak light from the right; 0 to 254.</summary>
    private double Brightness(Vector3 normal)
    {
        var length = normal.Length;
        if (length == 0)
            return 100;
        var (right, up, eye) = (normal.Dot(outlook.Right) / length, normal.Dot(outlook.Up) / length, normal.Dot(outlook.Eye) / length);
        var key = Math.Max(0, (-0.45 * right) + (0.6 * up) + (0.66 * eye));
        var fill = Math.Max(0, (0.8 * right) + (0.6 * eye));
        return 254 * Math.Min(1, 0.5 + (0.5 * key) + (0.15 * fill));
    }

    /// <param name="light">Light at each corner in turn.</param>
    private void Fill(Vector3 a, Vector3 b, Vector3 c, double turn, Vector3 light, int body)
    {
        var low = Math.Max(0, (int)Math.Ceiling(Math.Min(a.Y, Math.Min(b.Y, c.Y)) - 0.5));
        var high = Math.Min(outlook.Height - 1, (int)Math.Floor(Math.Max(a.Y, Math.Max(b.Y, c.Y)) - 0.5));
        // Depth and light are planes over the picture.
        var (dzx, dzy) = Slope(a.Z, b.Z, c.Z);
        var (dlx, dly) = Slope(light.X, light.Y, light.Z);
        for (var row = low; row <= high; row++)
        {
            var y = row + 0.5;
            var (left, right) = (double.MaxValue, double.MinValue);
            Cross(a, b);
            Cross(b, c);
            Cross(c, a);
            var start = Math.Max(0, (int)Math.Ceiling(left - 0.5));
            var end = Math.Min(outlook.Width - 1, (int)Math.Floor(right - 0.5));
            for (var column = start; column <= end; column++)
            {
                var (x, place) = (column + 0.5, (row * outlook.Width) + column);
                var depth = (float)(a.Z + (dzx * (x - a.X)) + (dzy * (y - a.Y)));
                if (depth <= _depth[place])
                    continue;
                _depth[place] = depth;
                Body[place] = (ushort)body;
                Light[place] = (byte)Math.Clamp(light.X + (dlx * (x - a.X)) + (dly * (y - a.Y)), 0, 255);
            }

            void Cross(Vector3 p, Vector3 q)
            {
                if (p.Y <= y == q.Y <= y)
                    return;
                var x = p.X + ((y - p.Y) / (q.Y - p.Y) * (q.X - p.X));
                (left, right) = (Math.Min(left, x), Math.Max(right, x));
            }
        }

        (double X, double Y) Slope(double va, double vb, double vc) => (
            (((vb - va) * (c.Y - a.Y)) - ((vc - va) * (b.Y - a.Y))) / turn,
            (((vc - va) * (b.X - a.X)) - ((vb - va) * (c.X - a.X))) / turn);
    }

    private static float[] NewDepth(Outlook outlook)
    {
        var depth = new float[outlook.Width * outlook.Height];
        Array.Fill(depth, float.NegativeInfinity);
        return depth;
    }
}
