using Gudgeon.Host;

var app = GudgeonHost.Build(new HostOptions("books"));
app.Lifetime.ApplicationStarted.Register(() => Console.WriteLine($"The workshop is open at {string.Join(" and ", app.Urls)}"));
app.Run();
