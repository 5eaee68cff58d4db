using System.Reflection;

namespace Gudgeon.Mutation;

/// <summary>One test, with the row of data that it is given.</summary>
internal sealed class TestCase(string name, Type type, MethodInfo method, object?[] arguments)
{
    /// <summary>Class, method and the row's number.</summary>
    public string Name => name;

    /// <summary>The class in a test's name.</summary>
    public static string ClassOf(string name) => name[..name.LastIndexOf('.')];

    /// <summary>Runs the test.</summary>
    /// <returns>Whether it passed.</returns>
    public bool Passes()
    {
        try
        {
            var subject = method.IsStatic ? null : Activator.CreateInstance(type);
            var result = method.Invoke(subject, arguments);
            if (result is Task task)
                task.GetAwaiter().GetResult();
            else if (result is ValueTask valueTask)
                valueTask.AsTask().GetAwaiter().GetResult();
            (subject as IDisposable)?.Dispose();
            return true;
        }
        catch (Exception)
        {
            // Any exception fails a test, out of memory included: that is what a test is for.
            return false;
        }
    }
}
