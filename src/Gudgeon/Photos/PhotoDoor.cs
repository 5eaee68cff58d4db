using Gudgeon.Host;
using Gudgeon.Journal;
using Gudgeon.Sums;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Net.Http.Headers;

namespace Gudgeon.Photos;

/// <summary>Files and fields of a form that is read as it comes in, file by file.</summary>
public sealed class PhotoDoor(Bookshelf shelf, Desks desks, TimeProvider clock)
{
    private const int LongestField = 4096;
    private const int MostParts = 2000;

    /// <summary>Takes every file of the form: each is kept and recorded, or refused with its reason; one bad file costs no other.</summary>
    public async Task<Outcome<IReadOnlyList<PhotoAnswer>>> Take(HttpContext context, string slug)
    {
        if (!shelf.Open(slug).TryGet(out var book))
            return Outcome.Refused<IReadOnlyList<PhotoAnswer>>(shelf.Open(slug).Refusals);

        var fields = new Dictionary<string, string>();
        var answers = new List<PhotoAnswer>();
        await EachFile(context, fields, async (name, body) =>
        {
            var arrival = await new PhotoFolder(book.Folder).Take(body, name, clock.LocalTimeZone, context.RequestAborted);
            answers.Add(await Record(book, name, arrival, fields, answers.Count, context));
        });
        return Outcome.Of<IReadOnlyList<PhotoAnswer>>(answers);
    }

    /// <summary>Walks the form. Fields must stand before the files that they belong to, as they do in a page's own forms.</summary>
    public static async Task EachFile(HttpContext context, Dictionary<string, string> fields, Func<string, Stream, Task> take)
    {
        // The limit of a form is no limit for a hundred photos: each file meets its own.
        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } limit)
            limit.MaxRequestBodySize = null;
        if (!MediaTypeHeaderValue.TryParse(context.Request.ContentType, out var type) || HeaderUtilities.RemoveQuotes(type.Boundary).Value is not { Length: > 0 and < 128 } boundary)
            return;

        var reader = new MultipartReader(boundary, context.Request.Body);
        for (var part = 0; part < MostParts && await reader.ReadNextSectionAsync(context.RequestAborted) is { } section; part++)
        {
            if (section.AsFileSection() is { } file)
            {
                if (file.FileName.Length > 0 && file.FileStream is { } body)
                    await take(NameOf(file.FileName), body);
            }
            else if (section.AsFormDataSection() is { } field)
            {
                var text = new char[LongestField];
                using var characters = new StreamReader(section.Body);
                fields[field.Name] = new string(text, 0, await characters.ReadBlockAsync(text));
            }
        }
    }

    private async Task<PhotoAnswer> Record(Book book, string name, Outcome<Arrival> outcome, Dictionary<string, string> fields, int place, HttpContext context)
    {
        var sender = fields.GetValueOrDefault("sender", "") is { Length: > 0 and <= 80 } id ? id : Guid.CreateVersion7().ToString();
        using (await desks.Of(book.Name).Write(context.RequestAborted))
        {
            var of = fields.GetValueOrDefault("of", "");
            return PhotoAnswer.Record(book, name, outcome, of.Length > 0 ? of : null, place == 0 ? sender : $"{sender}.{place}", Visit.SenderOf(context), clock.GetLocalNow());
        }
    }

    /// <summary>The last part of what a browser calls the file, short enough to show.</summary>
    private static string NameOf(string sent)
    {
        var name = sent[(sent.LastIndexOfAny(['/', '\\']) + 1)..].Trim();
        return name.Length == 0 ? "photo" : name.Length <= 80 ? name : name[..80];
    }
}
