using System.Reflection;
using System.Text.RegularExpressions;

namespace Stringline.Published;

/// <summary>That no case of the collection is missing or told twice.</summary>
public sealed partial class Completeness
{
    [Fact]
    public void Every_case_from_C_01_to_C_29_is_told_once_and_no_later_one_twice()
    {
        var told = typeof(CaseNote).Assembly.GetTypes()
            .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            .Select(m => CaseNumber().Match(m.Name))
            .Where(m => m.Success)
            .Select(m => m.Value)
            .Order(StringComparer.Ordinal)
            .ToArray();

        Assert.Equal([.. Enumerable.Range(1, 29).Select(n => $"C_{n:00}")], told.TakeWhile(n => string.CompareOrdinal(n, "C_29") <= 0));
        Assert.Equal(told.Distinct(), told);
    }

    [GeneratedRegex("^C_[0-9]{2}")]
    private static partial Regex CaseNumber();
}
