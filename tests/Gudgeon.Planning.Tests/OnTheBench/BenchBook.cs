using System.Globalization;
using Gudgeon.Journal;

namespace Gudgeon.Planning.Tests.OnTheBench;

/// <summary>A book of an invented engine built from a line of answers, in a folder of its own.</summary>
internal sealed class BenchBook : IDisposable
{
    public static readonly DateTimeOffset Now = new(2026, 11, 9, 18, 0, 0, TimeSpan.FromHours(1));

    /// <summary>Engines of different build; each line is the answers that differ from the defaults.</summary>
    public static TheoryData<string> Engines =>
    [
        "layout=inline n=4",
        "n=3 drive=belt ind=turbo fuel=direct bal=1 vvt=both opt=starter,alternator,oilcooler,vacpump,aircon",
        "layout=vee n=8 vt=ohv valves=1+1 lash=hydraulic fuel=port banks=left-right numbering=alternating opt=starter,alternator,steering,aircon",
        "layout=flat n=4 vt=ohv valves=1+1 cyl=barrel cool=air case=split fuel=carb drive=gears heads=pair opt=starter,alternator,fan,oilcooler,mechpump",
        "layout=single n=1 vt=sohc valves=1+1 act=rocker case=split cyl=barrel cool=air fuel=carb crk=built fw=none opt=",
    ];

    private readonly string folder = Directory.CreateTempSubdirectory("gudgeon-plan-").FullName;
    private int sent;

    /// <param name="answers">Empty for a book from nothing.</param>
    public BenchBook(string answers)
    {
        Book = Book.Open(Path.Combine(folder, "book"));
        Tell(new BookStarted("Invented", answers.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(p => p.Split('=', 2)).ToDictionary(p => p[0], p => p[1])));
    }

    public Book Book { get; }

    public Bench Bench => Book.Bench;

    public void Tell(params Entry[] entries) => Send(new Tell(entries));

    public void Send(Request request)
    {
        var id = (++sent).ToString(CultureInfo.InvariantCulture);
        var outcome = Book.Submit(new Sending(id, Now, Now, "test"), request);
        Assert.True(outcome.Ok, string.Join(" ", outcome.Refusals));
    }

    /// <summary>The first part of a kind, or null where the engine has none.</summary>
    public string? First(string kind) => Bench.Engine.Parts.Values.FirstOrDefault(p => p.Kind == kind)?.Id;

    public void Dispose()
    {
        Book.Dispose();
        Directory.Delete(folder, true);
    }
}
