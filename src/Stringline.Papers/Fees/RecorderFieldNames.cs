using System.Text.Json;
using Stringline.Law.Recording;

namespace Stringline.Papers.Fees;

/// <summary>The fields as the table of recorders writes them.</summary>
internal static class RecorderFieldNames
{
    private static readonly string[] Written = [.. Enum.GetNames<RecorderField>().Select(JsonNamingPolicy.SnakeCaseLower.ConvertName)];

    /// <summary>All names, as written.</summary>
    public static IReadOnlyList<string> All => Written;

    /// <summary>The field of that name; null where there is none.</summary>
    public static RecorderField? Find(string name) => Array.IndexOf(Written, name) is >= 0 and var at ? (RecorderField)at : null;

    /// <summary>The name in the table: <c>record_until</c>.</summary>
    public static string Of(RecorderField field) => Written[(int)field];
}
