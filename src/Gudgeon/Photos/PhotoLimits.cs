namespace Gudgeon.Photos;

/// <summary>
/// What bounds the memory that photos take, however many come: a file is streamed to disk, never held; its header is asked for its size before
/// anything is decoded; JPEG and WebP are decoded straight to a fraction of their size; and few are decoded at once.
/// </summary>
public static class PhotoLimits
{
    /// <summary>Largest file, in bytes.</summary>
    public const long FileBytes = 64L << 20;

    /// <summary>Most pixels of a picture that is decoded to a fraction of its size.</summary>
    public const long ScaledPixels = 220_000_000;

    /// <summary>Most pixels of a picture that must be held whole (PNG, progressive JPEG): 200 MB at four bytes each.</summary>
    public const long WholePixels = 50_000_000;

    /// <summary>Pictures decoded at one time.</summary>
    public const int AtOnce = 2;

    /// <summary>Longer side of the small picture of lists.</summary>
    public const int ThumbPixels = 480;

    /// <summary>Longer side of the picture that pages show, pins sit on and prints carry.</summary>
    public const int ViewPixels = 1600;
}
