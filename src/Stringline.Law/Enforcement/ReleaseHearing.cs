using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Enforcement;

/// <summary>A petition for a release order that was served on the claimant (Civ. Code §§ 8486, 8488).</summary>
internal static class ReleaseHearing
{
    /// <summary>The finding <c>release.hearing</c>, where a petition was served.</summary>
    public static Finding? Finding(FactsAsOf facts, OpenDays calendar)
    {
        var petitions = facts.All<ReleasePetitionServed>();
        return petitions.Count > 0 && DaySpan.Of(petitions[^1].On) is { } on ? Hearing(facts, petitions[^1], on, calendar) : null;
    }

    /// <summary>
    /// Answered before the hearing, at which the claimant proves that the lien is valid. Served at least 15 days before, by mail complete
    /// on the fifth day; where the day of the hearing is unknown it is planned on the earliest that this allows.
    /// </summary>
    [Rule("Civ. Code § 8486(b)")]
    [Rule("Civ. Code § 8486(c)")]
    [Rule("Civ. Code § 8488(a)")]
    private static Finding Hearing(FactsAsOf facts, ReleasePetitionServed petition, DaySpan on, OpenDays calendar)
    {
        var byMail = facts.Numbers.On(Number.PetitionByMail, on.Earliest);
        var served = IsByMail(petition.Manner) ? on.LastDay(facts.Numbers, Number.PetitionByMail) : on;
        var notice = facts.Numbers.On(Number.ServePetition, served.Earliest);
        var earliest = notice.LastDay(served.Earliest);
        var last = (petition.Hearing ?? earliest).PlusDays(-1);
        Reading[] readings =
            [Deadline.Own(petition.Hearing is null
                ? (Sentence)$"the day before the earliest hearing" : $"the day before the hearing", last, calendar)];
        var ended = false;
        foreach (var end in facts.All<ActionEnded>())
            ended |= end.On.Latest >= on.Earliest;
        var standing = ended ? Standing.Done : Deadline.StandingOf(facts.AsOf, readings, null, endFirm: false);
        return Deadline.Of(standing, readings, calendar, endKnown: petition.Hearing is not null)
            .Finding("release.hearing", "Answer the petition for release",
            () =>
            [
                Reason.Of("Civ. Code § 8488(a)", $"A petition for release was served {on}. Answer it before the hearing: the claimant has "
                    + $"the burden of proving that the lien is valid, and the prevailing party gets its attorney's fees "
                    + $"(Civ. Code § 8488(c)). Ask the court by when papers are filed.", [petition]),
                petition.Hearing is { } hearing && hearing < earliest
                    ? Reason.Of("Civ. Code § 8486(b)", $"Service was complete on {served.Earliest}, less than {notice} before the hearing "
                        + $"on {hearing}: object to it; the petitioner has the burden of proving service in time.", [petition])
                    : Reason.Of("Civ. Code § 8486(b)", $"The petition is served at least {notice} before the hearing; by mail service is "
                        + $"complete on the {byMail.Ordinal} day (Civ. Code § 8486(c)).", [petition]),
            ],
            () =>
            [
                .. petition.Hearing is null
                    ? [new Question($"On which day is the petition for release "
                        + $"heard?{OwnerKinds.ReleasePetitionServed.At("hearing"):aside}") { Corrects = petition }]
                        : Array.Empty<Question>(),
                .. petition.Manner is null
                    ? [new Question($"How was the petition for release served?{OwnerKinds.ReleasePetitionServed.At("manner"):aside}",
                        byMail.Count) { Corrects = petition }] : Array.Empty<Question>(),
            ]);
    }

    private static bool IsByMail(Manner? manner) => manner switch
    {
        Manner.CertifiedMail or Manner.RegisteredMail or Manner.ExpressMail or Manner.CertificateOfMailing or Manner.FirstClassMail => true,
        null or Manner.Personal or Manner.OvernightCarrier or Manner.Substituted or Manner.Email or Manner.Fax or Manner.Other => false,
        _ => throw new InvalidOperationException($"No such manner: {manner}."),
    };
}
