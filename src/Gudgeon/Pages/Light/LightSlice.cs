using Gudgeon.Pages.Elements;

namespace Gudgeon.Pages.Light;

/// <summary>Day, night, or as the screen says: a garage lamp and a summer yard want different paper.</summary>
public sealed class LightSlice : ISlice
{
    public void MapPages(IEndpointRouteBuilder app) => app.MapPost("/light", Choose);

    private static async Task<IResult> Choose(HttpRequest request, HttpResponse response)
    {
        var form = await request.ReadFormAsync();
        var light = form["light"].ToString();
        if (Sheet.Lights.Any(l => l.Value == light))
            response.Cookies.Append(Sheet.LightCookie, light, new CookieOptions { HttpOnly = true, SameSite = SameSiteMode.Strict, MaxAge = TimeSpan.FromDays(400), IsEssential = true });
        return Back.To(form["back"].ToString());
    }
}
