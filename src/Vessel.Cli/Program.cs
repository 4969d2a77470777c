using Vessel.Cli;

return CommandLine.Run(args, Console.Out, Console.Error, ConsoleStyle.Of(Console.IsOutputRedirected));
