using System.Collections;
using System.Reflection;
using Gudgeon.Sums.Fasteners;
using Gudgeon.Sums.Motion;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests;

/// <summary>An exception from a sum is a bug: every sum is given what nobody would write, and must answer or refuse.</summary>
public class WildInputTests
{
    private static readonly double[] Wild = [0, -0.0, -1, 1e-300, 1e-12, 1e-6, 0.1, 0.5, 1, 2, 10, 45, 60, 90, 300, 1000, 1e5, 1e9, 1e15, 1e300, -1e300, -50];
    private static readonly double[] Broken = [double.NaN, double.PositiveInfinity, double.NegativeInfinity];

    public static TheoryData<string> Names => new(Methods().Select(Name).ToArray());

    [Theory]
    [MemberData(nameof(Names))]
    public void Sum_answers_or_refuses_whatever_it_is_given(string name)
    {
        var method = Methods().Single(m => Name(m) == name);
        for (var seed = 0; seed < 250; seed++)
        {
            var random = new Random(seed);
            var inputs = method.GetParameters().Select(p => Make(p.ParameterType, random, 0)).ToArray();
            try
            {
                method.Invoke(null, inputs);
            }
            catch (TargetInvocationException thrown)
            {
                Assert.Fail($"seed {seed}: {thrown.InnerException}\n{string.Join("\n", inputs.Select(Shown))}");
            }
        }
    }

    private static IEnumerable<MethodInfo> Methods() => typeof(SumCatalogue).Assembly.GetExportedTypes()
        .Where(type => type.Namespace?.Split('.')[^1] is "Fasteners" or "Motion" or "Lifting" or "Springs" or "Fluids")
        .SelectMany(type => type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly))
        .Where(method => method.ReturnType.IsGenericType && method.ReturnType.GetGenericTypeDefinition() == typeof(Outcome<>));

    private static string Name(MethodInfo method) => $"{method.DeclaringType!.Name}.{method.Name}";

    private static object? Make(Type type, Random random, int depth)
    {
        var wild = random.Next(3) == 0 ? Wild[random.Next(Wild.Length)] : 500 * random.NextDouble();
        if (type == typeof(double))
            return random.Next(20) == 0 ? Broken[random.Next(Broken.Length)] : wild;
        if (type == typeof(int))
            return random.Next(8) == 0 ? random.Next(int.MinValue, int.MaxValue) : random.Next(0, 40);
        if (type == typeof(bool))
            return random.Next(2) == 0;
        if (type == typeof(string))
            return new[] { "", "M10", "8", "8.8", "grade 2", "front", "[x] <b>" }[random.Next(7)];
        if (type.IsEnum)
            return Enum.GetValues(type).GetValue(random.Next(Enum.GetValues(type).Length));
        if (type.GetMethods(BindingFlags.Public | BindingFlags.Static).FirstOrDefault(m => m.Name.StartsWith("From", StringComparison.Ordinal) && m.ReturnType == type) is { } from)
            return from.Invoke(null, [from.Name == "FromCelsius" ? Math.Clamp(wild, -200, 1e6) : wild]);
        if (type == typeof(ScrewThread))
            return ThreadTable.All[random.Next(ThreadTable.All.Count)];
        if (type == typeof(PropertyClass))
            return PropertyClass.Of("8.8", Length.FromMillimetres(10)).Value;
        if (type == typeof(CrankSlider))
            return random.Next(2) == 0 ? null : CrankSlider.Of(Length.FromMillimetres(45), Length.FromMillimetres(150), Length.FromMillimetres(random.Next(-10, 10))).Value;
        if (type == typeof(Outcome<Mass>))
            return random.Next(4) == 0 ? Outcome.Refused<Mass>(new Refusal("a", "b", "c", "d")) : Outcome.Of(Mass.FromKilograms(wild));
        if (Nullable.GetUnderlyingType(type) is { } inner)
            return random.Next(2) == 0 ? null : Make(inner, random, depth);
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>))
        {
            var list = (IList)Activator.CreateInstance(typeof(List<>).MakeGenericType(type.GenericTypeArguments))!;
            for (var i = random.Next(6); i > 0; i--)
                list.Add(Make(type.GenericTypeArguments[0], random, depth + 1));
            return list;
        }

        var maker = type.GetConstructors().Where(c => c.GetParameters().Length > 0 && c.GetParameters()[0].ParameterType != type).OrderByDescending(c => c.GetParameters().Length).First();
        return maker.Invoke([.. maker.GetParameters().Select(p => Make(p.ParameterType, random, depth + 1))]);
    }

    private static string Shown(object? value) => value is IEnumerable and not string ? string.Join(" | ", ((IEnumerable)value).Cast<object?>()) : $"{value}";
}
