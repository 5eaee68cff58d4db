using System.Reflection;
using System.Runtime.CompilerServices;
using System.Runtime.Loader;
using Xunit.Sdk;
using Xunit.v3;

namespace Gudgeon.Mutation;

/// <summary>
/// The changed sums and their tests, loaded once more. Every world sets up its static fields afresh, with the mutant that is active at that moment;
/// all other assemblies are shared between worlds.
/// </summary>
internal sealed class World : AssemblyLoadContext
{
    /// <summary>No mutant: the sums as they are written.</summary>
    public const int None = -1;

    private const string SumsName = "Gudgeon.Sums";
    private const string TestsName = "Gudgeon.Sums.Tests";
    private const BindingFlags Static = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static;

    private readonly string _folder;
    private readonly Assembly _sums, _tests;
    private readonly FieldInfo _active, _capture;
    private readonly MethodInfo _begin, _met;
    private readonly Dictionary<string, List<TestCase>> _byClass = [];

    /// <summary>Loads a world in which a mutant is active from the very start.</summary>
    /// <param name="folder">The built tests, with the changed sums among them.</param>
    /// <param name="mutant">The mutant, or none.</param>
    public World(string folder, int mutant = None)
        : base(isCollectible: true)
    {
        _folder = Path.GetFullPath(folder);
        _sums = LoadFromAssemblyPath(Path.Combine(_folder, SumsName + ".dll"));
        _tests = LoadFromAssemblyPath(Path.Combine(_folder, TestsName + ".dll"));
        var control = _sums.GetTypes().FirstOrDefault(t => t.Name == "MutantControl")
            ?? throw new InvalidOperationException($"{_folder}/{SumsName}.dll holds no mutants: it was not made by Stryker, or Stryker put the original back.");
        _active = control.GetField("ActiveMutant", Static)!;
        _capture = control.GetField("CaptureCoverage", Static)!;
        _begin = control.GetMethod("InitCoverage", Static)!;
        _met = control.GetMethod("GetCoverageData", Static)!;
        Active = mutant;
    }

    /// <summary>The mutant that the sums act out.</summary>
    public int Active { set => _active.SetValue(null, value); }

    /// <summary>Lets every world find what the tests bring along.</summary>
    public static void Share(string folder) => Default.Resolving += (context, name) =>
        Path.Combine(Path.GetFullPath(folder), name.Name + ".dll") is var path && File.Exists(path) ? context.LoadFromAssemblyPath(path) : null;

    /// <summary>Sets up all static fields and makes the data of all tests now, so that no mutant that is tried later has a hand in them.</summary>
    /// <returns>The tests.</returns>
    public IReadOnlyList<TestCase> SetUp()
    {
        foreach (var type in _sums.GetTypes().Concat(_tests.GetTypes()).Where(t => !t.ContainsGenericParameters))
            RuntimeHelpers.RunClassConstructor(type.TypeHandle);
        return [.. _tests.GetTypes().Where(t => t.IsClass && !t.ContainsGenericParameters).OrderBy(t => t.FullName, StringComparer.Ordinal).SelectMany(Of)];
    }

    /// <summary>One test by its name; null when its data no longer has that row.</summary>
    public TestCase? Test(string name) => Of(_tests.GetType(TestCase.ClassOf(name))!).FirstOrDefault(t => t.Name == name);

    /// <summary>Runs something and tells which mutants it met.</summary>
    public IReadOnlyCollection<int> Meeting(Action what)
    {
        _begin.Invoke(null, null);
        _capture.SetValue(null, true);
        what();
        _capture.SetValue(null, false);
        return ((IEnumerable<int>[])_met.Invoke(null, null)!).SelectMany(m => m).ToHashSet();
    }

    protected override Assembly? Load(AssemblyName assemblyName) => assemblyName.Name switch
    {
        SumsName => _sums,
        TestsName => _tests,
        _ => null,
    };

    private List<TestCase> Of(Type type)
    {
        if (!_byClass.TryGetValue(type.FullName!, out var cases))
            _byClass.Add(type.FullName!, cases = [.. type.GetMethods().SelectMany(m => Of(type, m))]);
        return cases;
    }

    private static IEnumerable<TestCase> Of(Type type, MethodInfo method)
    {
        var name = $"{type.FullName}.{method.Name}";
        if (!method.GetCustomAttributes(true).OfType<IFactAttribute>().Any())
            return [];
        var sources = ExtensibilityPointFactory.GetMethodDataAttributes(method);
        if (sources.Count == 0)
            return [new(name, type, method, [])];
        var rows = sources.SelectMany(s => s.GetData(method, new DisposalTracker()).AsTask().GetAwaiter().GetResult())
            .Select((row, number) => new TestCase($"{name}#{number}", type, method, method.ResolveMethodArguments(row.GetData()))).ToList();
        return rows.Count > 0 ? rows : throw new InvalidOperationException($"{name} has no data.");
    }
}
