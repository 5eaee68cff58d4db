using Gudgeon.Bench;

// Each figure is a ratio to a yardstick measured in the same run: absolute times say more about the machine than about the code.
string[] all = ["append", "open", "page", "photo", "assess"];
var wanted = args.Length == 0 ? all : args;
foreach (var name in wanted)
{
    switch (name)
    {
        case "append":
            AppendBench.Run();
            break;
        case "open":
            OpenBench.Run();
            break;
        case "page":
            await PageBench.Run();
            break;
        case "assess":
            AssessBench.Run();
            break;
        case "photo":
            await PhotoBench.Run(null);
            break;
        case var few when few.StartsWith("photo=", StringComparison.Ordinal) && int.TryParse(few[6..], out var count) && count > 0:
            await PhotoBench.Run(count);
            break;
        default:
            Console.Error.WriteLine($"bench: met \"{name}\"; expected {string.Join(", ", all)}. Name one of them, or none for all.");
            return 2;
    }
}

return 0;
