using Vessel.Design;

namespace Vessel.Members.Inside;

/// <summary>How something inside is brought in that is not welded.</summary>
internal static class InsideWords
{
    public static string Verb(Fixing fixing) => fixing switch
    {
        Fixing.Screws => "screw",
        Fixing.Press => "press",
        _ => "lay",
    };
}
