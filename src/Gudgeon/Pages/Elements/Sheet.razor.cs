using System.Globalization;
using Gudgeon.Host;
using Microsoft.AspNetCore.Components;

namespace Gudgeon.Pages.Elements;

/// <summary>The frame of every page: plate at the top, the work, the verbs of the job and the box to say something.</summary>
public sealed partial class Sheet
{
    internal const string LightCookie = "light";
    internal static readonly (string Value, string Label)[] Lights = [("", "As the screen"), ("day", "Day"), ("night", "Night")];

    [Parameter, EditorRequired] public required string Title { get; set; }
    [Parameter, EditorRequired] public required RenderFragment ChildContent { get; set; }

    /// <summary>The book that the page belongs to; none on the first page.</summary>
    [Parameter] public BookPlate? Book { get; set; }

    /// <summary>The visit whose last words are echoed; none where nothing is recorded from.</summary>
    [Parameter] public Visit? Visit { get; set; }

    /// <summary>The page's own address below the book's: where forms come back to.</summary>
    [Parameter] public string At { get; set; } = "";

    /// <summary>A line that was refused, to stand in the box again.</summary>
    [Parameter] public string Said { get; set; } = "";

    /// <summary>Whether the box to say something is on the page.</summary>
    [Parameter] public bool Say { get; set; } = true;

    /// <summary>What was looked for, to stand in the search box again.</summary>
    [Parameter] public string? Query { get; set; }

    /// <summary>Beside the work at a desk, below it on a phone.</summary>
    [Parameter] public RenderFragment? Aside { get; set; }

    [Parameter] public RenderFragment? Head { get; set; }

    [CascadingParameter] private HttpContext? Http { get; set; }

    [Inject] private TimeProvider Clock { get; set; } = null!;

    /// <summary>What stands at the foot of every printed page.</summary>
    private string Running => $"{(Book is null ? "Gudgeon" : Book.Name)} · {Title} · {Clock.GetLocalNow().ToString("d MMM yyyy", CultureInfo.InvariantCulture)}";

    /// <summary>The item of the navigation that the page belongs to.</summary>
    private string Tab => At.Split('/', '?')[0];

    private string Light => Http?.Request.Cookies[LightCookie] is { } asked && Lights.Any(l => l.Value == asked) ? asked : "";

    private string Path => Http is { Request: { } request } && HttpMethods.IsGet(request.Method) ? request.Path + request.QueryString : "/";
}

/// <summary>What the frame needs to know of a book.</summary>
/// <param name="Slug">Its folder, which is its name in addresses.</param>
/// <param name="Name">What the owner calls it.</param>
public sealed record BookPlate(string Slug, string Name)
{
    /// <summary>The address of a page of this book.</summary>
    public string Href(string path) => path.Length == 0 ? $"/books/{Uri.EscapeDataString(Slug)}" : $"/books/{Uri.EscapeDataString(Slug)}/{path}";
}
