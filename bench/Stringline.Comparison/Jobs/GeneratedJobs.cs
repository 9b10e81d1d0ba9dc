using Stringline.Law.Facts;

namespace Stringline.Comparison.Jobs;

/// <summary>
/// Private jobs of ten entries in which the six rules are plain: every day exact, completion uncontested, work ended by completion,
/// nothing that is in time or late by a roll alone. All else is free: whether the notice is in time, who the claimant is, whether
/// the owner recorded a notice of completion, in time or not, and told the claimant of it, in time or not.
/// </summary>
internal static class GeneratedJobs
{
    /// <summary>The same jobs for the same seed.</summary>
    public static ComparedJob[] Of(int count, int seed)
    {
        var random = new Random(seed);
        return [.. Enumerable.Range(1, count).Select(number => File(Plain(number, random)))];
    }

    private static PlainJob Plain(int number, Random random)
    {
        var first = Serial.Of(new LocalDate(2024, 1, 1)) + random.Next(0, 3 * 365);
        var ended = first + random.Next(30, 200);
        var completed = ended + random.Next(0, 60);
        var ownerRecorded = random.Next(4) switch
        {
            0 => 0,
            // Later than any roll of the fifteenth day: no effect.
            1 => completed + random.Next(22, 40),
            _ => completed + random.Next(0, 16),
        };
        var copyMailed = ownerRecorded == 0 ? 0 : ownerRecorded + (random.Next(3) == 0 ? random.Next(17, 30) : random.Next(0, 11));
        var claim = completed + random.Next(1, 30);
        return new PlainJob
        {
            Number = number,
            Direct = random.Next(3) == 0,
            FirstFurnished = first,
            NoticeGiven = first + random.Next(0, 30),
            Ended = ended,
            Completed = completed,
            OwnerRecorded = ownerRecorded,
            CopyMailed = copyMailed,
            ClaimRecorded = claim,
            ActionFiled = claim + random.Next(3, 85),
        };
    }

    private static ComparedJob File(PlainJob job)
    {
        var entries = new List<Entry>
        {
            new Furnished { Index = 0, On = On(job.FirstFurnished), Until = On(job.FirstFurnished), Amount = 1_200m, Ref = "INV-1" },
            new NoticeGiven { Index = 1, On = On(job.NoticeGiven), Notice = NoticeKind.Preliminary, Manner = Manner.CertifiedMail,
                To = ["owner", "direct", "bank"] },
            new Furnished { Index = 2, On = On(job.Ended), Until = On(job.Ended), Amount = 900m, Ref = "INV-2" },
            new Paid { Index = 3, On = On(job.Ended), Amount = 500m },
            new FurnishingEnded { Index = 4, On = On(job.Ended) },
            new Completed { Index = 5, On = On(job.Completed), By = CompletionTheory.Actual },
            new ClaimRecorded { Index = 6, On = On(job.ClaimRecorded), Amount = 1_600m },
            new ActionFiled { Index = 7, On = On(job.ActionFiled) },
        };
        if (job.OwnerRecorded != 0)
        {
            entries.Add(new OwnerRecorded { Index = 8, On = On(job.OwnerRecorded), Notice = OwnerNotice.Completion,
                States = Serial.Day(job.Completed) });
            entries.Add(new OwnerToldUs { Index = 9, On = On(job.CopyMailed + 2), Notice = OwnerNotice.Completion,
                Mailed = Serial.Day(job.CopyMailed) });
        }
        else
        {
            entries.Add(new Change { Index = 8, On = On(job.FirstFurnished + 10), Amount = 350m, Agreed = true });
            entries.Add(new Paid { Index = 9, On = On(job.Completed), Amount = 100m });
        }

        var latest = Math.Max(job.ActionFiled, Math.Max(job.OwnerRecorded, job.CopyMailed + 2));
        return new ComparedJob(
            new JobFile
            {
                Name = $"Job {job.Number}",
                Work = new Work { Kind = WorkKind.Private, Use = WorkUse.Commercial, Site = new Site { County = "Yolo" } },
                Claimant = new Claimant
                {
                    Name = "Marlpit Lumber Co.",
                    Role = job.Direct ? ClaimantRole.DirectContractor : ClaimantRole.Supplier,
                    HiredBy = job.Direct ? "owner" : "direct",
                },
                Parties =
                [
                    new Party { Id = "owner", Capacity = PartyCapacity.Owner, Name = "Alder Court LLC" },
                    new Party { Id = "direct", Capacity = PartyCapacity.DirectContractor, Name = "Brushline Builders Inc." },
                    // A direct contractor owes notice to a construction lender only (Civ. Code § 8200(e)(2)).
                    new Party { Id = "bank", Capacity = PartyCapacity.ConstructionLender, Name = "Quay Street Bank" },
                ],
                Contract = new Contract { Price = 84_250m, Written = true },
                Entries = entries,
            },
            Serial.Day(latest + 1),
            job);
    }

    private static DayFact On(int serial) => DayFact.On(Serial.Day(serial));
}
