using Gudgeon.Pages;
using Gudgeon.Sums;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gudgeon.Host;

/// <summary>Pages for what went wrong: each says where, what was met, what was expected, what to do.</summary>
public static class Mishap
{
    public static Task Refuse(HttpContext context, int status, params IReadOnlyList<Refusal> refusals) => Page(status, refusals).ExecuteAsync(context);

    public static Task NotFound(HttpContext context) => Refuse(
        context,
        StatusCodes.Status404NotFound,
        new Refusal("the address", $"\"{context.Request.Path.Value}\"", "a page of this workshop", "Go to the first page and pick from there"));

    public static Task Show(HttpContext context) => Refuse(
        context,
        StatusCodes.Status500InternalServerError,
        new Refusal("the workshop itself", "a fault of the program, not of yours", "a page", "Go back and try again; what was recorded before is safe. The terminal shows the details"));

    private static RazorComponentResult<MishapPage> Page(int status, IReadOnlyList<Refusal> refusals) =>
        new(new { Refusals = refusals }) { StatusCode = status };
}
