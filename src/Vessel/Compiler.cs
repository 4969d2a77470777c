using System.Collections.Immutable;
using System.Text;
using Vessel.Design;
using Vessel.Export;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Heads;
using Vessel.Members;
using Vessel.Planning;
using Vessel.Ports;
using Vessel.Reading;
using Vessel.Shells;
using Vessel.Sites;

namespace Vessel;

/// <summary>
/// The whole way from text to files, one step after the other: read and check, build, plan, assess, export. Pure: only
/// <see cref="OutputFolder"/> writes.
/// </summary>
public static class Compiler
{
    /// <summary>The checked design, or every fault in the text.</summary>
    public static Outcome<VesselDesign> Read(string text) => DesignReader.Read(text);

    /// <summary>The checked design with values set from outside the file, or every fault in the text.</summary>
    public static Outcome<VesselDesign> Read(string text, DesignSettings settings) => DesignReader.Read(text, settings);

    public static Assembly Assemble(VesselDesign design)
    {
        var walls = PortSites.Of(design);
        ImmutableArray<PortSite> sites = [.. design.Ports.Select(walls.Of)];
        var chamber = new Chamber(
            Courses.Build(design, sites), HeadKinds.Build(VesselEnd.Top, design, sites), HeadKinds.Build(VesselEnd.Bottom, design, sites));
        return new(design, sites, chamber, [.. sites.Select(site => new Port(site, design)), .. MemberKinds.Build(design, sites)]);
    }

    /// <summary>All findings, those that the design accepts marked.</summary>
    public static ImmutableArray<Measure> Assess(Assembly assembly) => Assess(Plan.Of(assembly));

    public static ImmutableArray<Measure> Assess(Plan plan) =>
        Acceptance.Mark(Assessment.Of(plan), plan.Assembly.Design);

    /// <summary>Faults of what the design accepts; nothing is written when there are any.</summary>
    public static ImmutableArray<Fault> Misaccepted(VesselDesign design, ImmutableArray<Measure> findings) =>
        Acceptance.Faults(findings, design);

    public static Build Compile(VesselDesign design, BuildOptions options)
    {
        var plan = Plan.Of(Assemble(design), options.Kerf);
        return Vessel.Export.Build.Of(plan, [.. Assessment.Measures(plan)], options);
    }

    /// <summary>Lazy: each file is made when it is written.</summary>
    public static IEnumerable<OutputFile> Files(Build build) => VesselFiles.Of(build);

    /// <summary>What <see cref="BuildOptions.DesignHash"/> wants: of the text as UTF-8.</summary>
    public static string HashOf(string text) => Convert.ToHexStringLower(Sha256.Of(Encoding.UTF8.GetBytes(text)));
}
