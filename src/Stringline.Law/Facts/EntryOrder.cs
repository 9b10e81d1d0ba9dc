using System.Globalization;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Facts;

/// <summary>
/// The order in which entries are weighed: unknown days first, then by day. Ties are broken by what an entry says and never by its
/// place in the file, so that the file's order carries no meaning.
/// </summary>
internal static class EntryOrder
{
    /// <summary>The entries in that order.</summary>
    public static Entry[] Sorted(List<Entry> entries)
    {
        if (entries.Count <= Few)
            return SortedOneByOne(entries);
        var keyed = new Keyed[entries.Count];
        for (var i = 0; i < keyed.Length; i++)
            keyed[i] = new Keyed(Key(entries[i]), entries[i]);
        Array.Sort(keyed, static (a, b) => a.Key != b.Key ? a.Key.CompareTo(b.Key) : ByContent(a.Entry, b.Entry));
        var sorted = new Entry[keyed.Length];
        for (var i = 0; i < sorted.Length; i++)
            sorted[i] = keyed[i].Entry;
        return sorted;
    }

    // Most files have a dozen entries: put in their places one after the other, with nothing kept beside them.
    private const int Few = 24;

    private static Entry[] SortedOneByOne(List<Entry> entries)
    {
        Span<long> keys = stackalloc long[Few];
        Span<int> places = stackalloc int[Few];
        for (var i = 0; i < entries.Count; i++)
        {
            var entry = entries[i];
            var key = Key(entry);
            var at = i;
            for (; at > 0 && (keys[at - 1] > key || (keys[at - 1] == key && ByContent(entries[places[at - 1]], entry) > 0)); at--)
                (keys[at], places[at]) = (keys[at - 1], places[at - 1]);
            (keys[at], places[at]) = (key, i);
        }

        var sorted = new Entry[entries.Count];
        for (var i = 0; i < sorted.Length; i++)
            sorted[i] = entries[places[i]];
        return sorted;
    }

    // A class and no struct: the framework's sort of references is compiled ahead, one of a new struct at every start.
    private sealed record Keyed(long Key, Entry Entry);

    private static int ByContent(Entry a, Entry b)
    {
        var bySum = BySumAndReference(a, b);
        if (bySum != 0)
            return bySum;
        return (a, b) switch
        {
            (Paid x, Paid y) => string.CompareOrdinal(x.From, y.From),
            (Furnished x, Furnished y) => ByEndThenText(x, y),
            _ => string.CompareOrdinal(TheRest(a), TheRest(b)),
        };
    }

    // Earliest day, latest day and kind in one number: 21, 21 and 6 bits.
    private static long Key(Entry entry)
    {
        var earliest = Packed(entry.On.Earliest);
        var latest = entry.On is DayFact.Exact ? earliest : Packed(entry.On.Latest);
        return ((long)earliest << 27) | ((long)latest << 6) | (long)Kind(entry);
    }

    private static int Packed(LocalDate? day) => day is { } known ? (known.Year << 9) | (known.Month << 5) | known.Day : 0;

    private static int Kind(Entry entry) => entry switch
    {
        // Those of which a file has most are asked first.
        Furnished => 12,
        Paid => 23,
        NoticeGiven => 20,
        Completed => 7,
        Waived => 30,
        Charged => 4,
        OwnerRecorded => 21,
        FurnishingEnded => 13,
        ActionFiled => 1,
        BondNoticeGiven => 2,
        Change => 3,
        ClaimRecorded => 5,
        ClaimServed => 6,
        CreditRecorded => 8,
        Credited => 9,
        DisputeClaimSent => 10,
        Disputed => 11,
        HirerPaid => 14,
        IndexSearched => 15,
        LaborCeased => 16,
        LisPendensRecorded => 17,
        LowerTierClaim => 18,
        NonresponsibilityRecorded => 19,
        OwnerToldUs => 22,
        PaymentDemanded => 24,
        ReleaseBondRecorded => 25,
        ReleaseDemanded => 26,
        ReleaseRecorded => 27,
        Retained => 28,
        StopPaymentGiven => 29,
        Withdrawn => 31,
        WorkWillNotCommence => 32,
        StopPaymentReleased => 33,
        StopPaymentDemanded => 34,
        StopPaymentBondGiven => 35,
        BondObjected => 36,
        ActionTold => 37,
        LenderSought => 38,
        NoticeFiled => 39,
        ActionServed => 40,
        TrialBegun => 41,
        ActionEnded => 42,
        ReleasePetitionServed => 43,
        DisputeClaimAnswered => 44,
        ConferenceDemanded => 45,
        ConferenceHeld => 46,
        ClaimRequestMade => 47,
        ClaimRequestAnswered => 48,
        FinalPayment => 49,
        FinalDecisionServed => 50,
        DisputedWorkDone => 51,
        StopWorkNoticeGiven => 52,
        SecurityDemanded => 53,
        ContractEnded => 54,
        ReleaseAffidavitServed => 55,
        CounteraffidavitServed => 56,
        RightsActionFiled => 57,
        HearingNoticed => 58,
        ReleaseOrdered => 59,
        SecurityProvided => 60,
        SuspensionNoticeSent => 61,
        _ => throw new InvalidOperationException($"No such entry: {entry.GetType().Name}."),
    };

    private static int ByEndThenText(Furnished a, Furnished b)
    {
        var byEnd = Packed(a.Until.Latest).CompareTo(Packed(b.Until.Latest));
        if (byEnd != 0)
            return byEnd;
        var byStartOfEnd = Packed(a.Until.Earliest).CompareTo(Packed(b.Until.Earliest));
        if (byStartOfEnd != 0)
            return byStartOfEnd;
        var byText = string.CompareOrdinal(a.Text, b.Text);
        if (byText != 0)
            return byText;
        var byRef = string.CompareOrdinal(a.Ref, b.Ref);
        return byRef != 0 ? byRef : string.CompareOrdinal(a.Structure, b.Structure);
    }

    // All that an entry says besides its day, its sum and its reference, for entries that tie in those.
    private static string TheRest(Entry entry) => entry switch
    {
        Change e => Line(e.Amount, e.Agreed, e.Text, e.InDirectContract, e.KnewOutside),
        Charged e => Line(e.Of),
        NoticeGiven e => Line(e.Notice, e.Manner, To(e.To), e.Article, e.Estimate, e.EstimateBasis, e.Lacks, e.Mailed, e.Tries),
        Completed e => Line(e.By, e.Contested, e.Structure),
        LaborCeased e => Line(e.Until, e.Unfinished),
        OwnerRecorded e => Line(e.Notice, e.States, e.ContractOf, e.Instrument, e.Lacks, e.HeldIneffective),
        OwnerToldUs e => Line(e.Notice, e.Mailed, e.Manner),
        Waived e => Line(e.PaymentCleared, e.InStatutoryForm, e.UnpaidWaivers is { } listed ? string.Join(',', listed.Select(LawText.IsoDay)) : null, e.Settlement),
        ClaimServed e => Line(e.Manner, To(e.To), e.Article),
        ClaimRecorded e => Line(e.Amount, e.Instrument, e.County, e.Lien, e.Amends, e.Structure, e.Lacks),
        CreditRecorded e => Line(e.Until, e.Instrument),
        ActionFiled e => Line(e.Court, e.Case, string.Join(',', e.Enforces), e.Claim, To(e.Against), e.SmallClaims),
        LisPendensRecorded e => Line(e.Instrument, e.MailedFirst, e.ProofRecorded),
        ReleaseRecorded e => Line(e.Instrument, e.Satisfied),
        ReleaseBondRecorded e => Line(e.Amount, e.Instrument, e.NoticeGiven),
        ReleaseDemanded e => Line(e.Instrument),
        StopPaymentGiven e => Line(To(e.To), e.Amount, e.Bonded, e.BondAmount, e.Manner, e.Article, e.Mailed, e.Tries, e.Lacks, e.TenDollars),
        BondNoticeGiven e => Line(To(e.To), e.Manner, e.Article, e.Mailed, e.Tries, e.Amount),
        Retained e => Line(e.Amount),
        PaymentDemanded e => Line(e.Amount, To(e.To), e.Manner, e.Article, e.Mailed, e.Received, e.Due, e.OfDefault, e.Returned, e.Resubmitted),
        HirerPaid e => Line(e.Amount, e.Of),
        Disputed e => Line(e.Amount, e.Text, e.About, e.Demand),
        LowerTierClaim e => Line(e.Amount, e.By, e.StopPaymentNotice),
        NonresponsibilityRecorded e => Line(e.Posted, e.Knew, e.LeaseRequiresWork, e.Lacks),
        DisputeClaimSent e => Line(e.Amount, e.Received, e.Manner, e.ExtendedTo, e.NextMeeting, e.DocumentsAsked, e.DocumentsGiven),
        StopPaymentReleased e => Line(e.Amount, e.Of),
        StopPaymentDemanded e => Line(e.From),
        StopPaymentBondGiven e => Line(e.Amount, e.Surety),
        BondObjected e => Line(e.By, e.NewBond),
        ActionTold e => Line(To(e.To), e.Manner),
        LenderSought e => Line(e.Where),
        NoticeFiled e => Line(e.Instrument),
        ActionServed e => Line(To(e.To), e.Of),
        TrialBegun e => Line(e.Of),
        ActionEnded e => Line(e.How, e.WithoutPrejudice, e.Of),
        ReleasePetitionServed e => Line(e.Manner, e.Hearing),
        DisputeClaimAnswered e => Line(e.Undisputed),
        ConferenceDemanded e => Line(e.Manner),
        ClaimRequestMade e => Line(e.Amount),
        ClaimRequestAnswered e => Line(e.Presented),
        StopWorkNoticeGiven e => Line(To(e.To), e.Posted, e.PostedBy),
        SecurityDemanded e => Line(e.Manner),
        DisputedWorkDone e => Line(e.Accepted, e.Rejected),
        SuspensionNoticeSent e => Line(e.Notice, e.Manner),
        SecurityProvided e => Line(e.Amount, e.Until),
        ContractEnded e => Line(e.How, e.ByPayer),
        ReleaseAffidavitServed e => Line(e.Manner, e.AnswerBy, e.Amount, e.Ground),
        CounteraffidavitServed e => Line(To(e.To), e.Manner, e.Proof),
        RightsActionFiled e => Line(e.Case),
        HearingNoticed e => Line(e.Manner, e.Hearing, To(e.To), e.By),
        ReleaseOrdered e => Line(e.Amount),
        Furnished or Paid or FurnishingEnded or WorkWillNotCommence or Withdrawn => "",
        ConferenceHeld or FinalPayment or FinalDecisionServed => "",
        IndexSearched e => Line(e.County),
        Credited e => Line(e.Toward),
        _ => throw new InvalidOperationException($"No such entry: {entry.GetType().Name}."),
    };

    private static string Line(params object?[] parts) =>
        string.Join('|', parts.Select(p => p is IFormattable f ? f.ToString(null, CultureInfo.InvariantCulture) : p?.ToString()));

    private static string To(IReadOnlyList<string> ids) => string.Join(',', ids);

    private static int BySumAndReference(Entry a, Entry b) => (a, b) switch
    {
        (Furnished x, Furnished y) => ByAmountThenText(x.Amount, x.Ref ?? x.Text, y.Amount, y.Ref ?? y.Text),
        (Paid x, Paid y) => ByAmountThenText(x.Amount, x.Toward, y.Amount, y.Toward),
        (Charged x, Charged y) => ByAmountThenText(x.Amount, x.Ref, y.Amount, y.Ref),
        (Credited x, Credited y) => ByAmountThenText(x.Amount, x.Text, y.Amount, y.Text),
        (Waived x, Waived y) => (x.Form, x.Through, x.Amount ?? 0, x.Excepted ?? 0)
            .CompareTo((y.Form, y.Through, y.Amount ?? 0, y.Excepted ?? 0)),
        _ => 0,
    };

    private static int ByAmountThenText(decimal? amountA, string? textA, decimal? amountB, string? textB)
    {
        var byText = string.CompareOrdinal(textA, textB);
        return byText != 0 ? byText : decimal.Compare(amountA ?? 0, amountB ?? 0);
    }
}
