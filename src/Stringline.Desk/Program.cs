using Stringline.Desk;

return new CommandLine(Console.OpenStandardOutput(), Console.Error, SystemClock.Instance, packetMaker: null).Run(args);
