using System.Collections;
using System.Text;
using Stringline.Law.Counting;
using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>A job file in short, without what it does not say.</summary>
internal static class Told
{
    public static string Of(JobFile job)
    {
        var text = new StringBuilder();
        text.Append("  ").Append(job.Work.Kind).Append(' ').AppendLine(Fields(job.Work, "Kind"));
        text.Append("  claimant ").AppendLine(Fields(job.Claimant, "Name"));
        text.Append("  contract ").AppendLine(Fields(job.Contract));
        foreach (var party in job.Parties)
            text.Append("  party ").AppendLine(Fields(party, "Name", "Address"));
        foreach (var entry in job.Entries)
            text.Append("  ").Append(entry.GetType().Name).Append(' ').AppendLine(Fields(entry, "Index", "Path"));
        return text.ToString();
    }

    private static string Fields(object said, params string[] without)
    {
        var words = new List<string>();
        foreach (var field in said.GetType().GetProperties())
        {
            if (field.Name == "EqualityContract" || without.Contains(field.Name))
                continue;
            var value = field.PropertyType == typeof(bool?) ? field.GetValue(said)?.ToString() : Word(field.GetValue(said));
            if (value is not null)
                words.Add($"{field.Name}={value}");
        }

        return string.Join(' ', words);
    }

    private static string? Word(object? value) => value switch
    {
        null or false => null,
        string text => text,
        LocalDate day => LawText.IsoDay(day),
        DayFact.Exact(var day) => LawText.IsoDay(day),
        DayFact.Between between => $"{LawText.IsoDay(between.First)}..{LawText.IsoDay(between.Last)}",
        DayFact => "?",
        IEnumerable many => many.Cast<object>().Any() ? "[" + string.Join(", ", many.Cast<object>().Select(Word)) + "]" : null,
        _ when value.GetType() is { IsClass: true } => "{" + Fields(value) + "}",
        _ => value.ToString(),
    };
}
