using System.Reflection;
using System.Reflection.Emit;

namespace Gudgeon.Sums.Tests;

/// <summary>Reads which methods a method calls, out of its own code.</summary>
internal static class CalledBy
{
    private static readonly Dictionary<short, OpCode> codes = typeof(OpCodes).GetFields(BindingFlags.Public | BindingFlags.Static)
        .Select(f => (OpCode)f.GetValue(null)!).ToDictionary(c => c.Value);

    /// <summary>Methods called or taken as delegates, directly.</summary>
    public static IEnumerable<MethodBase> Directly(MethodBase method)
    {
        if (method.GetMethodBody()?.GetILAsByteArray() is not { } il)
            yield break;
        var types = method.DeclaringType is { IsGenericType: true } owner ? owner.GetGenericArguments() : null;
        var own = method.IsGenericMethod ? method.GetGenericArguments() : null;
        for (var at = 0; at < il.Length;)
        {
            short value = il[at++];
            if (value == 0xFE)
                value = unchecked((short)(0xFE00 | il[at++]));
            var code = codes[value];
            if (code.OperandType is OperandType.InlineMethod or OperandType.InlineTok && Resolve(method.Module, BitConverter.ToInt32(il, at), types, own) is { } called)
                yield return called;
            at += code.OperandType switch
            {
                OperandType.InlineNone => 0,
                OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
                OperandType.InlineVar => 2,
                OperandType.InlineI8 or OperandType.InlineR => 8,
                OperandType.InlineSwitch => 4 + 4 * BitConverter.ToInt32(il, at),
                _ => 4,
            };
        }
    }

    /// <summary>The same, and what is called by those that <paramref name="through"/> lets pass.</summary>
    public static HashSet<MethodBase> All(IEnumerable<MethodBase> from, Func<MethodBase, bool> through)
    {
        var seen = new HashSet<MethodBase>();
        var open = new Queue<MethodBase>(from);
        while (open.TryDequeue(out var next))
            foreach (var called in Directly(next))
                if (seen.Add(called) && through(called))
                    open.Enqueue(called);
        return seen;
    }

    private static MethodBase? Resolve(Module module, int token, Type[]? types, Type[]? own)
    {
        var member = module.ResolveMember(token, types, own);
        return member is MethodInfo { IsGenericMethod: true, IsGenericMethodDefinition: false } generic ? generic.GetGenericMethodDefinition() : member as MethodBase;
    }
}
