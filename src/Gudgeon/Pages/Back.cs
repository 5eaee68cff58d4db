namespace Gudgeon.Pages;

/// <summary>After a form: on to a page of this workshop, and nowhere else.</summary>
public static class Back
{
    /// <summary>303, so that a reload shows the page again instead of sending the form again.</summary>
    public static IResult To(string path)
    {
        var local = path.StartsWith('/') && !path.StartsWith("//", StringComparison.Ordinal) && !path.Contains('\\') && !path.Any(char.IsControl);
        return new SeeOther(local ? path : "/");
    }

    private sealed class SeeOther(string path) : IResult
    {
        public Task ExecuteAsync(HttpContext context)
        {
            context.Response.StatusCode = StatusCodes.Status303SeeOther;
            context.Response.Headers.Location = path;
            return Task.CompletedTask;
        }
    }
}
