using System.Collections.Immutable;
using System.Text.Json;
using Gudgeon.Planning.Reach;
using Gudgeon.Sums;

namespace Gudgeon.Planning.OpenData;

/// <summary>An AND/OR network as read from a file, with the targets it names.</summary>
public sealed record NetworkFile(AndOrNetwork Network, ImmutableArray<int> Targets)
{
    private const string FileWord = "network file";

    /// <summary>
    /// Reads the plain JSON form:
    /// <code>
    /// { "nodes": [ { "id": "starter", "cost_s": 1200, "fluid_lines": 0, "things_off": 1, "done": false,
    ///               "needs": ["battery"], "choices": [ [ ["a", "b"], ["c"] ] ], "blocked": ["needs the stand"] } ],
    ///   "targets": ["starter"] }
    /// </code>
    /// <c>cost_s</c> is whole seconds. All of <c>needs</c> come first; of each choice at least one way (a list of ids).
    /// All but <c>id</c> and <c>cost_s</c> may be left out. Every fault is told, not only the first.
    /// </summary>
    public static Outcome<NetworkFile> Read(string text)
    {
        JsonDocument document;
        try
        {
            document = JsonDocument.Parse(text);
        }
        catch (JsonException fault)
        {
            return Outcome.Refused<NetworkFile>([new Refusal(
                $"{FileWord}, line {fault.LineNumber + 1}", "text that is not JSON", "an object with \"nodes\"", "Check the brackets and quotes near that line")]);
        }
        using (document)
            return new Reader().Read(document.RootElement);
    }

    private sealed class Reader
    {
        private readonly List<Refusal> faults = [];
        private readonly Dictionary<string, int> numberOf = [];

        public Outcome<NetworkFile> Read(JsonElement root)
        {
            var items = root.ValueKind == JsonValueKind.Object && root.TryGetProperty("nodes", out var list) && list.ValueKind == JsonValueKind.Array
                ? list.EnumerateArray().ToArray()
                : null;
            if (items is null)
                return Outcome.Refused<NetworkFile>([new Refusal(FileWord, "no list called nodes", "an object with a list \"nodes\"", "Add it")]);
            for (var k = 0; k < items.Length; k++)
                Name(items[k], k);
            var nodes = items.Select((item, k) => Node(item, $"nodes[{k}]")).ToArray();
            var targets = root.TryGetProperty("targets", out var named) ? Ids(named, "targets") : [];
            return faults.Count > 0
                ? Outcome.Refused<NetworkFile>(faults)
                : Outcome.Of(new NetworkFile(new AndOrNetwork(nodes), targets));
        }

        private void Name(JsonElement item, int k)
        {
            if (item.ValueKind != JsonValueKind.Object || !item.TryGetProperty("id", out var id) || id.ValueKind != JsonValueKind.String)
                Fault($"nodes[{k}]", "no id", "a text \"id\"", "Give every node an id");
            else if (!numberOf.TryAdd(id.GetString()!, k))
                Fault($"nodes[{k}]", $"the id {id.GetString()} a second time", "an id that no other node has", "Rename one of the two");
        }

        private AndOrNode Node(JsonElement item, string where)
        {
            if (item.ValueKind != JsonValueKind.Object)
                return new AndOrNode(where, 0);
            var id = item.TryGetProperty("id", out var named) && named.ValueKind == JsonValueKind.String ? named.GetString()! : where;
            if (!item.TryGetProperty("cost_s", out _))
                Fault(where, "no cost_s", "a whole number of seconds", "Add \"cost_s\", 0 if it takes no time");
            return new AndOrNode(id, Whole(item, "cost_s", where, 0, 1_000_000_000))
            {
                FluidLines = (int)Whole(item, "fluid_lines", where, 0, 1000),
                ThingsOff = (int)Whole(item, "things_off", where, 1, 1000),
                IsDone = item.TryGetProperty("done", out var done) && Truth(done, $"{where}.done"),
                Needs = item.TryGetProperty("needs", out var needs)
                    ? [.. Ids(needs, $"{where}.needs").Select(need => new Need(need, $"{id} waits for {numberOf.First(known => known.Value == need).Key}"))]
                    : [],
                Choices = item.TryGetProperty("choices", out var choices) ? Choices(choices, id, $"{where}.choices") : [],
                Blocks = item.TryGetProperty("blocked", out var blocked)
                    ? [.. Texts(blocked, $"{where}.blocked").Select(reason => new Block(BlockKind.Other, reason))]
                    : [],
            };
        }

        private ImmutableArray<Choice> Choices(JsonElement list, string id, string where) =>
            [.. List(list, where).Select((choice, k) => new Choice(
                [.. List(choice, $"{where}[{k}]").Select((way, w) => Ids(way, $"{where}[{k}][{w}]"))], $"{id} waits for its choice {k + 1}"))];

        private ImmutableArray<int> Ids(JsonElement list, string where)
        {
            var found = ImmutableArray.CreateBuilder<int>();
            foreach (var id in Texts(list, where))
            {
                if (numberOf.TryGetValue(id, out var number))
                    found.Add(number);
                else
                    Fault(where, $"the id {id}", "the id of a node in this file", "Correct the spelling or add the node");
            }
            return found.ToImmutable();
        }

        private IEnumerable<string> Texts(JsonElement list, string where)
        {
            foreach (var item in List(list, where))
            {
                if (item.ValueKind == JsonValueKind.String)
                    yield return item.GetString()!;
                else
                    Fault(where, item.GetRawText(), "a text", "Put it in quotes");
            }
        }

        private JsonElement[] List(JsonElement list, string where)
        {
            if (list.ValueKind == JsonValueKind.Array)
                return [.. list.EnumerateArray()];
            Fault(where, list.GetRawText(), "a list", "Put it in square brackets");
            return [];
        }

        private bool Truth(JsonElement item, string where)
        {
            if (item.ValueKind is not (JsonValueKind.True or JsonValueKind.False))
                Fault(where, item.GetRawText(), "true or false", "Write true or false without quotes");
            return item.ValueKind == JsonValueKind.True;
        }

        private long Whole(JsonElement item, string name, string where, long usual, long most)
        {
            if (!item.TryGetProperty(name, out var value))
                return usual;
            if (value.ValueKind == JsonValueKind.Number && value.TryGetInt64(out var number) && number >= 0 && number <= most)
                return number;
            Fault($"{where}.{name}", value.GetRawText(), $"a whole number from 0 to {most}", "Correct the number");
            return usual;
        }

        private void Fault(string where, string met, string expected, string remedy) =>
            faults.Add(new Refusal($"{FileWord}, {where}", met, expected, remedy));
    }
}
