using Stringline.Office.Entering;
using System.Text.RegularExpressions;
using Stringline.Law.Reasoning;

namespace Stringline.Web.Entering;

/// <summary>Where a question of the assessment is answered: questions name the field of the job file, or the kind of entry, that would answer them.</summary>
internal static partial class QuestionLinks
{
    /// <summary>The link; null where the question names no field and no entry.</summary>
    public static (string Words, string Address)? Of(long job, Question question)
    {
        if (question.Corrects is { } entry)
            return ("Correct what is entered", EntryLinks.Correct(job, entry));
        foreach (Match field in Path().Matches(question.Text))
        {
            if (HeadForms.PartOf(field.Value) is { } found)
                return ("Answer it in the file", $"/job/{job}/file?part={found.Part.Word}#{found.Field}");
        }

        foreach (Match named in EntryField().Matches(question.Text))
        {
            if (EntryForms.Find(named.Groups["kind"].Value) is { } form && form.Fields.Any(asked => asked.Name == named.Groups["field"].Value))
                return ("Enter it: " + form.Title, $"/job/{job}/enter?what={form.What}");
        }

        foreach (Match word in Kind().Matches(question.Text))
        {
            var what = word.Value.Split('.')[0];
            if (EntryForms.Find(what) is { } form && form != EntryForms.TakeBack && (what.Contains('-', StringComparison.Ordinal) || question.Text.Contains("add " + what, StringComparison.OrdinalIgnoreCase)))
                return ("Enter it: " + form.Title, $"/job/{job}/enter?what={form.What}");
        }

        return null;
    }

    [GeneratedRegex(@"\b(?:work|claimant|contract|parties)\.[a-zA-Z]+(?:\.[a-zA-Z]+)*")]
    private static partial Regex Path();

    [GeneratedRegex(@"\b(?<kind>[a-z]+(?:-[a-z]+)*)\.(?<field>[a-zA-Z]+)")]
    private static partial Regex EntryField();

    [GeneratedRegex(@"\b[a-z]+(?:-[a-z]+)*\b")]
    private static partial Regex Kind();
}
