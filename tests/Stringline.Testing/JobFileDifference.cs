using System.Collections;
using System.Reflection;
using Stringline.Law.Facts;

namespace Stringline.Testing;

/// <summary>
/// Compares two job files by every public property, lists item by item. Records compare their lists by identity, and a
/// comparison through the writer would not see what the writer leaves out; this one sees a property added tomorrow.
/// </summary>
public static class JobFileDifference
{
    /// <summary>Where the two first differ, and how; null where they are equal.</summary>
    public static string? Between(JobFile one, JobFile other) => Differ(one, other, "job");

    private static string? Differ(object? one, object? other, string path)
    {
        if (one is null || other is null)
            return one is null && other is null ? null : $"{path}: {one ?? "null"} and {other ?? "null"}";
        if (one is string || one.GetType().IsValueType)
            return one.Equals(other) ? null : $"{path}: {one} and {other}";
        if (one is IEnumerable ones && other is IEnumerable others)
            return DifferInItems([.. ones.Cast<object?>()], [.. others.Cast<object?>()], path);
        if (one.GetType() != other.GetType())
            return $"{path}: a {one.GetType().Name} and a {other.GetType().Name}";
        return one.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Select(property => Differ(property.GetValue(one), property.GetValue(other), $"{path}.{property.Name}"))
            .FirstOrDefault(difference => difference is not null);
    }

    private static string? DifferInItems(List<object?> ones, List<object?> others, string path) => ones.Count != others.Count
        ? $"{path}: {ones.Count} and {others.Count} items"
        : ones.Select((one, i) => Differ(one, others[i], $"{path}[{i}]")).FirstOrDefault(difference => difference is not null);
}
