namespace Gudgeon.Engine;

/// <summary>
/// What the engine is: parts, joints, lines, access. Built from the tables or empty, and grown by what the owner finds.
/// Parts and joints keep the order in which they were added, which is the tables' order.
/// </summary>
public sealed class EngineModel
{
    private readonly Dictionary<string, Part> parts = [];
    private readonly Dictionary<string, Joint> joints = [];
    private readonly Dictionary<string, Line> lines = [];
    private readonly Dictionary<string, Access> access = [];
    private readonly Dictionary<string, Operation> operations = [];
    private readonly Dictionary<string, Fact> facts = [];
    private readonly Dictionary<string, List<string>> jointsOfPart = [];
    private readonly Dictionary<string, List<string>> carriedBy = [];
    private readonly Dictionary<string, List<string>> linesOfPart = [];

    public IReadOnlyDictionary<string, Part> Parts => parts;
    public IReadOnlyDictionary<string, Joint> Joints => joints;
    public IReadOnlyDictionary<string, Line> Lines => lines;
    public IReadOnlyDictionary<string, Access> Access => access;
    public IReadOnlyDictionary<string, Operation> Operations => operations;
    public IReadOnlyDictionary<string, Fact> Facts => facts;

    /// <summary>The joints that tie this part to what carries it.</summary>
    public IReadOnlyList<string> JointsOf(string part) => jointsOfPart.GetValueOrDefault(part) ?? [];

    /// <summary>The parts whose first carrier is this one.</summary>
    public IReadOnlyList<string> CarriedBy(string part) => carriedBy.GetValueOrDefault(part) ?? [];

    /// <summary>The lines with a port on this part.</summary>
    public IReadOnlyList<string> LinesOf(string part) => linesOfPart.GetValueOrDefault(part) ?? [];

    /// <summary>The part that carries this one, or null for the block and for what the owner has not tied to anything.</summary>
    public string? CarrierOf(string part) =>
        jointsOfPart.TryGetValue(part, out var ids) ? joints[ids[0]].FixedTo.FirstOrDefault() : null;

    public void Add(Part part)
    {
        parts.Add(part.Id, part);
    }

    public void Replace(Part part)
    {
        if (!parts.ContainsKey(part.Id))
        {
            throw new ArgumentException($"no part {part.Id} to replace", nameof(part));
        }

        parts[part.Id] = part;
    }

    /// <summary>Changes what is known of a joint; what it ties together stays.</summary>
    public void Replace(Joint joint)
    {
        if (!joints.TryGetValue(joint.Id, out var old) || old.Part != joint.Part)
        {
            throw new ArgumentException($"no joint {joint.Id} of {joint.Part} to replace", nameof(joint));
        }

        joints[joint.Id] = joint;
    }

    public void Add(Joint joint)
    {
        joints.Add(joint.Id, joint);
        List(jointsOfPart, joint.Part).Add(joint.Id);
        if (List(jointsOfPart, joint.Part).Count == 1 && joint.FixedTo.Count > 0)
        {
            List(carriedBy, joint.FixedTo[0]).Add(joint.Part);
        }
    }

    public void Add(Line line)
    {
        lines.Add(line.Id, line);
        List(linesOfPart, line.From.Part).Add(line.Id);
        if (line.To.Part != line.From.Part)
        {
            List(linesOfPart, line.To.Part).Add(line.Id);
        }
    }

    /// <summary>Sets the whole of what stands in the way of one target.</summary>
    public void Set(Access rule) => access[rule.Target] = rule;

    public void Add(Operation operation) => operations.Add(operation.Id, operation);

    public void Add(Fact fact) => facts.Add(fact.Id, fact);

    private static List<string> List(Dictionary<string, List<string>> map, string key)
    {
        if (!map.TryGetValue(key, out var list))
        {
            map[key] = list = [];
        }

        return list;
    }
}
