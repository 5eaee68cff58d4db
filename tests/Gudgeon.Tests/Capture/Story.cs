using System.Collections.Concurrent;
using System.Globalization;
using Gudgeon.Capture;
using Gudgeon.Engine;

namespace Gudgeon.Tests.Capture;

/// <summary>One note of a story: what is said, the facts that it holds, and how many questions it must raise.</summary>
internal sealed record Note(int Line, string Text, EngineModel Engine, EarContext Context, IReadOnlyList<string> Facts, int Questions, IReadOnlyList<string> Before);

/// <summary>How well a note was heard.</summary>
internal sealed record Marked(Note Note, Heard Heard, IReadOnlyList<string> Missed, IReadOnlyList<string> Wrong)
{
    public bool Right => Missed.Count == 0 && Wrong.Count == 0 && Heard.Doubts.Count == Note.Questions;
}

/// <summary>
/// Reads a file of notes with the facts expected of them. In a story each note is heard in the context of those before;
/// in a list (<c>@ each</c>) every note stands alone.
/// </summary>
internal sealed class Story
{
    public static readonly DateTimeOffset Now = new(2026, 11, 25, 19, 30, 0, TimeSpan.FromHours(1));

    /// <summary>The same file heard by the same ear comes to the same: several tests look at it.</summary>
    private static readonly ConcurrentDictionary<(string Path, bool AnyWay), Lazy<IReadOnlyList<Marked>>> Heard = [];

    /// <param name="anyWay">Takes what was said in unproven ways as well.</param>
    public static IReadOnlyList<Marked> Mark(string path, bool anyWay = false) =>
        Heard.GetOrAdd((path, anyWay), key => new Lazy<IReadOnlyList<Marked>>(() => Hear(key.Path, key.AnyWay))).Value;

    private static List<Marked> Hear(string path, bool anyWay)
    {
        var marked = new List<Marked>();
        EarContext? running = null;
        EngineModel? engine = null;
        foreach (var note in Read(path))
        {
            if (!ReferenceEquals(engine, note.Engine))
                (engine, running) = (note.Engine, note.Context with { AnyWay = anyWay });
            var own = note.Context with { AnyWay = anyWay };
            bool chained = !path.Contains("spoken", StringComparison.Ordinal);
            var context = chained && running is not null ? running with { Unit = own.Unit, MilIsMillimetre = own.MilIsMillimetre, LeftBank = own.LeftBank, FarBank = own.FarBank } : own;
            foreach (string before in note.Before)
                context = context.After(Ear.Hear(before, note.Engine, context));
            var heard = Ear.Hear(note.Text, note.Engine, context);
            running = context.After(heard);
            var (missed, wrong) = SameMeaning.Compare(note.Facts, heard.Facts.Select(f => f.Code));
            marked.Add(new Marked(note, heard, missed, wrong));
        }

        return marked;
    }

    public static IEnumerable<Note> Read(string path)
    {
        var engines = new Dictionary<string, EngineModel>();
        EngineModel? engine = null;
        var context = new EarContext { Now = Now };
        var before = new List<string>();
        Note? note = null;
        int number = 0;
        foreach (string line in File.ReadLines(path))
        {
            number++;
            string rest = line.Length > 2 ? line[2..].Trim() : "";
            switch (line)
            {
                case "" or ['#', ..]:
                    break;
                case ['@', ..] when rest.StartsWith("engine ", StringComparison.Ordinal):
                    if (note is not null)
                        yield return note;
                    (note, context) = (null, new EarContext { Now = Now });
                    if (!engines.TryGetValue(rest, out engine))
                        engines[rest] = engine = Build(rest[7..]);
                    break;
                case ['@', ..]:
                    if (note is not null)
                        yield return note;
                    (note, context) = (null, Set(context, rest));
                    break;
                case ['<', ..]:
                    if (note is not null)
                        yield return note;
                    note = null;
                    before.Add(rest);
                    break;
                case ['>', ..]:
                    if (note is not null)
                        yield return note;
                    note = new Note(number, rest, engine!, context, [], 0, [.. before]);
                    before.Clear();
                    break;
                case ['?', ..]:
                    note = note! with { Questions = note.Questions + 1 };
                    break;
                default:
                    note = note! with { Facts = [.. note.Facts, line.Trim()] };
                    break;
            }
        }

        if (note is not null)
            yield return note;
    }

    internal static EarContext Set(EarContext context, string settings)
    {
        foreach (string setting in settings.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string value = setting[(setting.IndexOf('=', StringComparison.Ordinal) + 1)..];
            context = setting[..setting.IndexOf('=', StringComparison.Ordinal)] switch
            {
                "last" => context with { LastThing = value.Length > 0 ? value : null, LastJoint = value.Length > 0 ? value : null },
                "off" => context with { Off = value.Split(',').ToHashSet() },
                "unit" => context with { Unit = Enum.Parse<BookUnit>(value, true) },
                "mil" => context with { MilIsMillimetre = value == "mm" },
                "left" => context with { LeftBank = int.Parse(value, CultureInfo.InvariantCulture) },
                "far" => context with { FarBank = int.Parse(value, CultureInfo.InvariantCulture) },
                _ => throw new FormatException(setting),
            };
        }

        return context;
    }

    public static EngineModel Build(string answers)
    {
        var given = answers.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(a => a.Split('=', 2)).ToDictionary(a => a[0], a => a[1]);
        var read = EngineAnswers.Read(given);
        return read.Ok ? Anatomy.Build(read.Value) : throw new FormatException(string.Join("; ", read.Refusals));
    }
}
