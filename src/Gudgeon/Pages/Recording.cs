using System.Globalization;
using Gudgeon.Host;
using Gudgeon.Journal;
using Gudgeon.Pages.Elements;
using Gudgeon.Sums;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gudgeon.Pages;

/// <summary>From a form to the journal and back to the page: recorded and echoed, or refused with everything that was typed.</summary>
public static class Recording
{
    /// <summary>Records what the form comes to and goes back to the page it was on, where the echo stands.</summary>
    public static IResult Record(Visit visit, IFormCollection form, params IReadOnlyList<Request> requests) =>
        Answer(visit, form, visit.Book.Submit(visit.Sending(form), requests));

    public static IResult Answer(Visit visit, IFormCollection form, Outcome<Reply> outcome)
    {
        if (!outcome.TryGet(out var reply))
            return Refused(visit, form, outcome.Refusals);

        var back = visit.Plate.Href(form["back"].ToString());
        var told = reply.Entries.Count == 0 ? "" : $"{(back.Contains('?') ? '&' : '?')}told={reply.Entries[0].Number}-{reply.Entries[^1].Number}";
        return Back.To(back + told);
    }

    public static IResult Refused(Visit visit, IFormCollection form, IReadOnlyList<Refusal> refusals) =>
        new RazorComponentResult<RefusedPage>(new { Visit = visit, Form = form, Refusals = refusals }) { StatusCode = StatusCodes.Status422UnprocessableEntity };

    public static string Text(this IFormCollection form, string name) => form[name].ToString().Trim();

    /// <summary>A whole number; null where nothing was typed or what was typed is none, which <paramref name="refusals"/> then says.</summary>
    public static int? Count(this IFormCollection form, string name, string where, List<Refusal> refusals)
    {
        var text = form.Text(name);
        if (text.Length == 0)
            return null;
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count <= 999)
            return count;

        refusals.Add(new Refusal(where, $"\"{text}\"", "a whole number up to 999", "Type it in figures"));
        return null;
    }

    /// <summary>The place that a form names: a sort (bag, tray, box, own holes) and what is written on it, or words alone.</summary>
    public static string? Place(this IFormCollection form, string sort = "sort", string name = "place")
    {
        var (kind, text) = (form.Text(sort), form.Text(name));
        var place = kind == Whereabouts.OwnHolesName || text.StartsWith(kind, StringComparison.OrdinalIgnoreCase) && text.Length > 0
            ? (text.Length > 0 && kind != Whereabouts.OwnHolesName ? text : kind)
            : $"{kind} {text}".Trim();
        return place.Length == 0 ? null : place;
    }
}
