namespace Vessel.Function;

/// <summary>Gas that flows across a round fibre, in radii of the fibre and speeds of the gas far away; +x is the way of the gas.</summary>
/// <remarks>
/// Between other fibres, slowly: Kuwabara's cell (1959), psi = sin t / (2 Ku) (r (2 ln r - 1 + a) + (1 - a / 2) / r - a r^3 / 2) with the
/// share a of fibre and Ku = -ln a / 2 - 3/4 + a - a^2 / 4, out to the cell's edge at r = 1 / sqrt a. It neglects the gas's own inertia:
/// right below a fibre Reynolds number of about 1. Alone in fast gas: potential flow, psi = sin t (r - 1 / r), which no real flow outdoes
/// in front of a fibre.
/// </remarks>
internal readonly struct FibreField
{
    /// <summary>How far before a fibre alone a drop is let go, where it still follows the gas: fibre radii.</summary>
    private const double Far = 100;

    /// <summary>Share of fibre; zero for one alone in potential flow.</summary>
    private readonly double _share;

    private readonly double _twiceKu;

    private FibreField(double share, double edge)
    {
        (_share, Edge) = (share, edge);
        _twiceKu = share > 0 ? 2 * Math.Max(LeastKu, (-Math.Log(share) / 2) - 0.75 + share - (share * share / 4)) : 1;
    }

    /// <summary>Beyond half of the room in metal the cell's gap closes; such a bed is no wool.</summary>
    private const double LeastKu = 0.05;

    public static FibreField Alone { get; } = new(0, Far);

    /// <summary>Where a drop's way begins, from the fibre's axis.</summary>
    public double Edge { get; }

    public static FibreField Kuwabara(double share) => new(share, 1 / Math.Sqrt(share));

    /// <summary>
    /// Share of the gas's section, on the fibre's, that drops without inertia strike by their size alone: the stream function beside the
    /// fibre. In the cell this is Kuwabara's law of interception.
    /// </summary>
    /// <param name="reach">Diameter of the drop over the fibre's.</param>
    public double Interception(double reach) => Stream(1 + reach);

    /// <summary>
    /// Height over the axis at which a drop begins whose gas comes from so high far away, or in the cell from that height at its edge.
    /// </summary>
    public (double X, double Y) Start(double height)
    {
        if (_share > 0)
            return (-Math.Sqrt((Edge - height) * (Edge + height)), height);
        var y = height;
        // The stream function there is y (1 - 1 / r^2): four rounds leave less than 1e-12.
        for (var i = 0; i < 4; i++)
            y = height / (1 - (1 / ((Far * Far) + (y * y))));
        return (-Far, y);
    }

    public (double X, double Y) Velocity(double x, double y)
    {
        var square = (x * x) + (y * y);
        if (_share == 0)
            return (1 - (((x * x) - (y * y)) / (square * square)), -2 * x * y / (square * square));
        // Along the radius cos t p, round it -sin t q.
        var log = Math.Log(square) - 1 + _share;
        var inverse = (1 - (_share / 2)) / square;
        var p = (log + inverse - (_share / 2 * square)) / _twiceKu;
        var q = (log + 2 - inverse - (1.5 * _share * square)) / _twiceKu;
        return (((x * x * p) + (y * y * q)) / square, x * y * (p - q) / square);
    }

    /// <summary>Stream function on the line square to the gas through the fibre's axis.</summary>
    private double Stream(double r) => _share == 0
        ? r - (1 / r)
        : ((r * ((2 * Math.Log(r)) - 1 + _share)) + ((1 - (_share / 2)) / r) - (_share / 2 * r * r * r)) / _twiceKu;
}
