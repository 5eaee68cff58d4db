using Gudgeon.Capture;

namespace Gudgeon.Tests.Capture;

/// <summary>What the predicates of the frames say of the thing they are told of, in any order of words. Sentences invented, common practice, no source.</summary>
public class FrameTests
{
    private static readonly Gudgeon.Engine.EngineModel Engine = Story.Build("n=4 vt=dohc valves=2+2 fuel=diesel ind=turbo drive=chain opt=starter,alternator");

    private static readonly Gudgeon.Engine.EngineModel Vee = Story.Build("layout=vee n=6 angle=60 vt=dohc valves=2+2 banks=left-right drive=chain opt=starter");

    private static Heard Hear(Gudgeon.Engine.EngineModel engine, params string[] notes)
    {
        var context = new EarContext { Now = Story.Now, AnyWay = true };
        foreach (string note in notes[..^1])
            context = context.After(Ear.Hear(note, engine, context));
        return Ear.Hear(notes[^1], engine, context);
    }

    private static IEnumerable<string> Codes(Heard heard) => heard.Facts.Select(f => f.Code);

    [Theory]
    [InlineData("glow plugs one and two came out", "three and four I'm not touching", "left-on glow-plug.3-4")]
    [InlineData("glow plugs out", "can't find the woodruff key", "missing key.1")]
    [InlineData("timing cover's on but it's one bolt short", "that bolt was in my pocket", "found timing-cover.1: 1")]
    [InlineData("inlet manifold off", "covered the ports with tape", "capped inlet-manifold.1")]
    [InlineData("head's off", "the machinist's got the head till Friday", "sent head.1 until 2026-11-27")]
    public void A_predicate_is_told_of_its_thing_in_any_order(string before, string said, string code) =>
        Assert.Contains(code, Codes(Hear(Engine, before, said)));

    [Theory]
    [InlineData("the crank isn't out yet", "left-on crank.1")]
    [InlineData("starboard exhaust manifold's off", "off exhaust-manifold.2")]
    [InlineData("mains, number one two point three six, number two two point three five", "measured main journal crank.1/main 1: 2.36 in")]
    [InlineData("mains, number one two point three six, number two the same", "measured main journal crank.1/main 2: 2.36 in")]
    public void What_is_told_in_one_note_is_heard(string said, string code) =>
        Assert.Contains(code, Codes(Ear.Hear(said, Vee, new EarContext { Now = Story.Now, AnyWay = true, Unit = BookUnit.Inch })));

    [Theory]
    [InlineData("glow plugs out", "three and four are still in", "left-on glow-plug.3-4")]
    [InlineData("glow plugs out", "three and four are rusty", "seen glow-plug.3-4: rusty")]
    [InlineData("glow plugs out", "number two is still in there", "left-on glow-plug.2")]
    [InlineData("glow plugs one and two are out", "number three's not having it", "seen glow-plug.3: stuck")]
    [InlineData("rod caps one and four are on", "I'll do two and three tomorrow", "planned rod-cap.2-3")]
    [InlineData("injectors one and two are in", "number three's in too", "on injector.3")]
    [InlineData("injectors one and two are in", "number three is in as well", "on injector.3")]
    [InlineData("inlet manifold off, four bolts", "one of those bolts is bent", "damaged bolt of inlet-manifold.1: 1 bent")]
    [InlineData("inlet manifold off, four bolts", "two of its studs are stripped", "damaged bolt of inlet-manifold.1: 2 stripped")]
    [InlineData("pistons one and two are coked", "I scrape them later", "planned piston.1-2")]
    [InlineData("head's cracked", "that one I bring tomorrow to the welder", "planned head.1")]
    [InlineData("pistons are out", "number three I must buy new, barrel and piston", "buy piston.3")]
    [InlineData("sump's off", "timing cover's a job for Friday", "planned timing-cover.1")]
    [InlineData("sump's off", "the rocker cover is tomorrow's job", "planned cam-cover.1")]
    [InlineData("sump's off", "is that oil on the flywheel coming from the rear seal", "self rear-seal.1")]
    [InlineData("piston one's on", "piston two slid on", "on piston.2")]
    public void Some_of_a_kind_are_told_by_number_or_as_the_one_spoken_of(string before, string said, string code) =>
        Assert.Contains(code, Codes(Hear(Engine, before, said)));

    [Theory]
    [InlineData("starter off, seven bolts, nah hang on there's one hiding underneath, eight", "undone starter.1: 8")]
    [InlineData("starter off, four bolts, no, three", "undone starter.1: 3")]
    [InlineData("starter off, four bolts M8 by thirty, hold on, five", "undone starter.1: 5 M8x30")]
    public void The_last_count_of_a_note_holds_and_the_size_stays(string said, string code)
    {
        var heard = Hear(Engine, said);
        Assert.Contains(code, Codes(heard));
        Assert.Single(heard.Facts.OfType<Undone>());
    }

    [Theory]
    [InlineData("the starter's seized solid, that'll be the damp")]
    [InlineData("the starter's seized, that must be the rust")]
    [InlineData("that could be the turbo")]
    [InlineData("it'll be the head gasket")]
    [InlineData("the starter is loose, I could shake it with my hand")]
    [InlineData("the starter is scored, you can feel it with the nail")]
    public void What_it_comes_from_or_feels_like_is_no_plan(string said) =>
        Assert.DoesNotContain(Hear(Engine, said).Facts, f => f is Planned);

    [Theory]
    [InlineData("injector two and injector three are leaking, remaining two are good", "damaged injector.2-3: leaking")]
    [InlineData("injector two and injector three are leaking, remaining two are good", "seen injector.1,injector.4: fine")]
    [InlineData("pistons one and two are out with their rods", "off piston.1-2 with rod.1-2")]
    [InlineData("shells on rod one are grand, rod two's are pitted", "damaged rod-shell.2.1-2: pitted")]
    [InlineData("barrel slid on nicely, head gasket then the head on top of it, four nuts hand tight", "on head.1")]
    [InlineData("where in the name of god did I leave the rocker cover bolts", "asked where cam-cover.1")]
    [InlineData("now where the hell did I put the starter", "asked where starter.1")]
    [InlineData("what have I still to take off afore the head'll lift", "asked before head.1")]
    [InlineData("my mate borrowed the torque wrench from the lab and it has to be back there Friday", "returns 'torque wrench' by 2026-11-27")]
    [InlineData("sump's on, head's on with a new head gasket, ten bolts hand tight", "tightened head.1: 10 + hand tight")]
    public void Who_is_meant_is_settled_within_the_note(string said, string code) =>
        Assert.Contains(code, Codes(Hear(Engine, said.StartsWith("barrel", StringComparison.Ordinal) ? ["starter's on", said] : [said])));

    [Fact]
    public void Same_nuts_and_same_tin_are_those_of_the_fellow_told_before()
    {
        var heard = Hear(Vee, "left rocker cover off, two nuts, tobacco tin", "right one's stuck", "it's off now, same nuts, same tin");
        Assert.Equal(["off cam-cover.2", "undone cam-cover.2: 2 nut -> tobacco tin"], Codes(heard));
    }

    [Theory]
    [InlineData("lunch's off")]
    [InlineData("gotta go now")]
    [InlineData("I'll do the talking")]
    [InlineData("the starter isn't bolted on yet")]
    [InlineData("seven thou, which will not do")]
    public void Talk_beside_the_work_is_no_record(string said)
    {
        var heard = Hear(Engine, said);
        Assert.DoesNotContain(heard.Facts, f => f is Off or On or Planned or Asked or Put or Seen);
    }

    [Fact]
    public void Nothing_found_stays_with_what_was_told()
    {
        var heard = Hear(Engine, "oil filter's off, no metal in it");
        Assert.Equal(["off oil-filter.1"], Codes(heard));
    }

    [Fact]
    public void Where_a_part_lies_takes_nothing_off()
    {
        Assert.Equal(["put crank.1 -> shed"], Codes(Hear(Engine, "the crank is in the shed")));
        Assert.Equal(["put head.1 -> bench"], Codes(Hear(Engine, "starter's off", "the head is on the bench")));
        Assert.Contains(Hear(Engine, "main caps in order on the bench").Facts, f => f is Off);
    }

    [Theory]
    [InlineData("even left heads off")]
    [InlineData("number one even plug off")]
    public void An_odd_number_called_even_is_heard_without_fail(string said) => Assert.NotEmpty(Hear(Vee, said).Facts);

    [Fact]
    public void A_name_that_names_nothing_is_offered_not_recorded()
    {
        var heard = Hear(Engine, "the bracket is cracked");
        Assert.Empty(heard.Facts.OfType<Damaged>());
        Assert.NotEmpty(heard.Doubts);
    }
}
