namespace Vessel.Geometry;

/// <content>
/// Edges that no flip removes: a missing one is recovered by flipping those that cross it (Sloan 1993, "A fast algorithm for
/// generating constrained Delaunay triangulations").
/// </content>
internal sealed partial class Triangulation
{
    private readonly HashSet<(int, int)> _creases = [];

    /// <summary>Makes a-b an edge that no flip removes. Fails when it crosses a fixed edge or runs through a point.</summary>
    public void Fix(int a, int b)
    {
        var crossing = CrossedBy(a, b);
        while (crossing.Count > 0)
        {
            var (p, q) = crossing.Dequeue();
            var (t, k) = FindEdge(p, q);
            if (IsFixed(t, k))
                throw new InvalidOperationException("outlines cross: two fixed edges cross each other");
            if (!IsConvex(t, k))
            {
                crossing.Enqueue((p, q));
                continue;
            }

            Flip(t, k);
            var (r, s) = (Corner(t, k), Corner(t, (k + 2) % 3));
            if (r != a && r != b && s != a && s != b && Crosses(a, b, r, s))
                crossing.Enqueue((r, s));
            else
                Suspect(t, (k + 1) % 3);
        }

        var (found, at) = FindEdge(a, b);
        SetFixed(found, at);
        Legalise();
    }

    /// <summary>Fixes an edge, as <see cref="Fix"/> does, that has the same side to its left and right.</summary>
    public void FixCrease(int a, int b)
    {
        Fix(a, b);
        _creases.Add((a, b));
        _creases.Add((b, a));
    }

    /// <summary>
    /// For each triangle whether it lies inside: the box's rim is outside and every fixed edge but a crease changes sides.
    /// </summary>
    public bool[] Inside()
    {
        var inside = new bool[TriangleCount];
        var seen = new bool[TriangleCount];
        var open = new Stack<int>();
        var start = Enumerable.Range(0, TriangleCount).First(t => Enumerable.Range(0, 3).Any(k => Neighbour(t, k) == None));
        open.Push(start);
        seen[start] = true;
        while (open.TryPop(out var t))
        {
            for (var k = 0; k < 3; k++)
            {
                var next = Neighbour(t, k);
                if (next == None || seen[next])
                    continue;
                seen[next] = true;
                inside[next] = inside[t] ^ (IsFixed(t, k) && !_creases.Contains((Corner(t, (k + 1) % 3), Corner(t, (k + 2) % 3))));
                open.Push(next);
            }
        }

        return inside;
    }

    private void SetFixed(int t, int k)
    {
        _fixed[(3 * t) + k] = true;
        var next = Neighbour(t, k);
        if (next != None)
            _fixed[(3 * next) + SideTowards(next, t)] = true;
    }

    private bool Crosses(int a, int b, int p, int q) =>
        Grid2.Turn(_points[a], _points[b], _points[p]) * Grid2.Turn(_points[a], _points[b], _points[q]) < 0
        && Grid2.Turn(_points[p], _points[q], _points[a]) * Grid2.Turn(_points[p], _points[q], _points[b]) < 0;

    /// <summary>The edges strictly crossed by the segment a-b, from a on; empty when a-b is an edge.</summary>
    private Queue<(int P, int Q)> CrossedBy(int a, int b)
    {
        var crossed = new Queue<(int, int)>();
        var (t, k) = FirstCrossed(a, b);
        while (t != None)
        {
            var (p, q) = (Corner(t, (k + 1) % 3), Corner(t, (k + 2) % 3));
            crossed.Enqueue((p, q));
            var u = Neighbour(t, k);
            var apex = SideTowards(u, t);
            if (Corner(u, apex) == b)
                break;
            var turn = Grid2.Turn(_points[a], _points[b], _points[Corner(u, apex)]);
            if (turn == 0)
                throw new InvalidOperationException("outlines touch: an edge runs through a point of another");
            // The walk leaves through the side whose ends lie on either side of a-b: the apex replaces p or q.
            (t, k) = turn > 0
                ? (u, IndexOf(u, Grid2.Turn(_points[a], _points[b], _points[p]) > 0 ? p : q))
                : (u, IndexOf(u, Grid2.Turn(_points[a], _points[b], _points[p]) > 0 ? q : p));
        }

        return crossed;
    }

    /// <summary>The triangle at a through whose far side a-b leaves; none when a-b is an edge.</summary>
    private (int Triangle, int Side) FirstCrossed(int a, int b)
    {
        foreach (var (t, k) in Around(a))
        {
            var (p, q) = (Corner(t, (k + 1) % 3), Corner(t, (k + 2) % 3));
            if (p == b || q == b)
                return (None, None);
            if (Grid2.Turn(_points[a], _points[p], _points[b]) > 0 && Grid2.Turn(_points[a], _points[q], _points[b]) < 0)
                return (t, k);
        }

        throw new InvalidOperationException("outlines touch: an edge runs through a point of another");
    }

    private (int Triangle, int Side) FindEdge(int a, int b)
    {
        // An edge that a new one crosses may end in a corner of the box, but never in two.
        if (a < FirstPoint)
            (a, b) = (b, a);
        foreach (var (t, k) in Around(a))
        {
            if (Corner(t, (k + 1) % 3) == b)
                return (t, (k + 2) % 3);
            if (Corner(t, (k + 2) % 3) == b)
                return (t, (k + 1) % 3);
        }

        throw new InvalidOperationException("no such edge");
    }
}
