using Gudgeon.Planning.Bench;

switch (args)
{
    case ["reach", ..]:
        ReachBench.Run(args.Length > 1 ? int.Parse(args[1]) : 12);
        return 0;
    case ["strip", ..]:
        StripBench.Run(args.Length > 1 ? int.Parse(args[1]) : 3, args.Length > 2 ? int.Parse(args[2]) : Gudgeon.Planning.StripOrder.StripPlanner.UsualEffort);
        return 0;
    default:
        Console.Error.WriteLine("bench: reach [networks] | strip [strips [effort]]");
        return 1;
}
