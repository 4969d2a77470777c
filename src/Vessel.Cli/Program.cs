using System.Text;
using Vessel.Cli;

// The same bytes in a pipe whatever the machine's code page.
Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
var style = ConsoleStyle.Of(
    Console.IsOutputRedirected || Console.IsErrorRedirected, Environment.GetEnvironmentVariable("NO_COLOR"));
var console = new CommandConsole(Console.Out, Console.Error, style)
{
    Input = Console.IsInputRedirected || Console.IsOutputRedirected ? null : Console.In,
};
return CommandLine.Run(args, console);
