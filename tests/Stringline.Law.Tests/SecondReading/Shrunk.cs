using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>The smallest file on which two readers still part in the same way: facts are left out one by one.</summary>
internal static class Shrunk
{
    public static JobFile Of(JobFile job, LocalDate asOf, Disagreement parted)
    {
        var again = true;
        while (again)
        {
            again = false;
            foreach (var less in Less(job))
            {
                if (!StillParts(less, asOf, parted))
                    continue;
                job = less;
                again = true;
                break;
            }
        }

        return job;
    }

    private static bool StillParts(JobFile job, LocalDate asOf, Disagreement parted)
    {
        var still = false;
        Comparison.Of(parted.Seed, job, asOf, d => still |= d.Id == parted.Id && d.Kind == parted.Kind
            && d.Library == parted.Library && d.Checker[..4] == parted.Checker[..4]);
        return still;
    }

    private static IEnumerable<JobFile> Less(JobFile job)
    {
        for (var i = 0; i < job.Entries.Count; i++)
        {
            var left = job.Entries.Where((_, at) => at != i).Select((e, at) => e with { Index = at }).ToArray();
            yield return job with { Entries = left };
        }

        foreach (var party in job.Parties)
        {
            if (party.Id is not ("own" or "gc") && party.Id != job.Claimant.HiredBy)
                yield return job with { Parties = [.. job.Parties.Where(p => p != party)] };
            var plain = new Party { Id = party.Id, Capacity = party.Capacity, Name = party.Name };
            if (party != plain)
                yield return job with { Parties = [.. job.Parties.Select(p => p == party ? plain : p)] };
        }

        for (var i = 0; i < job.Entries.Count; i++)
        {
            foreach (var plain in Plainer(job.Entries[i]))
                yield return job with { Entries = [.. job.Entries.Select((e, at) => at == i ? plain : e)] };
        }

        foreach (var work in Plainer(job.Work))
            yield return job with { Work = work };
        if (job.Contract != new Contract())
            yield return job with { Contract = new Contract() };
    }

    private static IEnumerable<Entry> Plainer(Entry e)
    {
        if (e.On is DayFact.Between between)
            yield return e is Furnished w
                ? w with { On = DayFact.On(between.First), Until = DayFact.On(between.First) } : e with { On = DayFact.On(between.First) };
        if (e is Furnished f && f.Until != f.On)
            yield return f with { Until = f.On };
        if (e is ActionFiled a)
        {
            if (a.Enforces.Count > 0)
                yield return a with { Enforces = [] };
            if (a.Against.Count > 0)
                yield return a with { Against = [] };
            if (a.SmallClaims || a.Claim is not null)
                yield return a with { SmallClaims = false, Claim = null };
        }

        if (e is StopPaymentGiven s && (s.Bonded || s.Amount is not null || s.Manner is not null))
            yield return s with { Bonded = false, BondAmount = null, Amount = null, Manner = null };
        if (e is BondNoticeGiven b && b.Manner is not null)
            yield return b with { Manner = null };
        if (e is NoticeGiven n && n.Manner != Manner.CertifiedMail)
            yield return n with { Manner = Manner.CertifiedMail };
        if (e is OwnerRecorded { States: not null } o)
            yield return o with { States = null };
    }

    private static IEnumerable<Work> Plainer(Work work)
    {
        if (work.Use is not WorkUse.Commercial)
            yield return work with { Use = WorkUse.Commercial };
        if (work.PaymentBond is not null)
            yield return work with { PaymentBond = null };
        if (work.Permit is not null)
            yield return work with { Permit = null };
        if (work.Commenced is not null)
            yield return work with { Commenced = null };
        if (work.SeveralDirectContracts is not null)
            yield return work with { SeveralDirectContracts = null };
        if (work.SubjectToAcceptanceBy is not null)
            yield return work with { SubjectToAcceptanceBy = null };
        if (work.PublicTakesOver is not null)
            yield return work with { PublicTakesOver = null };
        if (work.Site.AlsoIn.Count > 0)
            yield return work with { Site = work.Site with { AlsoIn = [] } };
    }
}
