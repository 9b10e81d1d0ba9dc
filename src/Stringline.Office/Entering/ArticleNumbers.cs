using Stringline.Law.Facts;
using Stringline.Papers.Mailing;

namespace Stringline.Office.Entering;

/// <summary>
/// One article number for each addressee: each mailing has its own, so that what went to several is written as an entry for each number.
/// What went without a number, or under one for all, is one entry.
/// </summary>
internal static class ArticleNumbers
{
    /// <summary>The field of a number that stands for all addressees.</summary>
    public const string Field = "article";

    private const string To = "to";
    private const string How = "manner";

    private static readonly string[] Postal = [.. ((Manner[])[Manner.CertifiedMail, Manner.RegisteredMail,
        Manner.ExpressMail]).Select(JobFileWords.Word)];

    /// <summary>Whether a form asks for a number of each addressee.</summary>
    public static bool AreAskedBy(EntryForm form) => form.Fields.Any(asked => asked.Name == Field)
        && form.Fields.Any(asked => asked.Name == To);

    /// <summary>The field of one addressee's number.</summary>
    public static string Of(Party party) => $"{Field}.{party.Id}";

    /// <summary>What was typed, as one or several entries would have been; what is wrong with a number stands beside it.</summary>
    /// <param name="form">The form.</param>
    /// <param name="typed">What was typed.</param>
    /// <param name="job">The job, for its parties.</param>
    /// <param name="faults">Takes what is wrong.</param>
    public static IReadOnlyList<Typed> Split(EntryForm form, Typed typed, JobFile job, Faults faults)
    {
        if (!AreAskedBy(form))
            return [typed];
        Check(Field, typed, faults);
        var groups = new List<(string Number, List<string> To)>();
        foreach (var party in job.Parties)
        {
            var field = Of(party);
            var number = typed[field];
            var isTicked = typed.Several(To).Contains(party.Id);
            if (number.Length > 0 && !isTicked)
                faults.Add(field, $"{party.Name} is not checked above: check it, or clear its number.");
            else if (number.Length > 0)
                Check(field, typed, faults);
            if (!isTicked)
                continue;
            if (groups.Find(group => group.Number == number) is { To: { } same })
                same.Add(party.Id);
            else
                groups.Add((number, [party.Id]));
        }

        return groups.TrueForAll(group => group.Number.Length == 0) ? [typed]
            : [.. groups.Select(group => typed.With((To, group.To), (Field, [group.Number])))];
    }

    private static void Check(string field, Typed typed, Faults faults)
    {
        if (typed[field] is { Length: > 0 } number && Postal.Contains(typed[How]) && ArticleNumber.Fault(number) is { } fault)
            faults.Add(field, $"“{number}” is not an article number: {fault}");
    }
}
