using Stringline.Law.Facts;
using Stringline.Law.PaymentBond;
using Stringline.Law.PreliminaryNotice;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Writing;

namespace Stringline.Papers.Mailing;

/// <summary>To whom a kind of notice goes, where the file does not say to whom it went.</summary>
internal static class NoticeDue
{
    /// <summary>Those named with the request, or those whom the kind of notice is for.</summary>
    public static IReadOnlyList<Party> To(Matter matter, ProvedNotice kind)
    {
        if (kind == ProvedNotice.Preliminary)
        {
            return Addressees.Of(matter, matter.Job.Work.Kind == WorkKind.Public ? PublicNotice.RecipientsOf(matter.Known)
                : Recipients.Of(matter.Known));
        }

        return Addressees.WithAddress(matter, matter.Options.To.Count > 0 ? matter.Named(matter.Options.To) : Usual(matter, kind),
            "Civ. Code § 8118(a)");
    }

    private static IReadOnlyList<Party> Usual(Matter matter, ProvedNotice kind) => kind switch
    {
        ProvedNotice.StopPaymentRelease or ProvedNotice.Action =>
            [.. matter.Known.All<StopPaymentGiven>().SelectMany(g => g.To).Distinct().Select(matter.Job.Party).OfType<Party>()],
        ProvedNotice.StopPayment when matter.Job.Work.Kind == WorkKind.Private =>
            [.. matter.In(PartyCapacity.Owner), .. matter.In(PartyCapacity.ConstructionLender)],
        ProvedNotice.StopPayment or ProvedNotice.ReleaseAffidavit => matter.In(PartyCapacity.PublicEntity),
        ProvedNotice.Bond =>
            [.. matter.Job.Party(matter.Job.Work.PaymentBond?.Surety) is { } surety ? [surety] : matter.In(PartyCapacity.Surety),
            .. BondClaim.ToldAsPrincipal(matter.Known, out _)],
        ProvedNotice.Counteraffidavit => matter.In(PartyCapacity.DirectContractor),
        ProvedNotice.Hearing => [.. matter.In(PartyCapacity.PublicEntity), .. matter.In(PartyCapacity.DirectContractor)],
        ProvedNotice.CompletionClaim or ProvedNotice.PaymentDemand or ProvedNotice.DisputedWork =>
            matter.Facts.HiredBy is { } hirer ? [hirer] : [],
        ProvedNotice.Default or ProvedNotice.StopWork or ProvedNotice.Security or ProvedNotice.DisputeClaim or ProvedNotice.Conference
            or ProvedNotice.SuspensionDue or ProvedNotice.SuspensionIntent => matter.In(
                matter.Job.Work.Kind == WorkKind.Public ? PartyCapacity.PublicEntity : PartyCapacity.Owner),
        ProvedNotice.Preliminary or ProvedNotice.ReleaseDemand => [],
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such notice."),
    };
}
