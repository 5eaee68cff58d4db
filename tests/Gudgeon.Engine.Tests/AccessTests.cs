namespace Gudgeon.Engine.Tests;

/// <summary>What must come off first, tied to its place.</summary>
public class AccessTests
{
    private static EngineModel Build(string line) => Anatomy.Build(NamedEngines.FromLine(line));

    private static IEnumerable<string> First(EngineModel model, string target) => model.Access[target].First.Select(n => n.Id);

    private static IEnumerable<string> Choices(EngineModel model, string target) =>
        model.Access[target].Choices.Select(c => string.Join(" / ", c.Sets.Select(s => string.Join(",", s))));

    [Fact]
    public void Exhaust_valve_waits_for_its_own_collets_and_springs()
    {
        var first = First(Build("n=4 s=2"), "valve-ex.3.2").ToList();
        Assert.Equal(["collet.3.4.1", "collet.3.4.2", "retainer.3.4", "spring.3.4.1", "spring.3.4.2", "head.1"], first);
    }

    [Fact]
    public void Inlet_bucket_waits_for_the_inlet_cam_of_its_bank() =>
        Assert.Equal(["cam.3"], First(Build("layout=vee n=6"), "follower.4.1"));

    [Fact]
    public void Right_head_waits_for_its_own_cover_and_chain()
    {
        var first = First(Build("layout=vee n=6"), "head.2").ToList();
        Assert.Contains("cam-cover.2", first);
        Assert.Contains("timing-loop.2", first);
        Assert.DoesNotContain("cam-cover.1", first);
    }

    [Fact]
    public void Head_and_cams_are_a_choice() => Assert.Contains("cam.1,cam.2 / fact:bolts-clear", Choices(Build("n=4"), "head.1"));

    [Fact]
    public void Choice_left_with_facts_only_is_void() =>
        Assert.DoesNotContain(Choices(Build("ind=super nt=1 count.blower=0"), "inlet-manifold.1"), c => c.Contains("fact:blower-elsewhere", StringComparison.Ordinal));

    [Fact]
    public void Second_turbo_waits_for_its_own_pipes()
    {
        var first = First(Build("layout=vee n=6 ind=turbo nt=2"), "turbo.2").ToList();
        Assert.Contains("l-turbo-feed.2", first);
        Assert.DoesNotContain("l-turbo-feed.1", first);
    }

    [Fact]
    public void Gearbox_parts_in_or_out_of_the_vehicle() =>
        Assert.Equal(["op:engine-out / op:gearbox-down"], Choices(Build("n=4"), "gearbox.1"));

    [Fact]
    public void Operation_that_changes_the_engine_lasts()
    {
        var operations = Build("n=4").Operations;
        Assert.True(operations["op:drain-oil"].Lasts);
        Assert.True(operations["op:set-tdc"].Lasts);
        Assert.False(operations["op:compress-spring"].Lasts);
        Assert.Equal(2, operations["op:hang"].Persons);
    }

    [Fact]
    public void Only_facts_of_this_engine_are_asked()
    {
        Assert.DoesNotContain("fact:puller-fits", Build("n=4").Facts.Keys);
        Assert.Contains("fact:puller-fits", Build("n=4 cyl=wet").Facts.Keys);
    }

    [Fact]
    public void Timing_cover_may_carry_a_lifting_eye() => Assert.Contains("eye", Build("n=4").Access["timing-cover.1"].Holds);

    [Fact]
    public void Crossover_is_there_where_two_rails_are()
    {
        Assert.False(Build("n=4").Lines.ContainsKey("l-rail-cross.1"));
        var cross = Build("layout=vee n=6").Lines["l-rail-cross.1"];
        Assert.Equal(("fuel-rail.1", "fuel-rail.2"), (cross.From.Part, cross.To.Part));
    }

    [Fact]
    public void Face_between_two_parts_opens_with_its_joint()
    {
        var lines = Build("n=4").Lines;
        Assert.True(lines["a-port.1.1"].IsPassage);
        Assert.False(lines["l-rad-in.1"].IsPassage);
    }
}
