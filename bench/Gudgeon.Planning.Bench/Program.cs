using Gudgeon.Planning.Bench;

switch (args)
{
    case ["reach", ..]:
        ReachBench.Run(args.Length > 1 ? int.Parse(args[1]) : 12);
        return 0;
    default:
        Console.Error.WriteLine("bench: reach [networks]");
        return 1;
}
