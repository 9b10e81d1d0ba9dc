using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>
/// The license at all times during performance (Bus. &amp; Prof. Code § 7031), and what puts one back (§§ 7125.1, 7141.5).
/// </summary>
internal static class LicenseReading
{
    public static Answer Finding(World w)
    {
        var m = w.Matter;
        if (m.Work.Length == 0)
            return Answer.Free;
        var license = m.Job.Claimant.License;
        var contractor = m.Role is ClaimantRole.DirectContractor or ClaimantRole.Subcontractor;
        if (license is null)
            return contractor ? Answer.Doubt : new Answer(May.Kept);
        if (!license.Required)
            return contractor ? Answer.Doubt : new Answer(May.Kept);
        if (license.Never)
            return Answer.Lost;
        if (license.Active.Count == 0)
            return Answer.Doubt;
        if (license.SameEntity == false || license.FitsWork == false || license.InsuranceOnFile == false)
            return new Answer(May.Lost);
        var first = FirstAndLast.First(w)!.Value;
        var last = FirstAndLast.Last(w)!.Value;
        var ceased = FirstAndLast.Ceased(w)!.Value;
        if (IsCovered(w, license, first, ceased))
            return Answer.Kept;

        // What was done between the last entry of work and its end is not told.
        if (IsCovered(w, license, first, last))
            return Answer.Doubt;

        // § 7031(e): substantial compliance needs a license before the performance, and good faith.
        return HadBefore(license, first) && license.GoodFaith != false ? Answer.Doubt : Answer.Lost;
    }

    private static bool HadBefore(License license, LocalDate first) => license.Active.Any(s => s.From <= first);

    private static bool IsCovered(World w, License license, LocalDate from, LocalDate to)
    {
        var day = from;
        while (day <= to)
        {
            LicenseSpan? holds = null;
            for (var i = 0; i < license.Active.Count; i++)
            {
                var span = license.Active[i];
                if (span.From <= day && (span.To is not { } end || end >= day) && Counts(w, span, i))
                    holds = span;
            }

            if (holds is null)
                return false;
            if (holds.To is not { } until)
                return true;
            day = until.PlusDays(1);
        }

        return true;
    }

    // A renewal within 90 days of the expiration, by its delivery or postmark (§ 7141.5); a certificate received within 90 days after its
    // day, or late for circumstances beyond control (§ 7125.1). For another cause, or none told, either way.
    private static bool Counts(World w, LicenseSpan span, int which)
    {
        if (span.Reinstated is not { } received)
            return true;
        switch (span.Cause)
        {
            case LapseCause.Renewal:
                // One sent after it was received contradicts itself.
                return w.InTime(span.Sent ?? received, span.From.PlusDays(89), "renewed in time", which)
                    || (!(span.Sent <= received) && w.Either("sent on another day", which));
            case LapseCause.Insurance:
                return w.InTime(received, span.From.PlusDays(90), "certificate in time", which)
                    || w.Told(span.BeyondControl, "beyond its control", which);
            default:
                return w.Either("put back for another cause", which);
        }
    }
}
