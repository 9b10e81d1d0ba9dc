using Stringline.Office.Entering;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Web.Entering;

/// <summary>
/// Where a question of the assessment is answered: questions point to the field of the job file, or the kind of entry, that would answer
/// them.
/// </summary>
internal static class QuestionLinks
{
    /// <summary>The link; null where the question points to no field and no entry.</summary>
    public static (string Words, string Address)? Of(long job, Question question)
    {
        if (question.Corrects is { } entry)
            return ("Correct what is entered", EntryLinks.Correct(job, entry));
        var fields =
            question.AnsweredBy.OfType<HeadField>().Select(field => HeadForms.PartOf(field.Path)).OfType<(HeadPart Part, string Field)>();
        foreach (var (part, field) in fields)
            return ("Answer it in the file", $"/job/{job}/file?part={part.Word}#{field}");
        var kind = question.AnsweredBy.OfType<EntryField>().FirstOrDefault()?.Kind
            ?? question.AnsweredBy.Select(KindOf).FirstOrDefault(named => named is not null);
        return kind is null ? null : ("Enter it: " + kind.Title, $"/job/{job}/enter?what={kind.Name}");
    }

    private static EntryKind? KindOf(IPointer pointer) => pointer switch
    {
        EntryKind kind => kind,
        EntrySaying { Kind: var kind } => kind,
        _ => null,
    };
}
