using System.Text;

namespace Gudgeon.Journal.Tests;

public class BookTests
{
    [Fact]
    public void Submit_same_id_twice_records_once()
    {
        using var book = new TestBook();
        var sending = book.Next();
        var first = book.Book.Submit(sending, new TakeOff("own.starter"));
        var second = book.Book.Submit(sending, new TakeOff("own.starter"));
        Assert.True(second.Value.WasThere);
        Assert.Equal(first.Value.Entries.Select(e => e.Number), second.Value.Entries.Select(e => e.Number));
    }

    [Fact]
    public void Submit_is_all_or_nothing()
    {
        using var book = new TestBook();
        var before = TestBook.Tell(book.Bench);
        book.Refused(new TakeOff("own.starter"), new TakeOff("own.nothing"));
        Assert.Equal(before, TestBook.Tell(book.Bench));
        book.Reopen();
        Assert.Equal(before, TestBook.Tell(book.Bench));
    }

    [Fact]
    public void Submit_of_a_spoken_line_keeps_what_is_refused_as_a_question()
    {
        using var book = new TestBook();
        book.Good(new TakeOff("own.starter", To: "bench"));
        var reply = book.Book.Submit(book.Next(), new Said("starter's off again"), [new TakeOff("own.starter")]);
        Assert.True(reply.Ok);
        var asked = Assert.IsType<Asked>(reply.Value.Entries[^1].Entry);
        Assert.Equal("starter's off again", asked.Text);
        Assert.Single(book.Bench.OpenQuestions);
    }

    [Fact]
    public void Submit_before_the_book_is_started_is_refused()
    {
        using var book = new TestBook(engine: false);
        Assert.Equal(
            "book: met it has not been started; expected a started book. Answer the questions, or start from nothing.",
            book.Refused(new TakeOff("own.starter")));
    }

    [Fact]
    public void StrikeOut_gives_back_what_was_before()
    {
        using var book = new TestBook();
        var before = TestBook.Tell(book.Bench);
        var off = book.Good(new TakeOff("own.starter", To: "bench")).Entries[0].Number;
        book.Good(new StrikeOut(off, "wrong part"));
        Assert.Equal(before, TestBook.Tell(book.Bench));
        Assert.True(book.Book.IsStruck(off));
        book.Reopen();
        Assert.Equal(before, TestBook.Tell(book.Bench));
        Assert.True(book.Book.IsStruck(off));
    }

    [Fact]
    public void StrikeOut_of_a_strike_counts_the_entry_again()
    {
        using var book = new TestBook();
        var off = book.Good(new TakeOff("own.starter", To: "bench")).Entries[0].Number;
        var after = TestBook.Tell(book.Bench);
        var strike = book.Good(new StrikeOut(off)).Entries[0].Number;
        book.Good(new StrikeOut(strike));
        Assert.Equal(after, TestBook.Tell(book.Bench));
    }

    [Fact]
    public void StrikeOut_that_a_later_entry_leans_on_names_it()
    {
        using var book = new TestBook();
        var off = book.Good(new TakeOff("own.starter", To: "bench")).Entries[0].Number;
        var on = book.Good(new Tell(new PartOn("own.starter"))).Entries[0].Number;
        Assert.Equal(
            $"entry {off}: met entry {on} leans on it (starter back on); expected an entry that no later one leans on. Strike out entry {on} first.",
            book.Refused(new StrikeOut(off)));
    }

    [Fact]
    public void StrikeOut_of_nothing_or_twice_is_refused()
    {
        using var book = new TestBook();
        Assert.StartsWith("entry 999: met no such entry;", book.Refused(new StrikeOut(999)), StringComparison.Ordinal);
        Assert.StartsWith("entry 1: met it starts the book;", book.Refused(new StrikeOut(1)), StringComparison.Ordinal);
        var off = book.Good(new TakeOff("own.starter")).Entries[0].Number;
        book.Good(new StrikeOut(off));
        Assert.StartsWith($"entry {off}: met it is struck out already;", book.Refused(new StrikeOut(off)), StringComparison.Ordinal);
    }

    [Fact]
    public void Two_openings_see_each_other_and_keep_one_order()
    {
        using var book = new TestBook();
        using var other = Book.Open(book.Folder);
        Assert.True(other.Submit(new Sending("other-1", DateTimeOffset.UnixEpoch, DateTimeOffset.UnixEpoch, "phone"), new TakeOff("own.starter", To: "bench")).Ok);
        var reply = book.Good(new TakeOff("own.cover", To: "shelf"));
        Assert.False(book.Bench.Part("own.starter").IsOn);
        Assert.True(other.Refresh());
        Assert.Equal(TestBook.Tell(book.Bench), TestBook.Tell(other.Bench));
        Assert.Equal(reply.Entries[^1].Number, other.Version);
    }

    [Fact]
    public void Export_and_import_are_the_same_to_the_byte()
    {
        using var book = new TestBook();
        book.Good(new TakeOff("own.manifold", [new OutLot(4, "M8×35", "stud", "own holes")], "Regal über dem \"Tank\" <1>"));
        book.Good(new StrikeOut(book.Good(new TakeOff("own.starter")).Entries[0].Number));
        book.Good(new Tell(new Waiting("stand", new DateTimeOffset(2026, 2, 14, 12, 0, 0, TimeSpan.FromHours(-5)))));
        var first = Export(book.Book);
        var folder = $"{book.Folder}-copy";
        using var copy = JournalFile.Import(new StreamReader(new MemoryStream(first)), "copy.jsonl", folder).Value;
        Assert.Equal(first, Export(copy));
        Assert.Equal(TestBook.Tell(book.Bench), TestBook.Tell(copy.Bench));
        copy.Dispose();
        Directory.Delete(folder, true);
    }

    [Theory]
    [InlineData("", "journal.jsonl line 1: met an empty file; expected {\"gudgeon_journal\":1}. Give a file made by journal export.")]
    [InlineData("{\"gudgeon_journal\":2}", "journal.jsonl line 1: met journal version 2; expected version 1 or earlier. Use the newer program.")]
    [InlineData("{\"gudgeon_journal\":1}\n{\"number\":2,\"id\":\"a\",\"act\":\"a\",\"at\":\"t\",\"entered\":\"t\",\"by\":\"b\",\"entry\":{}}", "journal.jsonl line 2: met number 2; expected number 1, for no entry is ever left out. Export the book again.")]
    public void Import_of_what_is_no_journal_is_refused(string text, string message)
    {
        var outcome = JournalFile.Read(new StringReader(text), "journal.jsonl");
        Assert.Equal(message, string.Join(" ", outcome.Refusals));
    }

    [Fact]
    public void Open_names_an_entry_that_it_cannot_read_and_shows_the_rest()
    {
        using var book = new TestBook();
        var text = Encoding.UTF8.GetString(Export(book.Book))
            .Replace("\"kind\":\"part-added\",\"part\":\"own.starter\"", "\"kind\":\"from-the-future\",\"part\":\"own.starter\"", StringComparison.Ordinal);
        var folder = $"{book.Folder}-future";
        using var copy = JournalFile.Import(new StringReader(text), "f.jsonl", folder).Value;
        Assert.Equal([8L], copy.Unreadable.Keys);
        Assert.True(copy.Bench.Engine.Parts.ContainsKey("own.head"));
        Assert.Equal("entry 8", Assert.Single(BenchFindings.Of(copy), f => f.Name == FindingNames.EntryUnreadable).Where);
        Assert.True(copy.Submit(new Sending("x", DateTimeOffset.UnixEpoch, DateTimeOffset.UnixEpoch, "t"), new TakeOff("own.head")).Ok);
        copy.Dispose();
        Directory.Delete(folder, true);
    }

    [Fact]
    public void Open_of_a_file_that_is_no_book_says_so()
    {
        var folder = Directory.CreateTempSubdirectory("gudgeon-bad").FullName;
        File.WriteAllText(Path.Combine(folder, Book.FileName), new string('x', 4096));
        var e = Assert.Throws<InvalidDataException>(() => Book.Open(folder));
        Assert.EndsWith("Expected a book's journal. Restore the file from a backup", e.Message, StringComparison.Ordinal);
        Directory.Delete(folder, true);
    }

    [Fact]
    public void Export_holds_only_what_the_entry_was_given()
    {
        using var book = new TestBook();
        book.Good(new TakeOff("own.starter", [new OutLot(3, "M10x60", "bolt", "own holes")], "bench"));
        var last = Encoding.UTF8.GetString(Export(book.Book)).Split('\n')[^3];
        Assert.EndsWith(
            "\"entry\":{\"kind\":\"fasteners-out\",\"joint\":\"j-own.starter\",\"lots\":[{\"count\":3,\"size\":\"M10x60\",\"fastener\":\"bolt\",\"to\":\"own holes\",\"fate\":\"Kept\"}],\"all\":true}}",
            last,
            StringComparison.Ordinal);
    }

    private static byte[] Export(Book book)
    {
        using var memory = new MemoryStream();
        JournalFile.Write(memory, book.Rows());
        return memory.ToArray();
    }
}
