using System.Collections.Immutable;
using NetTopologySuite.Geometries;
using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Geometry;

/// <summary>Small parts held in a frame, by laws of areas and distances.</summary>
public sealed class HeldPartTests
{
    private const double Slot = 2.5;
    private const double Tab = 1.5;
    private const double Band = 8;

    /// <summary>A bulge of one is half a circle, of tan(22.5 degrees) a quarter.</summary>
    private static readonly double _quarter = Math.Tan(Math.PI / 8);

    public static TheoryData<string> Names => ["disc", "strip", "ring sector", "stadium", "elbow"];

    private static ImmutableArray<Bulge> Named(string name) => name switch
    {
        "disc" => [new(new(20, 0), 1), new(new(-20, 0), 1)],
        "strip" => [new(new(0, 0), 0), new(new(44, 0), 0), new(new(44, 18), 0), new(new(0, 18), 0)],
        // Its inner edge turns towards the slot's own side, by a radius that leaves room.
        "ring sector" => [new(new(40, 0), _quarter), new(new(0, 40), 0), new(new(0, 20), -_quarter), new(new(20, 0), 0)],
        "stadium" => [new(new(0, 0), 0), new(new(25, 0), 1), new(new(25, 16), 0), new(new(0, 16), 1)],
        "elbow" =>
            [new(new(0, 0), 0), new(new(40, 0), 0), new(new(40, 12), 0), new(new(12, 12), 0), new(new(12, 40), 0), new(new(0, 40), 0)],
        _ => throw new ArgumentOutOfRangeException(nameof(name)),
    };

    /// <summary>Slots and tabs together fill the belt between the outline and its parallel.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Slots_and_tabs_fill_the_belt_round_the_part(string name)
    {
        var (outline, held) = (Named(name), HeldPart.Of(Named(name), Slot, Tab, Band)!);
        var belt = BulgeChain.Area(KerfOffset.Right(outline, Slot)!.Value) - BulgeChain.Area(outline);
        var slots = held.Slots.Sum(slot => -BulgeChain.Area(slot));
        var tabs = held.Slots.Length;

        Assert.InRange(tabs, 2, 3);
        Assert.All(held.Slots, slot => Assert.True(BulgeChain.Area(slot) < 0));
        // A tab is as wide as asked for on the outline; on a curve of radius R its far end is wider or narrower by the slot over R,
        // here no less than 8.
        Near.Absolute(belt - (tabs * Tab * Slot), slots, tabs * Tab * Slot * Slot / 2 / 8);
    }

    /// <summary>On one side a slot lies on the part, on the other the slot's width off; never between part and less.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void A_slot_follows_the_part_and_keeps_its_width(string name)
    {
        var (outline, held) = (Named(name), HeldPart.Of(Named(name), Slot, Tab, Band)!);
        var part = Ring(outline);
        foreach (var slot in held.Slots)
        {
            var off = BulgeChain.Points(slot, 64).ConvertAll(at => part.Distance(new Point(at.U, at.V)));
            // Chords of 64 a piece lie off the longest arc, half a circle of 20, by R (1 - cos(pi / 128)).
            const double sagitta = 0.01;

            Assert.True(off.Min() < sagitta && Math.Abs(off.Max() - Slot) < sagitta);
            // The two short ends lie between; all the rest is at one of both distances, or further out round a corner's outside.
            Assert.True(off.Count(d => d > sagitta && d < Slot - sagitta) <= 2 * 64);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Nothing_crosses_and_all_lies_in_the_frame(string name)
    {
        var held = HeldPart.Of(Named(name), Slot, Tab, Band)!;
        var rings = held.Slots.Select(Ring).ToList();
        var frame = new Polygon(Ring(held.Frame));

        Assert.All(rings, ring => Assert.True(new Polygon(ring).IsValid && frame.Contains(ring)));
        Assert.All(from i in Enumerable.Range(0, rings.Count) from j in Enumerable.Range(0, i) select (rings[i], rings[j]), pair =>
            // Across an arc of radius 20 that turns towards the slot a tab narrows by the slot over the radius.
            Assert.True(pair.Item1.Distance(pair.Item2) > 0.99 * Tab * (1 - (Slot / 20))));
        Assert.All(rings, ring => Assert.True(frame.Boundary.Distance(ring) > Band - 1e-9));
        // One piece of metal is left: the part hangs in its frame.
        Assert.IsType<Polygon>(rings.Aggregate((NetTopologySuite.Geometries.Geometry)frame,
            (left, ring) => left.Difference(new Polygon(ring))));
    }

    [Fact]
    public void An_inner_corner_tighter_than_the_slot_takes_no_frame()
    {
        // A groove 3 wide has no room for two slots of 2.5.
        ImmutableArray<Bulge> grooved =
        [
            new(new(0, 0), 0), new(new(40, 0), 0), new(new(40, 30), 0), new(new(21.5, 30), 0), new(new(21.5, 20), -1),
            new(new(18.5, 20), 0),
            new(new(18.5, 30), 0), new(new(0, 30), 0),
        ];

        Assert.Null(HeldPart.Of(grooved, Slot, Tab, Band));
    }

    private static LinearRing Ring(ImmutableArray<Bulge> chain) =>
        new([.. BulgeChain.Points(chain, 64) is var points ? points.Append(points[0]).Select(at => new Coordinate(at.U, at.V)) : []]);
}
