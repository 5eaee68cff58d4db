using System.CommandLine;
using System.CommandLine.Parsing;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>
/// The commands of the one executable. Each subject adds its own in a file of its own; all go through the same book as the pages.
/// </summary>
public sealed class CommandLine
{
    /// <summary>Each adds its commands. A new subject adds one line here.</summary>
    private static readonly Action<CommandLine>[] subjects =
    [
        BookCommands.Add,
        NoteCommand.Add,
        TeachCommand.Add,
        StripCommands.Add,
        PlaceCommands.Add,
        AccountCommands.Add,
        CheckCommand.Add,
        GateCommand.Add,
        LiftCommand.Add,
        TightenCommand.Add,
        TraceCommand.Add,
        TimingCommands.Add,
        BuyCommands.Add,
        SmallCommands.Add,
        BookFileCommand.Add,
        JournalCommands.Add,
        ReplayCommand.Add,
        MeasureCommands.Add,
        ReachCommands.Add,
        MeansCommands.Add,
        PlanCommands.Add,
        ServeCommand.Add,
        Photos.PhotosCommand.Add,
        Shop.CertCommand.Add,
    ];

    private readonly Option<string?> books = new("--books") { Description = "Folder of the books (else GUDGEON_BOOKS, else ~/gudgeon-books)", Recursive = true, HelpName = "DIR" };
    private readonly Option<string?> bookName = new("--book") { Description = "Which book; not needed where there is only one", Recursive = true, HelpName = "NAME" };
    private readonly Option<bool> json = new("--json") { Description = "Print one JSON object (docs/json.md)", Recursive = true };

    public CommandLine(Desk desk)
    {
        Desk = desk;
        Root = new RootCommand("The bench book for an engine: strip, measure, decide, put back, and nothing is left over. Without a command it serves the pages.");
        Root.Options.Add(books);
        Root.Options.Add(bookName);
        Root.Options.Add(json);
        foreach (var add in subjects)
        {
            add(this);
        }
    }

    public RootCommand Root { get; }

    public Desk Desk { get; }

    /// <summary>Runs one command line and gives the exit code.</summary>
    public static int Run(string[] args, TextWriter output, TextWriter errors, TimeProvider clock) =>
        Run(args, new Desk(output, errors, clock, () => $"cli-{Guid.CreateVersion7()}"));

    /// <summary>The same at a desk of one's own.</summary>
    public static int Run(string[] args, Desk desk)
    {
        var (output, errors) = (desk.Output, desk.Errors);
        var line = new CommandLine(desk);
        var parsed = line.Root.Parse(args);
        if (parsed.Errors.Count > 0)
        {
            foreach (var error in parsed.Errors)
            {
                errors.WriteLine(error.Message);
            }

            errors.WriteLine("Expected a command of gudgeon. See gudgeon --help.");
            return Exit.WrongUse;
        }

        return parsed.Invoke(new InvocationConfiguration { Output = output, Error = errors, EnableDefaultExceptionHandler = false });
    }

    /// <summary>Where the books are.</summary>
    public string BooksFolder(ParseResult parsed) =>
        parsed.GetValue(books)
        ?? (Environment.GetEnvironmentVariable("GUDGEON_BOOKS") is { Length: > 0 } set ? set : Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), "gudgeon-books"));

    /// <summary>The book that was named, or null.</summary>
    public string? BookName(ParseResult parsed) => parsed.GetValue(bookName);

    public bool Json(ParseResult parsed) => parsed.GetValue(json);

    /// <summary>Runs a command on the shelf.</summary>
    public Action<Command, Func<ParseResult, Bookshelf, int>> OnShelf => (command, work) => command.SetAction(parsed =>
    {
        using var shelf = new Bookshelf(BooksFolder(parsed));
        return work(parsed, shelf);
    });

    /// <summary>Runs a command on the book that was named, or on the only one.</summary>
    public void OnBook(Command command, Func<ParseResult, Book, int> work) => command.SetAction(parsed => WithBook(parsed, book => work(parsed, book)));

    /// <summary>The same for a command that finds out by its options whether it wants a book.</summary>
    public int WithBook(ParseResult parsed, Func<Book, int> work)
    {
        using var shelf = new Bookshelf(BooksFolder(parsed));
        var found = Choose(shelf, BookName(parsed));
        return found.TryGet(out var book) ? work(book) : Desk.Refuse(Json(parsed), found.Refusals);
    }

    private static Outcome<Book> Choose(Bookshelf shelf, string? name) => name is not null
        ? shelf.Open(name)
        : shelf.Names switch
        {
            [var only] => shelf.Open(only),
            [] => Outcome.Refused<Book>(new Refusal(shelf.Folder, "no book", "a book", "Start one with gudgeon new")),
            var several => Outcome.Refused<Book>(new Refusal("book", "none named", $"one of {string.Join(", ", several)}", "Add --book NAME")),
        };
}
