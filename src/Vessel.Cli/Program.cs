using System.Text;
using Vessel.Cli;

try
{
    // The same bytes in a pipe whatever the machine's code page.
    Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
    var style = ConsoleStyle.Of(
        Console.IsOutputRedirected || Console.IsErrorRedirected, Environment.GetEnvironmentVariable("NO_COLOR"));
    var width = Console.IsOutputRedirected ? int.MaxValue : Console.WindowWidth is >= 40 and var wide ? wide : 80;
    var console = new CommandConsole(
        Console.IsOutputRedirected ? Console.Out : new WrappingWriter(Console.Out, width),
        Console.IsErrorRedirected || Console.IsOutputRedirected ? Console.Error : new WrappingWriter(Console.Error, width),
        style)
    {
        // Nobody sees a question whose output goes elsewhere; a pipe needs none.
        Input = Console.IsInputRedirected || !Console.IsOutputRedirected ? Console.In : null,
        IsAsking = !Console.IsInputRedirected,
        Width = width,
    };
    return CommandLine.Run(args, console);
}
catch (Exception e) when (e is IOException or UnauthorizedAccessException)
{
    // Standard output or error is closed, so that there is nobody to tell.
    return ExitCodes.CouldNotWrite;
}
