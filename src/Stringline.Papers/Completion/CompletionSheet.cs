using System.Text.RegularExpressions;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Completion;

/// <summary>What the sheet of a notice of completion says of the day, of who signs, and of the copies after recording.</summary>
internal static partial class CompletionSheet
{
    private const int Shown = 4;

    /// <summary>
    /// The other days of completion that the file leaves open, and what the notice is worth on each: the assessment has them, and the
    /// owner's time with each (Civ. Code § 8182(a), (d)).
    /// </summary>
    /// <param name="matter">The matter.</param>
    /// <param name="completed">The day that the notice states.</param>
    public static IEnumerable<string> OtherDays(Matter matter, LocalDate completed)
    {
        var others = (matter.Assessment.Find("completion.day")?.Readings ?? [])
            .Where(r => r.Day != completed).DistinctBy(r => r.Day).ToList();
        if (others.Count == 0)
            yield break;
        var words = others.Take(Shown).Select(r => $"{Day(r.Day)} ({Shortened(LawForReaders.Of(r), 90)}): {Worth(matter, r.Day)}");
        yield return $"The notice states {Day(completed)}, but the file leaves open whether the work was completed on another day. "
            + $"{string.Join("; ", words)}{(others.Count > Shown ? $"; and {others.Count - Shown} more, see the job’s assessment" : "")}.";
    }

    private static string Worth(Matter matter, LocalDate day)
    {
        var time = matter.Assessment.TimeToRecordCompletion(day);
        return day > matter.AsOf ? "recorded before that day, the notice would be void"
            : matter.AsOf > time.Latest ? $"the time to record ended on {Day(time.Last)}, and the notice would be void"
            : matter.AsOf <= time.PlanOn ? $"record by {Day(time.PlanOn)}, or the notice would be void"
            : $"the time to record was to end on {Day(time.Last)}, and that one may still record today is an argument only";
    }

    /// <summary>
    /// What the claimant's file has by repute, or does not know: the owner, who swears to it of own knowledge, confirms it first.
    /// </summary>
    /// <param name="matter">The matter.</param>
    public static IEnumerable<string> ToConfirm(Matter matter)
    {
        List<string> unsure =
        [
            .. matter.Job.Parties
                .Where(p => p is { Reputed: true, Capacity: PartyCapacity.DirectContractor or PartyCapacity.ConstructionLender })
                .Select(p => $"that {OneLine(p.Name)} is the {CapacityWords.Of(p with { Reputed = false })}"),
            .. matter.In(PartyCapacity.ConstructionLender).Count == 0 ? ["that there is no construction lender"] : Array.Empty<string>(),
        ];
        if (unsure.Count > 0)
        {
            yield return $"Before signing, {(matter.Facts.SeveralOwners ? "an owner" : "the owner")} confirms {string.Join("; ", unsure)}: "
                + "this job’s file is not sure of it, and the notice is sworn to. If it is otherwise, correct the file and make the "
                + "notice again.";
        }
    }

    /// <summary>That owners of separate units need a notice each, which this one is not (Civ. Code § 8182(b), (e)).</summary>
    /// <param name="matter">The matter.</param>
    public static IEnumerable<string> OneForEachUnit(Matter matter)
    {
        if (matter.In(PartyCapacity.Owner).Count is > 1 and var owners)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"This is one notice, and the file names {owners} owners. One who "
                + $"owns a unit alone signs for that unit only: where they own by unit, make one notice for each unit, with that owner "
                + $"alone, and bring a check for each. The check here is for this one notice (§ 8182(b), (e)).");
        }
    }

    /// <summary>Who signs: a co-owner may for all, but those who own apart are none (Civ. Code § 8182(b), (e)).</summary>
    public static string WhoSigns(Matter matter) => matter.In(PartyCapacity.Owner) switch
    {
        { Count: > 1 } => "The owners sign and verify in ink. One may sign for all only where they own the property together as cotenants "
            + "(§ 8182(b), (e)).",
        _ when matter.Facts.SeveralOwners => "Either of the co-owners signs and verifies in ink (§ 8182(b), (e)).",
        _ => "The owner signs and verifies in ink (§ 8182(b)).",
    };

    /// <summary>The copies after recording: to whom by the file, and how (Civ. Code §§ 8106, 8110, 8190).</summary>
    public static IEnumerable<string> Copies(Matter matter)
    {
        yield return $"Within {matter.ByLaw(Number.OwnersCopy)} after recording give a copy to the direct contractor and to each claimant "
            + $"who gave the owner "
            + "preliminary notice, by hand, or by registered, certified or express mail, or overnight by an express service carrier "
            + "(§§ 8190(a), (b), "
            + "8106, 8110). The notice does not shorten the time of anyone who is not given a copy in time (§ 8190(c))."
            + (OwnerMayLiveThere(matter) ? " An owner who lives there, in a building of up to four units, need not (§ 8190(d))." : "");
        if (Known(matter).ToList() is { Count: > 0 } known)
            yield return $"By this file copies go to: {string.Join("; ", known)}. "
                + "Add every other claimant from whom the owner has a preliminary notice.";
    }

    private static IEnumerable<string> Known(Matter matter)
    {
        foreach (var party in matter.In(PartyCapacity.DirectContractor))
            yield return $"{OneLine(party.Name)}, direct contractor{At(matter.AddressOf(party))}";
        var isDirect = matter.Job.Claimant.Role == ClaimantRole.DirectContractor;
        var owners = matter.In(PartyCapacity.Owner).Select(o => o.Id).ToHashSet(StringComparer.Ordinal);
        if (matter.Facts.Claimant is { } claimant && (isDirect || matter.Known.PreliminaryNotices.Any(n => n.To.Any(owners.Contains))))
            yield return $"{claimant}, {(isDirect ? "direct contractor" : "who gave preliminary notice")}{At(matter.Facts.Address)}";
    }

    private static string At(string? address) => address is null ? "" : $", {OneLine(address)}";

    // Only what may be somebody's residence of four units or fewer.
    private static bool OwnerMayLiveThere(Matter matter) => matter.Job.Work.Use switch
    {
        WorkUse.OwnerOccupiedOneToFour => true,
        null => !(matter.Job.Work.ResidentialStructures > 1) && !(matter.Job.Work.Units > 4)
            && matter.In(PartyCapacity.Owner).Any(IsPerson),
        _ => false,
    };

    private static bool IsPerson(Party owner) => owner.NaturalPerson ?? (owner.HoldsTitleAs?.Form switch
    {
        TitleForm.Individual or TitleForm.JointTenants or TitleForm.Trust => true,
        null => !Firm().IsMatch(owner.Name),
        _ => false,
    });

    [GeneratedRegex(@"\b(?:LLC|L\.L\.C\.|Inc|Corp|Corporation|Company|LP|L\.P\.|LLP|Ltd|Partners|Partnership|Association|Bank)\b",
        RegexOptions.IgnoreCase)]
    private static partial Regex Firm();
}
