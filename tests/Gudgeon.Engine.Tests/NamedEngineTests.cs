namespace Gudgeon.Engine.Tests;

public class NamedEngineTests
{
    [Theory]
    [MemberData(nameof(NamedEngines.Names), MemberType = typeof(NamedEngines))]
    public void Engine_with_every_fact_no_comes_apart(string name) => Assert.Equal("", Strip.Stuck(NamedEngines.Build(name), facts: false));

    [Theory]
    [MemberData(nameof(NamedEngines.Names), MemberType = typeof(NamedEngines))]
    public void Engine_with_every_fact_yes_comes_apart(string name) => Assert.Equal("", Strip.Stuck(NamedEngines.Build(name), facts: true));

    [Theory]
    [MemberData(nameof(NamedEngines.Names), MemberType = typeof(NamedEngines))]
    public void Engine_names_are_unique(string name)
    {
        var model = NamedEngines.Build(name);
        var twice = model.Parts.Values.GroupBy(p => p.Name).Where(g => g.Count() > 1).Select(g => $"{g.Key}: {string.Join(", ", g.Select(p => p.Id))}");
        var lines = model.Lines.Values.GroupBy(p => p.Name).Where(g => g.Count() > 1).Select(g => $"{g.Key}: {string.Join(", ", g.Select(p => p.Id))}");
        Assert.Empty(twice.Concat(lines));
    }

    [Theory]
    [MemberData(nameof(NamedEngines.Names), MemberType = typeof(NamedEngines))]
    public void Engine_hangs_on_its_block(string name)
    {
        var model = NamedEngines.Build(name);
        foreach (var part in model.Parts.Keys)
        {
            var seen = new HashSet<string>();
            var at = part;
            while (model.CarrierOf(at) is { } carrier)
            {
                Assert.True(seen.Add(at), $"{part} hangs in a ring at {at}");
                at = carrier;
            }

            Assert.True(at is "block.1" or "crankcase.1" or "case-half.1" || model.JointsOf(at).Count > 0 && model.Joints[model.JointsOf(at)[0]].FixedTo.Count == 0, $"{part} hangs on {at}");
        }
    }

    /// <summary>Backwards through a strip, whatever had to be off before a part is still off when that part goes on.</summary>
    [Theory]
    [MemberData(nameof(NamedEngines.Names), MemberType = typeof(NamedEngines))]
    public void Engine_taken_apart_goes_back(string name)
    {
        var model = NamedEngines.Build(name);
        var off = model.Parts.Keys.ToHashSet();
        foreach (var id in Strip.Order(model, facts: false).Reverse().Where(off.Contains))
        {
            var first = model.Access.TryGetValue(id, out var rule) ? rule.First : [];
            Assert.All(first.Where(n => n.Sort == NeedSort.PartOff), n => Assert.Contains(n.Id, off));
            off.Remove(id);
        }

        Assert.Empty(off);
    }
}
