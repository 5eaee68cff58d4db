namespace Gudgeon.Host;

/// <summary>What a workshop is started with.</summary>
/// <param name="BooksFolder">The folder that holds one folder a book; made when missing.</param>
public sealed record HostOptions(string BooksFolder)
{
    /// <summary>Where to listen. Loopback unless the owner says otherwise; port 0 takes any free one.</summary>
    public IReadOnlyList<string> Urls { get; init; } = ["http://127.0.0.1:5080"];

    /// <summary>Names besides the loopback ones by which this workshop may be called, as in <c>bench.lan</c>.</summary>
    public IReadOnlyList<string> Names { get; init; } = [];

    /// <summary>Whether paired phones of the local network are let in. Else whoever is not this machine itself is turned away, wherever it listens.</summary>
    public bool Shop { get; init; }

    /// <summary>File with the certificate and key for HTTPS; null where there is none.</summary>
    public string? Certificate { get; init; }

    public TimeProvider Clock { get; init; } = TimeProvider.System;
}
