using Vessel.Function;
using Vessel.Geometry;
using Vessel.Members.Straps;
using Vessel.Parts;
using Vessel.Tests.Members.Straps;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Reassembly;

/// <summary>
/// Parts cut from the written DXF, bent or rolled and put together, meet as the tool says: of every design and of 100
/// random ones. Every point is measured in the vessel, so a flat of the wrong hand is found, too.
/// </summary>
public sealed class ReassemblyTests
{
    private const int Batches = 10;
    private const int InBatch = 10;

    public static TheoryData<int> RandomBatches => new(Enumerable.Range(0, Batches));

    [Theory]
    [MemberData(nameof(Repository.DesignFiles), MemberType = typeof(Repository))]
    public void A_design_goes_together_as_cut(string file) =>
        AssertMeets(Compiler.Assemble(Compiler.Read(Repository.Design(file)).Value!), 20);

    [Theory]
    [MemberData(nameof(RandomBatches))]
    public void Random_vessels_go_together_as_cut(int batch)
    {
        for (var seed = batch * InBatch; seed < (batch + 1) * InBatch; seed++)
            AssertMeets(Compiler.Assemble(RandomDesigns.At(seed)), 3);
    }

    [Fact]
    public void Random_straps_go_round_their_shells_as_cut()
    {
        for (var seed = 1; seed <= 20; seed++)
            AssertMeets(Compiler.Assemble(Straps.Random(seed)), 800);
    }

    /// <param name="least">Meetings that there must be at the least, lest nothing was measured.</param>
    internal static void AssertMeets(Assembly vessel, int least)
    {
        var pieces = vessel.Parts
            .Where(part => part.Flat is { Kind: not FlatKind.Blank })
            .ToDictionary(part => part.Id, CutPiece.Of);
        var blanks = vessel.Parts.Where(part => part.Flat is { Kind: FlatKind.Blank }).ToDictionary(part => part.Id, CutPiece.Of);
        var meetings = ShellMeetings.Of(vessel, pieces)
            .Concat(OtherMeetings.Of(vessel, pieces))
            .Concat(HeadMeetings.Of(vessel, blanks))
            .Concat(ElbowMeetings.Of(vessel, pieces))
            .ToList();

        Assert.True(meetings.Count >= least, $"only {meetings.Count} places were measured");
        Assert.All(meetings, meeting => Assert.True(
            meeting.Off <= meeting.Allowed, $"{meeting.What} is off by {meeting.Off}, allowed are {meeting.Allowed}"));
    }
}
