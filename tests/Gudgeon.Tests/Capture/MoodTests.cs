using Gudgeon.Capture;

namespace Gudgeon.Tests.Capture;

/// <summary>What is meant, forgotten, tried, denied or still to do is never recorded as done. Sentences invented, common practice, no source.</summary>
public class MoodTests
{
    private static readonly Gudgeon.Engine.EngineModel Engine = Story.Build("n=4 opt=starter,alternator,oilcooler,steering");

    public static TheoryData<string> NotDone =>
    [
        "main three has to come off again",
        "the sump has to come off again",
        "head needs to come off next",
        "going to pull the head tomorrow",
        "I'm gonna take the starter off in the morning",
        "must take the alternator off before the weekend",
        "we'll have the sump off on Saturday",
        "forgot to cap the oil cooler",
        "forgot to tag the top hose",
        "should have taken the flywheel off first",
        "I should've drained the oil before that",
        "haven't taken the head off yet",
        "the head isn't off yet",
        "not drained the coolant yet",
        "never torqued the rod caps",
        "didn't torque the flywheel",
        "can't get the starter off",
        "the alternator won't come off",
        "the head wouldn't come off",
        "tried to get the damper off",
        "was going to take the water pump off but ran out of time",
        "don't forget to refit the oil pickup",
        "remember to drain the sump",
        "make sure the oil pump goes back on before the sump",
        "nearly dropped the crank",
        "hoping to get the head on tonight",
        "about to take the cam cover off",
        "want to pull the pistons next week",
        "sump's coming off tomorrow",
        "thermostat comes off easily enough later",
        "the starter can't come out until the exhaust is off",
        "timing cover still to come off",
        "alternator to go back on tomorrow",
        "hauling the head to the bench in the morning",
    ];

    [Theory]
    [MemberData(nameof(NotDone))]
    public void Words_that_tell_of_no_deed_record_none(string said)
    {
        var heard = Ear.Hear(said, Engine, new EarContext { Now = Story.Now, AnyWay = true });
        Assert.DoesNotContain(heard.Facts, f => f is Off or On or Undone or Parted or Capped or Tightened or Drained or Tagged);
        Assert.True(heard.Facts.Count + heard.Doubts.Count > 0);
    }

    public static TheoryData<string, string> Done => new()
    {
        { "took the alternator off tonight", "off alternator.1" },
        { "had the starter off before tea", "off starter.1" },
        { "managed to get the head off", "off head.1" },
        { "head came off in the end", "off head.1" },
        { "finally got the damper off", "off damper.1" },
        { "whipped the water pump off while I was there", "off water-pump.1" },
        { "got the sump back on", "on sump.1" },
    };

    [Theory]
    [MemberData(nameof(Done))]
    public void Words_that_tell_of_a_deed_record_it(string said, string code) =>
        Assert.Contains(Ear.Hear(said, Engine, new EarContext { Now = Story.Now, AnyWay = true }).Facts, f => f.Code == code);
}
