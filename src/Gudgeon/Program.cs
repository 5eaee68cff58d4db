return Gudgeon.Commands.CommandLine.Run(args, Console.Out, Console.Error, TimeProvider.System);
