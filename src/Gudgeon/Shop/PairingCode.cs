using System.Security.Cryptography;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Shop;

/// <summary>The one code that is open for pairing at a time: shown on the laptop only, good once, for a few minutes, for a few tries.</summary>
public sealed class PairingCode(TimeProvider clock)
{
    public static readonly TimeSpan Life = TimeSpan.FromMinutes(5);

    private const int Length = 8;
    private const int Tries = 5;
    private readonly Lock gate = new();
    private (string Code, DateTimeOffset Until, int Tries)? open;

    /// <summary>The code that is open now and until when; null while there is none.</summary>
    public (string Code, DateTimeOffset Until)? Open
    {
        get
        {
            lock (gate)
                return Current() is { } now ? (now.Code, now.Until) : null;
        }
    }

    /// <summary>Opens a new code; the one before is no good any more.</summary>
    public void Offer()
    {
        lock (gate)
            open = (RandomNumberGenerator.GetString(LabelCode.Signs, Length), clock.GetUtcNow() + Life, Tries);
    }

    public void Withdraw()
    {
        lock (gate)
            open = null;
    }

    /// <summary>Uses the code up, or says why not.</summary>
    public Refusal? Redeem(string typed)
    {
        var code = new string([.. typed.ToUpperInvariant().Where(char.IsAsciiLetterOrDigit)]);
        lock (gate)
        {
            if (Current() is not { } now)
                return new Refusal("pairing code", "no code is open", "the code that the laptop shows now", "Press Pair a phone on the laptop");

            if (code.Length == Length && CryptographicOperations.FixedTimeEquals(System.Text.Encoding.ASCII.GetBytes(code), System.Text.Encoding.ASCII.GetBytes(now.Code)))
            {
                open = null;
                return null;
            }

            var left = now.Tries - 1;
            open = left > 0 ? now with { Tries = left } : null;
            return new Refusal("pairing code", $"\"{typed}\"", "the code that the laptop shows", left > 0 ? "Read it again" : "Press Pair a phone on the laptop for a new one: this one has been tried too often");
        }
    }

    private (string Code, DateTimeOffset Until, int Tries)? Current() => open is { } now && now.Until > clock.GetUtcNow() ? now : null;
}
