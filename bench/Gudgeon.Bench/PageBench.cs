using System.Diagnostics;
using Gudgeon.Host;
using Microsoft.AspNetCore.Builder;

namespace Gudgeon.Bench;

/// <summary>The heaviest page at eight connections, 95th percentile, against a constant page of the same host.</summary>
internal static class PageBench
{
    private const int Connections = 8;
    private const int RequestsEach = 60;

    public static async Task Run()
    {
        var folder = Directory.CreateTempSubdirectory("gudgeon-bench-").FullName;
        try
        {
            Books.Start(folder, "page", "vee", "12").Dispose();
            await using var app = GudgeonHost.Build(new HostOptions(folder) { Urls = ["http://127.0.0.1:0"] });
            app.MapGet("/constant", () => "constant");
            await app.StartAsync();
            using var client = new HttpClient(new SocketsHttpHandler { MaxConnectionsPerServer = Connections }) { BaseAddress = new Uri(app.Urls.Single()) };
            string[] pages = ["/books/page/strip", "/books/page/refit", "/books/page/journal", "/books/page/account"];
            var measured = new List<(string Page, double P95, double Constant)>();
            foreach (var page in pages)
            {
                await Ask(client, page, 15);
                await Ask(client, "/constant", 15);
                var ours = await Ask(client, page, RequestsEach);
                var constant = await Ask(client, "/constant", RequestsEach);
                measured.Add((page, ours.Percentile(95), constant.Percentile(95)));
            }

            foreach (var (page, p95, constant) in measured.OrderByDescending(m => m.P95))
            {
                Console.WriteLine($"page: {page} p95 {Sample.Show(p95)} ms, constant page {Sample.Show(constant)} ms at {Connections} connections, ratio {Sample.Show(p95 / constant)}");
            }

            await app.StopAsync();
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    private static async Task<Sample> Ask(HttpClient client, string page, int times)
    {
        var samples = await Task.WhenAll(Enumerable.Range(0, Connections).Select(async _ =>
        {
            var mine = new List<TimeSpan>();
            for (var i = 0; i < times; i++)
            {
                var watch = Stopwatch.StartNew();
                using var response = await client.GetAsync(page);
                response.EnsureSuccessStatusCode();
                await response.Content.ReadAsByteArrayAsync();
                mine.Add(watch.Elapsed);
            }

            return mine;
        }));
        var all = new Sample();
        foreach (var time in samples.SelectMany(s => s))
        {
            all.Add(time);
        }

        return all;
    }
}
