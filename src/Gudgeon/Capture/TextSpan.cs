namespace Gudgeon.Capture;

/// <summary>A stretch of what was said, by character.</summary>
public readonly record struct TextSpan(int Start, int Length)
{
    public int End => Start + Length;

    public string Of(string text) => text.Substring(Start, Length);
}
