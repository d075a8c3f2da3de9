using System.Collections;
using System.Reflection;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Tests;

/// <summary>Finds the numbers in a record, and in the records and lists inside it, that are not finite.</summary>
internal static class NotFinite
{
    /// <returns>Their paths; none when all is well.</returns>
    public static IEnumerable<string> In(object? value, string path = "") => value switch
    {
        null or string or Enum => [],
        double d => double.IsFinite(d) ? [] : [$"{path} is {d}"],
        Point2 p => In(p.X + p.Y, path),
        PartPoint p => In(p.X + p.Y + p.Z, path),
        // A default list holds nothing.
        IEnumerable list when list.GetType().GetProperty("IsDefault")?.GetValue(list) is true => [],
        IEnumerable list => list.Cast<object?>().SelectMany((item, i) => In(item, $"{path}[{i}]")),
        // Shapes hold shapes without end; what is worked out from them is numbers.
        _ when value.GetType().Namespace is { } space && space.StartsWith("Solidbody.Instrument", StringComparison.Ordinal) =>
            value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0).SelectMany(p => In(p.GetValue(value), $"{path}.{p.Name}")),
        _ => [],
    };
}
