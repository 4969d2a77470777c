using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Sites;

namespace Vessel.Ports;

/// <summary>Fills the records of ports from their sections; by the same rule as the whole design.</summary>
internal static class PortBuilder
{
    /// <summary>Port as the file gives it: without a length inside that is not given, a bung with its whole length.</summary>
    public static PortDesign Build(Section section)
    {
        var host = section.Text("in") switch
        {
            "shell" => PortHost.Shell,
            "top" => PortHost.Top,
            _ => PortHost.Bottom,
        };
        var place = Place(section.Child("at") ?? Section.Absent(section.Path), host);
        var joint = section.Text("joint") == "set_in" ? PortJoint.SetIn : PortJoint.SetOn;
        var tube = section.Child("tube");
        var bung = section.Child("bung");
        var round = bung ?? tube ?? Section.Absent(section.Path);
        // While the joint is at fault nothing can be said about the hole.
        var outside = section.Has("joint") ? round.Number("outside_diameter") : double.NaN;
        return new PortDesign(
            section.Path,
            section.Text("name") ?? "",
            host,
            place,
            section.Metal,
            outside,
            bung is null ? outside - (2 * round.Number("wall")) : bung.Thread("thread")?.TapDrill ?? double.NaN,
            (bung ?? section).Number("length"),
            joint == PortJoint.SetIn ? section.NumberOr("inside_length", 0) : 0,
            joint == PortJoint.SetIn ? section.Number("clearance") : 0,
            joint,
            section.Text("cut") switch
            {
                "ground" => EndCut.Ground,
                "hole_saw" => EndCut.HoleSaw,
                _ => EndCut.Square,
            },
            bung?.Thread("thread"),
            section.Thread("fitting"))
        {
            Purpose = PortPurposes.Find(section.Text("purpose")),
            InnerHeight = joint == PortJoint.SetIn && section.Given.Contains("inner_height") ? section.Number("inner_height") : null,
            IsFlush = joint == PortJoint.SetIn && section.Text("inner_end") == "flush",
            Elbow = section.Child("elbow") is { } elbow ? Elbow(elbow) : null,
            Windows = WindowsBuilder.Build(section),
        };
    }

    /// <summary>The ports with what hangs on their hosts: how far a set-in one reaches in, and what is left of a bung outside.</summary>
    /// <param name="sites">Sites of the ports as the file gives them.</param>
    public static ImmutableArray<PortDesign> Reaching(PortSites sites, ImmutableArray<Section> sections) =>
        [.. sites.All.Zip(sections, (stand, section) => Reaching(sites, stand, section))];

    private static PortDesign Reaching(PortSites sites, PortStand stand, Section section)
    {
        var port = stand.Port;
        if (port.Joint == PortJoint.SetOn)
            return port;
        var reaching = port.InnerHeight is { } height ? port with { InsideLength = stand.Site?.ToHeight(height) ?? double.NaN }
            : port.IsFlush || section.Given.Contains("inside_length") ? port
            : port with { InsideLength = stand.Site?.ToComeThrough ?? double.NaN };
        // A bung's own length is that of the whole.
        return section.Child("bung") is null ? reaching
            : reaching with { Length = reaching.Length - reaching.InsideLength - sites.Through(reaching) };
    }

    private static ElbowDesign Elbow(Section section) => new(
        section.Path,
        // While the number of pieces is at fault nothing can be said about their slants.
        section.Has("pieces") ? section.Number("angle") : double.NaN,
        section.Number("radius"),
        section.Has("pieces") ? (int)section.Number("pieces") : 2,
        section.Number("direction"),
        section.Number("end_length"),
        section.Text("cut") == "square" ? MitreCut.Square : MitreCut.Sawn);

    private static PortPlace Place(Section at, PortHost host)
    {
        var angle = Turns.From(at.Number("angle"), 0);
        return host == PortHost.Shell
            ? new PortPlace(at.Number("height"), angle, at.Number("offset"), at.Number("tilt"), 0)
            : new PortPlace(0, angle, 0, 0, at.Number("radius")) { SquareToSurface = at.Text("square_to_surface") == "true" };
    }
}
