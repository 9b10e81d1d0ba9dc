using Stringline.Cli;

return new CommandLine(Console.OpenStandardOutput(), Console.Error, SystemClock.Instance).Run(args);
