using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Mockups;

/// <summary>A ring to stand a mock-up in whose bottom is round, or has ports: a body of its own, printed beside it.</summary>
/// <param name="Mesh">Mesh in print size, standing on the bed.</param>
/// <param name="Radius">Outside, mm of the print.</param>
public sealed record Stand(Mesh Mesh, double Radius)
{
    /// <summary>Across the ring, mm of the print.</summary>
    private const double Width = 5;

    /// <summary>Between ring and vessel, mm of the print.</summary>
    private const double Play = 0.3;

    private const int Rises = 12;

    private const int Ways = 90;

    /// <summary>Null where none is asked for, or bottom ports leave no room for it.</summary>
    public static Stand? Of(MockupPlan plan)
    {
        var (options, scale) = (plan.Options, plan.Options.Scale);
        if (options.Stand == 0 || !plan.Obstacles.IsEmpty)
            return null;
        var rim = plan.Outside.Pieces.OfType<LinePiece>().Where(line => line.A.U == line.B.U).Select(line => line.A.U).DefaultIfEmpty(0)
            .Max();
        var below = plan.Ports.Where(port => port.Site.Frame.Z.Z < -0.5).ToList();
        // Everything below stays inside the ring.
        var taken = below.Count == 0 ? 0 : below.SelectMany(port => port.Bodies(0)).Max(FromAxis);
        var inner = Math.Max(0.65 * rim, taken + (2 / scale));
        var outer = inner + (Width / scale);
        if (outer > 0.97 * rim)
            return null;
        var top = Enumerable.Range(0, Rises + 1).Select(i => Under(plan.Outside, inner + ((outer - inner) * i / Rises), Play / scale))
            .ToList();
        var lowest = Math.Min(Lowest(plan), top.Min(p => p.V));
        var floor = lowest - (options.Stand / scale);
        var section = top.Append(new(outer, floor)).Append(new(inner, floor)).Select(p => scale * new Point2(p.U, p.V - floor));
        return new(Turned([.. section]), scale * outer);
    }

    /// <summary>The lowest place at a distance from the axis, and so much below it along the axis.</summary>
    private static Point2 Under(Profile outside, double radius, double play)
    {
        var hit = outside.FirstHit(new(radius, 0, outside.Start.V - 1), Vector3.UnitZ)
            ?? throw new InvalidOperationException("a stand reaches beside its vessel");
        return new(radius, hit.At.Z - (play / Math.Max(0.2, Math.Abs(hit.Normal.Z))));
    }

    /// <summary>How far a body reaches from the vessel's axis, or a hair more: between two ways its corner may lie further out.</summary>
    private static double FromAxis(ConvexBody body) => Enumerable.Range(0, Ways).Max(i =>
    {
        var way = new Vector3(Math.Cos(Turns.Full * i / Ways), Math.Sin(Turns.Full * i / Ways), 0);
        return body.Furthest(way).Dot(way);
    }) / Math.Cos(Math.PI / Ways);

    private static double Lowest(MockupPlan plan) => plan.Ports
        .SelectMany(port => port.Bodies(0))
        .Select(body => body.Furthest(-Vector3.UnitZ).Z)
        .Append(plan.Outside.Start.V)
        .Min();

    /// <summary>A section, counter-clockwise seen with the axis on its left, turned once round.</summary>
    private static Mesh Turned(ImmutableArray<Point2> section)
    {
        var most = section.Max(p => p.U);
        var around = Math.Max(24, (int)Math.Ceiling(Math.PI / Math.Acos(1 - (Mockup.UsualChord / Math.Max(most, 1)))));
        var vertices = ImmutableArray.CreateBuilder<Vector3>(around * section.Length);
        var triangles = ImmutableArray.CreateBuilder<Triangle>(2 * around * section.Length);
        for (var i = 0; i < around; i++)
        {
            var (sin, cos) = Math.SinCos(Turns.Full * i / around);
            foreach (var (r, z) in section)
                vertices.Add(new(most + (r * cos), most + (r * sin), z));
            var (here, next) = (i * section.Length, (i + 1) % around * section.Length);
            for (var k = 0; k < section.Length; k++)
            {
                var l = (k + 1) % section.Length;
                triangles.Add(new(here + k, here + l, next + l));
                triangles.Add(new(here + k, next + l, next + k));
            }
        }

        var mesh = new Mesh(vertices.MoveToImmutable(), triangles.MoveToImmutable());
        return mesh.Volume > 0 ? mesh : mesh with { Triangles = [.. mesh.Triangles.Select(t => new Triangle(t.A, t.C, t.B))] };
    }
}
