using System.Globalization;

namespace Stringline.Store.Chain;

/// <summary>
/// Compares a journal with a seal that was made earlier. What was added since is no fault; what was sealed must stand as it was.
/// </summary>
internal sealed class SealComparison(Seal seal)
{
    private readonly List<BrokenLink> broken = [];
    private readonly SealHash hash = new();
    private readonly string when = seal.At.ToString("uuuu'-'MM'-'dd HH':'mm':'ss 'UTC'", CultureInfo.InvariantCulture);
    private long seen;
    private long sealedChanges;
    private long jobsSince;
    private long changesSince;

    public SealReport Against(IEnumerable<SealRows> jobs)
    {
        foreach (var job in jobs)
        {
            while (++seen < job.Id)
                Missing(seen);
            if (seen <= seal.Jobs)
                Sealed(job, seal.Each?[(int)seen - 1]);
            else
                Since(job);
        }

        while (seen < seal.Jobs)
            Missing(++seen);
        if (seal.Each is null)
            Line();
        else
            hash.Value();
        return new SealReport(broken, jobsSince, changesSince);
    }

    private void Missing(long id)
    {
        if (id <= seal.Jobs)
            Tell(seal.Each?[(int)id - 1].Key, null,
                string.Create(CultureInfo.InvariantCulture,
                    $"job number {id}, which was there when the seal of {when} was made, is missing"));
    }

    private void Sealed(SealRows job, SealedJob? then)
    {
        var by = job.By(seal.At);
        hash.Add(job.After(by));
        sealedChanges += by;
        changesSince += job.Rows.Count - by;
        if (then is null)
            return;
        if (then.Key != job.Key)
            Tell(then.Key, null,
                string.Create(CultureInfo.InvariantCulture, $"job number {job.Id} had this key when the seal of {when} was made, and has "
                    + $"the key \"{job.Key}\" now"));
        changesSince += by - then.Sequence;
        for (var sequence = 1; sequence <= then.Sequence; sequence++)
        {
            if (sequence > job.Rows.Count)
            {
                Tell(then.Key, sequence, string.Create(
                    CultureInfo.InvariantCulture,
                    $"the change, which was there when the seal of {when} was made, is missing, "
                    + $"and all after it; the job had {then.Sequence}"));
                return;
            }

            var stands = job.Rows[sequence - 1].Hash;
            if (SealedJob.MarkOf(stands) == then.Mark(sequence) && (sequence < then.Sequence || stands == then.Hash))
                continue;
            Tell(then.Key, sequence,
                $"the change is not the one that stood there when the seal of {when} was made: history was rewritten from here on");
            return;
        }

        Later(job, (int)then.Sequence);
    }

    private void Since(SealRows job)
    {
        jobsSince++;
        changesSince += job.Rows.Count;
        Later(job, 0);
    }

    // Whatever is recorded after a seal has a later moment, whatever the clock says.
    private void Later(SealRows job, int after)
    {
        foreach (var row in job.Rows.Skip(after))
        {
            if (row.At > RawRow.Microseconds(seal.At))
                continue;
            var said = RawRow.Moment(Math.Clamp(row.At, 0, RawRow.LastMoment))
                .ToString("uuuu'-'MM'-'dd HH':'mm", CultureInfo.InvariantCulture);
            Tell(job.Key, row.Sequence, $"the change was not there when the seal of {when} was made, but says that it was recorded "
                + $"before, on {said} UTC: the clock was set back, or the change was slipped in");
            return;
        }
    }

    private void Line()
    {
        var stands = hash.Value().ToString()[..Seal.HeadLength];
        if (sealedChanges < seal.Changes)
            Tell(null, null,
                string.Create(CultureInfo.InvariantCulture, $"{seal.Changes} changes were there when the seal of {when} was made; of "
                    + $"them {seal.Changes - sealedChanges} are missing"));
        else if (sealedChanges > seal.Changes)
            Tell(null, null, string.Create(
                CultureInfo.InvariantCulture,
                $"{seal.Changes} changes were there when the seal of {when} was made; now {sealedChanges} say that they were recorded "
                + $"before it: {sealedChanges - seal.Changes} were slipped in, or the clock was set back"));
        else if (stands != seal.Head && broken.Count == 0)
            Tell(null, null, $"history before the seal of {when} was rewritten: over what stands now it would be {stands}, and not "
                + $"{seal.Head}; the file of that seal says from which change of which job on");
    }

    private void Tell(string? job, long? sequence, string found)
    {
        if (broken.Count < CheckReport.MostTold)
            broken.Add(new BrokenLink(job, sequence, found));
    }
}
