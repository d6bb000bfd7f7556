using System.Collections;
using System.Collections.Concurrent;
using System.Reflection;

namespace Gylebook.Fuzz.Tests;

/// <summary>Every number in what was told, by its path.</summary>
internal static class Numbers
{
    private const int Deepest = 12;

    private static readonly ConcurrentDictionary<Type, PropertyInfo[]> Properties = new();

    /// <summary>All doubles that an object's public properties lead to, its lists included.</summary>
    public static IEnumerable<(string Path, double Value)> In(object? told, string path = "") => In(told, path, Deepest);

    private static IEnumerable<(string Path, double Value)> In(object? told, string path, int depth)
    {
        switch (told)
        {
            case null or string or Enum or Exception or Type or bool or int or long: return [];
            case double number: return [(path, number)];
            case IEnumerable list: return list.Cast<object?>().SelectMany((item, i) => In(item, $"{path}[{i}]", depth - 1));
            default:
                return depth == 0 ? [] : PropertiesOf(told.GetType())
                    .SelectMany(property => In(property.GetValue(told), $"{path}.{property.Name}", depth - 1));
        }
    }

    /// <summary>What a type of ours tells; of anybody else's, nothing.</summary>
    private static PropertyInfo[] PropertiesOf(Type type) => Properties.GetOrAdd(type, each => each.Namespace?.StartsWith("Gylebook", StringComparison.Ordinal) == true
        ? [.. each.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(property => property.GetIndexParameters().Length == 0 && !property.PropertyType.IsByRefLike)]
        : []);
}
