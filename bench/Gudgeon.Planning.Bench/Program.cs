using Gudgeon.Planning.Bench;

switch (args)
{
    case ["reach", ..]:
        ReachBench.Run(args.Length > 1 ? int.Parse(args[1]) : 12);
        return 0;
    case ["books"]:
        BookBench.Run();
        return 0;
    case ["strip", ..]:
        StripBench.Run(args.Length > 1 ? int.Parse(args[1]) : 3, args.Length > 2 ? int.Parse(args[2]) : Gudgeon.Planning.StripOrder.StripPlanner.UsualEffort);
        return 0;
    case ["write", var folder, var size, .. var rest]:
        ProjectFiles.Write(folder, int.Parse(size), rest.Length > 0 ? int.Parse(rest[0]) : 10, rest.Length > 1 ? int.Parse(rest[1]) : 20_000);
        return 0;
    case ["projects", var jobs, var seconds, .. var more]:
        ProjectBench.Run(
            int.Parse(jobs), double.Parse(seconds, System.Globalization.CultureInfo.InvariantCulture),
            more.Length > 0 ? int.Parse(more[0]) : 1, more.Length > 1 ? int.Parse(more[1]) : 9000);
        return 0;
    default:
        Console.Error.WriteLine("bench: write folder tasks [of each cell [first seed]] | projects tasks seconds [every [first seed]] | reach [networks] | books | strip [strips [effort]]");
        return 1;
}
