using CsCheck;

namespace Gudgeon.Journal.Tests;

public class LabelTests
{
    private static readonly Gen<string> code = Gen.Int[0, LabelCode.Count - 1].Select(LabelCode.Of);

    [Fact]
    public void Code_of_every_number_is_its_own_and_reads_back()
    {
        var codes = Enumerable.Range(0, LabelCode.Count).Select(LabelCode.Of).ToArray();
        Assert.Equal(6859, codes.Distinct().Count());
        Assert.All(codes, c => Assert.Equal(c, LabelCode.Read(c).Value));
    }

    [Fact]
    public void Code_has_no_sign_that_is_taken_for_another() => Assert.Empty(LabelCode.Signs.Intersect("01258BDGILOQSUVZ6"));

    [Fact]
    public void Code_with_one_wrong_sign_is_always_found_out() =>
        Gen.Select(code, Gen.Int[0, 3], Gen.Int[0, 18]).Where((c, at, sign) => c[at] != LabelCode.Signs[sign]).Sample((c, at, sign) =>
            !LabelCode.Read($"{c[..at]}{LabelCode.Signs[sign]}{c[(at + 1)..]}").Ok);

    [Fact]
    public void Code_with_two_neighbours_changed_over_is_always_found_out() =>
        Gen.Select(code, Gen.Int[0, 2]).Where((c, at) => c[at] != c[at + 1]).Sample((c, at) =>
            !LabelCode.Read($"{c[..at]}{c[at + 1]}{c[at]}{c[(at + 2)..]}").Ok);

    [Fact]
    public void Code_is_read_as_people_type_it()
    {
        var typed = LabelCode.Of(17);
        Assert.Equal(typed, LabelCode.Read($" {typed[..2].ToLowerInvariant()}-{typed[2..]} ").Value);
        Assert.Equal("label code: met \"3O4A\"; expected 4 signs out of 3479ACEFHJKMNPRTWXY. Look at \"O\" again: no code has it.", LabelCode.Read("3O4A").Refusals[0].ToString());
        Assert.Equal("label code: met \"34\"; expected 4 signs out of 3479ACEFHJKMNPRTWXY. Look at the label again.", LabelCode.Read("34").Refusals[0].ToString());
    }

    [Fact]
    public void Label_is_one_for_each_thing_place_and_end()
    {
        using var book = new TestBook();
        var feed = book.Bench.Engine.Lines["own.feed"];
        book.Good(new Tell(new LabelMade(LabelCode.Of(0), Place: "Bag 12"), new LabelMade(LabelCode.Of(1), "own.head"), new LabelMade(LabelCode.Of(2), "own.feed", Port: feed.From.Id)));
        Assert.Equal(LabelCode.Of(0), book.Bench.LabelOn(null, "bag  12", null));
        Assert.Contains("is on it already", book.Refused(new Tell(new LabelMade(LabelCode.Of(3), Place: "bag 12"))));
        Assert.Contains("expected a code of its own", book.Refused(new Tell(new LabelMade(LabelCode.Of(0), "own.starter"))));
        Assert.Contains("neither a thing nor a place", book.Refused(new Tell(new LabelMade(LabelCode.Of(3)))));
        Assert.Contains("expected an end of that line", book.Refused(new Tell(new LabelMade(LabelCode.Of(3), "own.feed", Port: "own.head.top"))));
        Assert.Contains("whose last sign does not fit", book.Refused(new Tell(new LabelMade("3334", "own.starter"))));
    }

    [Fact]
    public void Contents_of_a_place_are_what_was_put_there()
    {
        using var book = new TestBook();
        book.Good(new TakeOff("own.cover", [new OutLot(6, "M6x25", "bolt", "bag 3")], To: "shelf 2"));
        var (parts, lots) = book.Bench.ContentsOf("BAG 3");
        Assert.Empty(parts);
        Assert.Equal((book.Bench.Engine.JointsOf("own.cover")[0], 6), lots.Select(l => (l.Joint, l.Lot.Count)).Single());
        Assert.Equal(["own.cover"], book.Bench.ContentsOf("shelf 2").Parts);
        book.Good(new TakeOff("own.starter", [new OutLot(3, "M10x60", "bolt", "bag 12")], To: "bench"));
        Assert.Equal(["bag 3", "bag 12", "bench", "shelf 2"], book.Bench.PlacesInUse());
    }
}
