using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Plan;

/// <summary>The steps before a claim of lien is recorded, counted back from its act-by day over open days.</summary>
public static class BackPlan
{
    /// <summary>
    /// The findings <c>back-plan.*</c>; none once the claim is recorded or its day is not known. Each is the last day for its step on
    /// the road over the counter; <c>back-plan.mail-to-recorder</c> is the other road.
    /// </summary>
    /// <param name="claim">The last day to record the claim.</param>
    /// <param name="asOf">The day of asking.</param>
    /// <param name="settings">What to reckon with.</param>
    /// <param name="calendar">The calendar.</param>
    [Rule("Civ. Code § 8416(a)(7)", Sure = Sure.OurReading)]
    public static IReadOnlyList<Finding> Findings(in Deadline claim, LocalDate asOf, PlanSettings settings, OpenDays calendar)
    {
        if (claim is not { ActBy: { } actBy, Standing: Standing.Open or Standing.InDoubt or Standing.NotYet })
            return [];
        var counter = OpenDaysBefore(actBy, settings.ReserveDays, calendar);
        var mail = OpenDaysBefore(counter, 1, calendar);
        var sign = OpenDaysBefore(mail, 1, calendar);
        var amount = OpenDaysBefore(sign, 1, calendar);
        var index = OpenDaysBefore(amount, 1, calendar);
        var mailed = calendar.LastOpenDayOnOrBefore(actBy.PlusDays(-settings.MailBacklogDays));
        return
        [
            Step("back-plan.index-check", "Search the county index once more", index, asOf,
                () => [Reason.Of("Civ. Code § 8414(b)(2)", $"A notice of completion recorded unseen would bring the last day forward.")]),
            Step("back-plan.amount", "Settle the amount", amount, asOf,
                () => [Reason.Of("Civ. Code § 8416(a)(1)", $"The demand after all just credits and offsets.")]),
            Step("back-plan.sign", "Sign and verify the claim", sign, asOf,
                () => [Reason.Of("Civ. Code § 8416(a)", $"The claim is signed and verified by the claimant.")]),
            Step("back-plan.mail-copy", "Mail the copy to the owner and sign the proof of service", mail, asOf,
                () => [Reason.Of("Civ. Code § 8416(c)", $"The copy goes first, since the completed affidavit of service is part of the "
                    + $"claim (Civ. Code § 8416(a)(7)); mail is complete on deposit (Civ. Code § 8416(d)).")]),
            Step("back-plan.counter", "Hand the papers in at the recorder's counter", counter, asOf,
                () => [Reason.Of("Gov. Code § 27201",
                    $"During office hours, {settings.ReserveDays} open {(settings.ReserveDays == 1 ? "day" : "days")} before the act-by "
                        + $"day {actBy}, so that a refusal can be mended.")]),
            Step("back-plan.mail-to-recorder", "Or mail the papers to the recorder", mailed, asOf,
                () => [Reason.Of("Gov. Code § 27201",
                    $"What counts is the recording, not the postmark; {settings.MailBacklogDays} days are reckoned for the mail and the "
                        + $"office's backlog (common practice, no source).")]),
        ];
    }

    private static Finding Step(string id, string title, LocalDate day, LocalDate asOf, Func<IReadOnlyList<Reason>> explain)
    {
        var reading = new Reading($"counted back from the act-by day", day);
        return new Finding
        {
            Id = id,
            Title = title,
            Standing = asOf <= day ? Standing.Open : Standing.InDoubt,
            IsDeadline = true,
            ActBy = day,
            Readings = [reading],
            Band = new Band(reading, reading),
            Explain = explain,
        };
    }

    /// <summary>The open day that lies a number of open days before a day.</summary>
    public static LocalDate OpenDaysBefore(LocalDate day, int openDays, OpenDays calendar)
    {
        var found = calendar.LastOpenDayOnOrBefore(day);
        for (var i = 0; i < openDays; i++)
            found = calendar.LastOpenDayOnOrBefore(found.PlusDays(-1));
        return found;
    }
}
