using System.Globalization;
using Gudgeon.Host;
using Gudgeon.Journal;
using Gudgeon.Pages.Strip;
using Gudgeon.Sums;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gudgeon.Pages.Tighten;

/// <summary>Tightening joints by stages: the order as a picture, one tap a fastener.</summary>
public sealed class TightenSlice : ISlice
{
    public IEnumerable<NavItem> Nav => [new(NavPlace.Shelf, 12, "tighten", "Tighten", "book")];

    public void MapPages(IEndpointRouteBuilder app)
    {
        var book = app.MapGroup("/books/{book}");
        book.MapGet("/tighten", (Visit visit) => new RazorComponentResult<TightenListPage>(new { Visit = visit }));
        book.MapGet("/tighten/{joint}", IResult (Visit visit, string joint) => visit.Bench.Engine.Joints.TryGetValue(joint, out var found)
            ? new RazorComponentResult<TightenPage>(new { Visit = visit, Joint = found })
            : Recording.Refused(visit, FormCollection.Empty, [new Refusal("the address", $"\"{joint}\"", "a joint of this engine", "Go to Tighten and pick one")]));
        book.MapPost("/procedure", StripSlice.Form(Procedure));
        book.MapPost("/pattern", StripSlice.Form(Pattern));
        book.MapPost("/wrench", StripSlice.Form(Wrench));
        book.MapPost("/staged", StripSlice.Form(Staged));
        book.MapPost("/stage-broken-off", StripSlice.Form((_, form, refusals) => form.Count("stage", "stage", refusals) is { } stage ? [new Tell(new StageBrokenOff(form.Text("joint"), stage, form.Text("why")))] : []));
        book.MapPost("/bolts-measured", StripSlice.Form(Bolts));
        book.MapPost("/insert", StripSlice.Form((_, form, refusals) =>
        {
            var hole = form.Count("hole", "hole", refusals) ?? 0;
            return refusals.Count > 0 ? [] : [new Tell(new InsertFitted(form.Text("joint"), hole, form.Text("insert")))];
        }));
        book.MapPost("/studs-counted", StripSlice.Form((_, form, refusals) => form.Count("count", "studs", refusals) is { } n ? [new Tell(new StudsCounted(form.Text("joint"), n))] : []));
        book.MapPost("/studs-out", StripSlice.Form((_, form, refusals) => form.Count("count", "studs", refusals) is { } n ? [new Tell(new StudsOut(form.Text("joint"), n, form.Count("broken", "broken ones", refusals) ?? 0))] : []));
        book.MapPost("/studs-back", StripSlice.Form((_, form, refusals) => form.Count("count", "studs", refusals) is { } n ? [new Tell(new StudsBack(form.Text("joint"), n, form.Count("fresh", "new ones", refusals) ?? 0))] : []));
        book.MapPost("/extension", StripSlice.Form(Extension));
        book.MapPost("/holes-blown", StripSlice.Form((_, form, _) => [new Tell(new HolesBlown(form.Text("joint")))]));
    }

    private static IReadOnlyList<Request> Procedure(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        var order = new List<int>();
        foreach (var word in form.Text("order").Split([' ', ',', '/', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
                order.Add(number);
            else
                refusals.Add(new Refusal("the book's order", $"\"{word}\"", "numbers with blanks between", "Type the number at each hole"));
        }

        var read = StageText.Read(form.Text("stages"), visit.Bench.Units);
        refusals.AddRange(read.Refusals);
        return read.TryGet(out var stages) && refusals.Count == 0
            ? [new Tell(new ProcedureSet(form.Text("joint"), stages, form.Text("lubricant"), form.Text("renew").Length > 0, form.Text("washers"), order.Count > 0 ? order : null, form.Text("source")))]
            : [];
    }

    private static IReadOnlyList<Request> Pattern(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        var sort = Enum.TryParse<PatternSort>(form.Text("sort"), out var chosen) ? chosen : PatternSort.Grid;
        var count = form.Count("count", "how many in all", refusals);
        var rows = sort is PatternSort.Grid or PatternSort.Rim ? form.Count("rows", "in how many rows", refusals) ?? 1 : 1;
        return count is { } n ? [new Tell(new PatternChosen(form.Text("joint"), sort, n, rows))] : [];
    }

    private static IReadOnlyList<Request> Wrench(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        var least = SpotText.Read(form.Text("least"), "Nm", visit.Bench.Units, null, "lowest mark");
        var most = SpotText.Read(form.Text("most"), "Nm", visit.Bench.Units, null, "highest mark");
        refusals.AddRange([.. least.Refusals, .. most.Refusals]);
        return refusals.Count > 0 ? [] : [new Tell(new WrenchKept(Visit.IdOf(form.Text("name")), form.Text("name"), least.Value, most.Value, $"{form.Text("least")} to {form.Text("most")}", form.Text("calibrated")))];
    }

    private static IReadOnlyList<Request> Bolts(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        var lengths = BoltText.Lengths(form.Text("lengths"), visit.Bench.Units);
        var most = form.Text("most").Length == 0 && lengths.Ok && lengths.Value.Count == 0 ? Outcome.Of(1.0) : SpotText.Read(form.Text("most"), "mm", visit.Bench.Units, null, "longest that goes in again");
        refusals.AddRange([.. lengths.Refusals, .. most.Refusals]);
        var pitch = form.Count("pitch", "pitch gauge", refusals) ?? 0;
        return refusals.Count > 0 ? [] : [new Tell(new BoltsMeasured(form.Text("joint"), most.Value, lengths.Value, pitch, form.Text("source")))];
    }

    private static IReadOnlyList<Request> Extension(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        if (form.Text("off").Length > 0)
            return [new Tell(new ExtensionSet(form.Text("joint"), 1, 0))];
        var lever = SpotText.Read(form.Text("lever"), "mm", visit.Bench.Units, null, "wrench, square to hand");
        var extension = SpotText.Read(form.Text("extension"), "mm", visit.Bench.Units, null, "extension, square to fastener");
        var angle = form.Text("angle").Length == 0 ? Outcome.Of(0.0) : SpotText.Read(form.Text("angle"), "deg", visit.Bench.Units, null, "angle");
        refusals.AddRange([.. lever.Refusals, .. extension.Refusals, .. angle.Refusals]);
        return refusals.Count > 0 ? [] : [new Tell(new ExtensionSet(form.Text("joint"), lever.Value, extension.Value, angle.Value))];
    }

    private static IReadOnlyList<Request> Staged(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        if (form.Count("stage", "stage", refusals) is not { } stage)
            return [];
        var which = form.Text("fastener");
        int? hole = which is "all" or "" ? null : form.Count("fastener", "fastener", refusals);
        var wrench = form.Text("wrench") is { Length: > 0 } id ? id : null;
        var read = TakeStage.Read(visit.Bench, form.Text("joint"), stage, hole is { } n ? [n] : null, wrench, form.Text("setting"));
        refusals.AddRange(read.Refusals);
        return refusals.Count > 0 ? [] : [new Tell(read.Value)];
    }
}
