using Stringline.Law.Bankruptcy;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>
/// A bankruptcy of one against whom the action on a stop payment notice is brought: on private works the holder of the money
/// (Civ. Code § 8550), on public works the public entity and the direct contractor both (§ 9502).
/// </summary>
internal static class HoldersInStay
{
    /// <summary>The stay of one who is to be sued; null where there is none in the time to sue.</summary>
    public static StayedSuit? Of(FactsAsOf facts, IReadOnlyList<StopPaymentAction.Window> windows, IReadOnlyList<Reading> readings)
    {
        if (windows.Count == 0 || !AnyBankrupt(facts))
            return null;
        var from = windows[0].On.Earliest;
        foreach (var window in windows)
            from = LocalDate.Min(from, window.On.Earliest);
        return StayedSuit.Of(facts, Sued(facts, windows), from, readings);
    }

    private static bool AnyBankrupt(FactsAsOf facts)
    {
        foreach (var party in facts.Job.Parties)
        {
            if (party.BankruptSince is not null)
                return true;
        }

        return false;
    }

    private static List<Party> Sued(FactsAsOf facts, IReadOnlyList<StopPaymentAction.Window> windows)
    {
        if (facts.Job.Work.Kind == WorkKind.Public)
            return [.. facts.Job.In(PartyCapacity.PublicEntity), .. facts.Job.In(PartyCapacity.DirectContractor)];
        var sued = new List<Party>();
        foreach (var window in windows)
        {
            foreach (var holder in window.To)
                sued.AddRange(holder.IsLender ? holder.Through : facts.Job.In(PartyCapacity.Owner));
        }

        return sued;
    }

    /// <summary>Whether all who are to be sued are in bankruptcy on the day of asking, so that there is nobody to sue.</summary>
    public static bool IsWhole(FactsAsOf facts, IReadOnlyList<StopPaymentAction.Window> windows)
    {
        foreach (var party in Sued(facts, windows))
        {
            if (Stay.OfParty(facts, party, facts.AsOf, facts.AsOf) is null)
                return false;
        }

        return true;
    }

    /// <summary>What is said of it, and of a bankruptcy of the contractor, whose money it is that the holder withholds.</summary>
    [Rule("11 U.S.C. § 362(a)", Sure = Sure.FromMemory)]
    public static IEnumerable<Reason> Why(FactsAsOf facts, StayedSuit? stay, Standing standing,
        IReadOnlyList<StopPaymentAction.Window> windows)
    {
        if (stay is not null && standing != Standing.Done)
            yield return stay.Why;
        if (windows.Count > 0 && facts.Job.Work.Kind == WorkKind.Private
            && Stay.Of(facts, PartyCapacity.DirectContractor, windows[0].On.Earliest, facts.AsOf) is { } contractors)
            yield return Reason.Of("11 U.S.C. § 362(a)",
                $"{contractors.Debtor.Name} is or was in bankruptcy ({contractors.Since}): leave it out of the suit while the stay lasts; "
                    + $"the action is against the holder of the money. Whether the money withheld belongs to its estate, so that the stay "
                    + $"reaches the holder too, is open (from memory): have counsel look.");
    }

    /// <summary>Asks for a bankruptcy where the action would be lost.</summary>
    public static IEnumerable<Question> Questions(StayedSuit? stay, Standing standing, StopPaymentLaw law)
    {
        if (stay is null && standing == Standing.Lost)
            yield return StayedSuit.Ask(ReferenceEquals(law, StopPaymentLaw.Public) ? "the direct contractor" : "the holder of the money");
    }
}
