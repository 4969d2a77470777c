using Vessel.Design;

namespace Vessel.Cli.Commands;

/// <summary>A design file as the user named it, read.</summary>
/// <param name="Shown">The path as given, for messages.</param>
internal sealed record DesignFile(string Shown, string Text)
{
    /// <summary>The reader refuses more than a megabyte; no more than that is taken in.</summary>
    private const int MostBytes = 1 << 20;

    /// <summary>Null, with a complaint written, when it cannot be read.</summary>
    public static DesignFile? Open(FileInfo file, string shown, CommandConsole console)
    {
        try
        {
            if (Directory.Exists(file.FullName))
                return Complain($"'{shown}' is a folder; name a design file in it");
            if (!file.Exists)
                return Complain($"there is no file '{shown}'");
            if (file.Length > MostBytes)
                return Complain($"'{shown}' is {file.Length} bytes long; a design file may have {MostBytes}");
            using var reader = new StreamReader(file.FullName);
            return new(shown, reader.ReadToEnd());
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Complain($"could not read '{shown}': {e.Message}");
        }

        DesignFile? Complain(string what)
        {
            console.Error.WriteLine($"error: {what}");
            return null;
        }
    }

    /// <summary>The checked design; null, with every fault written, when there is none.</summary>
    public VesselDesign? Check(CommandConsole console)
    {
        var outcome = Compiler.Read(Text);
        FaultText.Write(this, outcome.Faults, console);
        return outcome.Value;
    }
}
