using Vessel.Design;
using Vessel.Fixtures;
using Vessel.Function;
using Vessel.Mockups;
using Vessel.Planning;

namespace Vessel.Findings;

/// <summary>Ports that get no fixture to print, though the design asks for them.</summary>
internal static class FixtureRules
{
    public static IEnumerable<Measure> Of(Plan plan) =>
        PortFixture.Of(plan).Where(fixture => fixture.Refused is not null).Select(fixture => new Measure(
        FindingCodes.NoFixture,
        Severity.Note,
        [Slug.Of(fixture.Site.Port.Name)],
        () => $"'{fixture.Site.Port.Name}' gets no printed fixture: {fixture.Refused}; hold it by measuring, or move it.",
        [],
        plan.Assembly.Design.PlaceOf("fixtures")));
}
