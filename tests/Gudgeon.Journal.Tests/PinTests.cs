using Gudgeon.Sums.Fasteners;

namespace Gudgeon.Journal.Tests;

public class PinTests
{
    private static readonly string photo = new('a', 64);
    private static readonly string other = new('b', 64);

    private static PhotoTaken Photo(string hash, DateTimeOffset? time = null, params string[] of) => new(hash, "jpeg", 4000, 3000, "cover.jpg", "Invented 1", time, of);

    private static string JointOf(TestBook book, string part) => book.Bench.Engine.JointsOf(part)[0];

    [Fact]
    public void Photo_the_same_again_is_refused()
    {
        using var book = new TestBook();
        book.Good(new Tell(Photo(photo)));
        Assert.Equal("photo: met it is in the book already; expected a photo that is new to the book. Nothing to do here.", book.Refused(new Tell(Photo(photo))));
    }

    [Theory]
    [InlineData("../../etc/passwd")]
    [InlineData("")]
    [InlineData("AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA")]
    public void Photo_without_a_true_hash_is_refused(string hash)
    {
        using var book = new TestBook();
        Assert.Contains("expected the SHA-256 of its file", book.Refused(new Tell(Photo(hash))));
    }

    [Fact]
    public void Photo_shows_the_work_done_nearest_to_its_time_by_the_corrected_clock()
    {
        using var book = new TestBook();
        var off = book.Good(new TakeOff("own.starter", To: "bench")).Entries[0];
        var later = off.At.AddHours(1);
        book.Good(new Tell(Photo(photo, later)));
        Assert.Empty(book.Bench.PhotosOf("own.starter"));

        book.Good(new Tell(new CameraClock("Invented 1", TimeSpan.FromMinutes(59))));

        Assert.Equal(off.At.AddMinutes(1), book.Bench.TimeOf(book.Bench.Photos[photo]));
        Assert.Equal(photo, Assert.Single(book.Bench.PhotosOf("own.starter")).Hash);
    }

    [Theory]
    [InlineData(30, true)]
    [InlineData(31, false)]
    public void Photo_is_matched_up_to_half_an_hour_from_the_work(int minutes, bool matched)
    {
        using var book = new TestBook();
        var off = book.Good(new TakeOff("own.starter", To: "bench")).Entries[0];
        book.Good(new Tell(Photo(photo, off.At.AddMinutes(minutes))));
        Assert.Equal(matched, book.Bench.PhotosOf("own.starter").Count == 1);
    }

    [Fact]
    public void Photo_shows_what_was_said_before_what_its_time_says()
    {
        using var book = new TestBook();
        var off = book.Good(new TakeOff("own.starter", To: "bench")).Entries[0];
        book.Good(new Tell(Photo(photo, off.At)));
        book.Good(new Tell(new PhotoAbout(photo, ["own.head"])));
        Assert.Empty(book.Bench.PhotosOf("own.starter"));
        Assert.Single(book.Bench.PhotosOf("own.head"));
    }

    [Fact]
    public void Pins_of_a_joint_are_the_pattern_for_its_tightening_order()
    {
        using var book = new TestBook();
        var head = JointOf(book, "own.head");
        book.Good(new Tell(Photo(photo), Photo(other)));
        book.Good(new Tell(new PinSet(other, "x", 0.5m, 0.5m, head, 1)));
        book.Good(new Tell(
            new PinSet(photo, "c", 0.25m, 0.25m, head, 3), new PinSet(photo, "a", 0.5m, 0.5m, head, 1), new PinSet(photo, "b", 0.75m, 0.5m, head, 2),
            new PinSet(photo, "d", 0.1m, 0.1m, "own.head", null, "dowel")));

        Assert.Equal([(1, new PlanePoint(2000, 1500)), (2, new PlanePoint(3000, 1500)), (3, new PlanePoint(1000, 750))], book.Bench.PinPattern(head));
        Assert.True(TighteningOrder.SpiralFromCentre([.. book.Bench.PinPattern(head).Select(p => p.Place)]).Ok);
        Assert.Empty(book.Bench.PinPattern(JointOf(book, "own.starter")));
    }

    [Fact]
    public void Pin_moved_marked_and_removed_is_as_last_told()
    {
        using var book = new TestBook();
        var head = JointOf(book, "own.head");
        book.Good(new Tell(Photo(photo), new PinSet(photo, "a", 0, 1, head, 1)));
        book.Good(new Tell(new PinMoved(photo, "a", 0.25m, 0.5m), new PinMarked(photo, "a", "M10x90", false)));
        book.Good(new Tell(new PinMarked(photo, "a", IsBack: true)));
        Assert.Equal(new PinState("a", 0.25m, 0.5m, head, 1, "", "M10x90", true), book.Bench.Photos[photo].Pins["a"]);

        var removed = book.Good(new Tell(new PinRemoved(photo, "a"))).Entries[0].Number;
        Assert.Empty(book.Bench.Photos[photo].Pins);
        book.Good(new StrikeOut(removed));
        Assert.Single(book.Bench.Photos[photo].Pins);
    }

    [Fact]
    public void Pins_come_back_from_disk()
    {
        using var book = new TestBook();
        book.Good(new Tell(Photo(photo, new DateTimeOffset(2026, 1, 10, 18, 2, 0, TimeSpan.FromHours(1)), "own.head")));
        book.Good(new Tell(new PinSet(photo, "a", 0.125m, 0.0625m, JointOf(book, "own.head"), 4, "long one"), new CameraClock("Invented 1", TimeSpan.FromSeconds(-90))));
        var before = book.Bench.Photos[photo].Pins["a"];
        book.Reopen();
        Assert.Equal(before, book.Bench.Photos[photo].Pins["a"]);
        Assert.Equal(TimeSpan.FromSeconds(-90), book.Bench.CameraClocks["Invented 1"]);
    }

    [Fact]
    public void Pin_that_cannot_be_is_refused()
    {
        using var book = new TestBook();
        var head = JointOf(book, "own.head");
        book.Good(new Tell(Photo(photo), new PinSet(photo, "a", 0.5m, 0.5m, head, 1)));
        Assert.StartsWith("pin: met 1.0001, 0; expected a place on the photo", book.Refused(new Tell(new PinSet(photo, "b", 1.0001m, 0, head, 2))));
        Assert.StartsWith("pin: met -0.1, 0; expected a place on the photo", book.Refused(new Tell(new PinMoved(photo, "a", -0.1m, 0))));
        Assert.StartsWith("pin: met a second pin for fastener 1 of the head joint", book.Refused(new Tell(new PinSet(photo, "b", 0, 0, head, 1))));
        Assert.StartsWith("pin: met fastener 0", book.Refused(new Tell(new PinSet(photo, "b", 0, 0, head, 0))));
        Assert.StartsWith("pin: met fastener 1 of nothing", book.Refused(new Tell(new PinSet(photo, "b", 0, 0, "own.head", 1))));
        Assert.StartsWith("pin: met \"own.nothing\"", book.Refused(new Tell(new PinSet(photo, "b", 0, 0, "own.nothing"))));
        Assert.StartsWith("pin: met neither a thing nor a name", book.Refused(new Tell(new PinSet(photo, "b", 0, 0))));
        Assert.StartsWith("pin a: met it is in the photo already", book.Refused(new Tell(new PinSet(photo, "a", 0, 0, head, 2))));
        Assert.StartsWith("pin z: met no such pin", book.Refused(new Tell(new PinRemoved(photo, "z"))));
        Assert.StartsWith("photo: met \"", book.Refused(new Tell(new PinSet(other, "b", 0, 0, head, 2))));
    }
}
