using System.Diagnostics;
using System.Runtime.InteropServices;
using Gudgeon.Capture;
using Gudgeon.Tests.Capture;

// score FILE...: precision and recall of the ear on files of notes. phrases FILE...: the ways of saying that are heard wrongly. say "ENGINE" "NOTE": what is heard. ways FILE...: the ways of saying that are heard rightly, for Data/ways.psv. Nothing: the timing.
switch (args)
{
    case ["score", .. var files]:
        foreach (string file in files)
            Score(file);
        break;
    case ["phrases", .. var tables]:
        foreach (string table in tables)
            Ways(table);
        break;
    case ["ways", .. var told]:
        Console.WriteLine("# Ways of saying that were heard rightly in the files of stories and of ways of saying beside the tests: the kind of fact, then the sorts of the phrases, * those the fact used. Made by the bench.");
        foreach (string row in ProvenWays.Rows(told))
            Console.WriteLine(row);
        break;
    case ["say", var engine, .. var notes]:
        Say(engine, notes);
        break;
    default:
        Time();
        break;
}

static void Score(string file)
{
    var marked = Story.Mark(file);
    foreach (var note in marked.Where(m => !m.Right))
    {
        Console.WriteLine($"{note.Note.Line}: {note.Note.Text}");
        foreach (string missed in note.Missed)
            Console.WriteLine($"    missed  {missed}");
        foreach (string wrong in note.Wrong)
            Console.WriteLine($"    wrong   {wrong}");
        if (note.Heard.Doubts.Count != note.Note.Questions)
            Console.WriteLine($"    asked   {note.Heard.Doubts.Count} instead of {note.Note.Questions}: {string.Join(" // ", note.Heard.Doubts.Select(d => d.Question))}");
        if (note.Heard.Unused.Count > 0)
            Console.WriteLine($"    unused  {string.Join(" | ", note.Heard.UnusedWords)}");
    }

    // How near a missed fact came: offered by a question, told of the same thing with another detail, told of another thing, or not at all.
    var near = new Dictionary<string, int>();
    foreach (var (note, missed) in marked.SelectMany(m => m.Missed.Select(f => (m, f))))
    {
        string kind = missed.Split(' ')[0];
        string thing = missed.Split(':')[0];
        string how = note.Heard.Doubts.Any(d => d.Readings.Any(r => r.Facts.Any(f => f.Code == missed))) ? "offered by a question"
            : note.Wrong.Any(w => w.Split(':')[0].Split(" -> ")[0] == thing.Split(" -> ")[0]) ? "of the same thing, another detail"
            : note.Wrong.Any(w => w.Split(' ')[0] == kind) ? "of another thing"
            : note.Heard.Facts.Count == 0 ? "nothing heard in the note" : "not heard beside others";
        near[how] = near.GetValueOrDefault(how) + 1;
    }

    // What is only offered is right where recording it would have met what was missed.
    int offered = 0, fits = 0;
    foreach (var note in marked)
    {
        List<string> codes = [.. note.Heard.Doubts.Where(d => d.Sort == DoubtSort.Unproven).SelectMany(d => d.Readings[0].Facts).Select(f => f.Code)];
        offered += codes.Count;
        fits += codes.Count - SameMeaning.Compare(note.Missed, codes).Wrong.Count;
    }

    int expected = marked.Sum(m => m.Note.Facts.Count);
    int missedAll = marked.Sum(m => m.Missed.Count);
    int wrongAll = marked.Sum(m => m.Wrong.Count);
    int right = expected - missedAll;
    Console.WriteLine($"{Path.GetFileName(file)}: {marked.Count} notes, {expected} facts expected, {right} right, {missedAll} missed, {wrongAll} wrong: precision {100.0 * right / (right + wrongAll):0.0} %, recall {100.0 * right / expected:0.0} %, whole notes right {marked.Count(m => m.Right)}; offered {offered} more, {fits} of them right");
    if (near.Count > 0)
        Console.WriteLine($"  missed facts were {string.Join(", ", near.OrderByDescending(n => n.Value).Select(n => $"{n.Key} {n.Value}"))}");
}

static void Ways(string table)
{
    foreach (var area in PhraseTable.Read(table).GroupBy(w => w.Area))
    {
        int right = 0;
        foreach (var way in area)
        {
            var heard = way.Hear();
            if (way.IsRight(heard))
            {
                right++;
                continue;
            }

            Console.WriteLine($"{way.Line}: {way.Text}");
            Console.WriteLine($"    due     {(way.Asks ? "?" : string.Join(" & ", way.Facts))}");
            Console.WriteLine($"    heard   {string.Join(" & ", heard.Facts.Select(f => f.Code))}{string.Concat(heard.Doubts.Select(d => $" ? {d.Question}"))}{(heard.Unused.Count > 0 ? $" unused: {string.Join(" | ", heard.UnusedWords)}" : "")}");
        }

        Console.WriteLine($"{Path.GetFileName(table)}, {area.Key}: {right} of {area.Count()} right");
    }
}

static void Say(string engine, string[] notes)
{
    var model = Story.Build(engine);
    var context = new EarContext { Now = Story.Now };
    foreach (string note in notes)
    {
        var heard = Ear.Hear(note, model, context);
        context = context.After(heard);
        Console.WriteLine($"> {note}");
        foreach (var fact in heard.Facts)
            Console.WriteLine($"    {fact.Code,-50} {fact.Echo}");
        foreach (var doubt in heard.Doubts)
            Console.WriteLine($"    ? {doubt.Question} {string.Join(" | ", doubt.Readings.Select(r => r.Echo))}");
        if (heard.Unused.Count > 0)
            Console.WriteLine($"    unused: {string.Join(" | ", heard.UnusedWords)}");
    }
}

// How long one line takes on an engine of more than 1,000 parts, and the same lines cut into words by string.Split:
// the ratio says what understanding costs over merely looking at the words.
static void Time()
{
    var engine = Story.Build("layout=vee n=16 angle=60 lube=dry sc=5 act=direct s=2 vvt=both");
    var context = new EarContext { Now = Story.Now };
    string[] lines =
    [
        "alternator out, three bolts, one M10 by ninety, the others M8 by forty, back in their holes finger tight",
        "number three exhaust valve's burnt, collets in the third cup of the muffin tin",
        "bore one top across eighty six oh one two",
        "can't get the lower starter bolt till the oil pipe bracket's off",
        "no, twelve bolts not ten, I'd missed two underneath",
    ];
    var watch = Stopwatch.StartNew();
    Ear.MakeReady(engine, context);
    double ready = watch.Elapsed.TotalMilliseconds;
    watch.Restart();
    Ear.Hear(lines[0], engine, context);
    double first = watch.Elapsed.TotalMilliseconds;
    const int Rounds = 400;
    foreach (string line in Enumerable.Range(0, Rounds).SelectMany(_ => lines))
        Ear.Hear(line, engine, context);
    var times = new List<double>();
    var worked = new List<double>();
    long before = GC.GetAllocatedBytesForCurrentThread();
    int[] collected = [.. Enumerable.Range(0, 3).Select(GC.CollectionCount)];
    var paused = GC.GetTotalPauseDuration();
    foreach (string line in Enumerable.Range(0, Rounds).SelectMany(_ => lines))
    {
        double from = ThreadTime.Milliseconds();
        watch.Restart();
        Ear.Hear(line, engine, context);
        worked.Add(ThreadTime.Milliseconds() - from);
        times.Add(watch.Elapsed.TotalMilliseconds);
    }

    double kilobytes = (GC.GetAllocatedBytesForCurrentThread() - before) / 1024.0 / times.Count;
    string gc = $"{string.Join("/", Enumerable.Range(0, 3).Select(g => GC.CollectionCount(g) - collected[g]))} collections of generation 0/1/2, paused {(GC.GetTotalPauseDuration() - paused).TotalMilliseconds:0} ms in all";
    int over = times.Count(t => t > 20);
    times.Sort();
    worked.Sort();
    int words = 0;
    watch.Restart();
    foreach (string line in Enumerable.Range(0, Rounds).SelectMany(_ => lines))
        words += line.ToLowerInvariant().Split([' ', ',', '.'], StringSplitOptions.RemoveEmptyEntries).Length;
    double split = watch.Elapsed.TotalMilliseconds / (Rounds * lines.Length);
    Console.WriteLine($"{engine.Parts.Count} parts, {engine.Lines.Count} lines; made ready in {ready:0.0} ms, as when a page was served; the first line then {first:0.0} ms");
    Console.WriteLine($"one line: mean {times.Average():0.000} ms, p95 {times[(int)(times.Count * 0.95)]:0.000} ms, worst {times[^1]:0.00} ms; plain split {split:0.0000} ms ({words / Rounds} words in {lines.Length} lines); ratio {times.Average() / split:0}");
    if (OperatingSystem.IsLinux())
        Console.WriteLine($"of it the ear's own work on the processor: mean {worked.Average():0.000} ms, p95 {worked[(int)(worked.Count * 0.95)]:0.000} ms, worst {worked[^1]:0.00} ms; the rest waits for other programs");
    Console.WriteLine($"{over} of {times.Count} lines over 20 ms; {kilobytes:0} kB allocated a line; {gc}");
}

/// <summary>What this thread has had of a processor: on a machine that is busy with other work a clock on the wall tells of that work.</summary>
internal static class ThreadTime
{
    private const int ThreadClock = 3;

    public static double Milliseconds() => OperatingSystem.IsLinux() && clock_gettime(ThreadClock, out var time) == 0 ? (time.Seconds * 1e3) + (time.Nanoseconds / 1e6) : 0;

    [DllImport("libc")]
    private static extern int clock_gettime(int clock, out Timespec time);

    [StructLayout(LayoutKind.Sequential)]
    private struct Timespec
    {
        public long Seconds;
        public long Nanoseconds;
    }
}
