namespace Gudgeon.Photos;

/// <summary>Addresses of pictures.</summary>
public static class Pictures
{
    public static string Href(string book, string hash, string size) => $"/picture/{Uri.EscapeDataString(book)}/{hash}/{size}";
}
