using Stringline.Desk;

return new CommandLine(Console.OpenStandardOutput(), Console.Error, SystemClock.Instance).Run(args);
