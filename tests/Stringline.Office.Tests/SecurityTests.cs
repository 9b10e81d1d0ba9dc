using Stringline.Office.Customers;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Office.Tests;

/// <summary>
/// What holds the money of a job. The dollars are added by hand; which right lives is that of the sections named beside each check.
/// </summary>
public sealed class HoldTests
{
    private static readonly LocalDate Asked = new(2026, 7, 15);

    [Fact]
    public void A_supplier_with_notice_in_time_can_still_secure_what_is_unpaid()
    {
        // 1,000.00 + 500.00 delivered, 300.00 paid. Civ. Code §§ 8400, 8410: the right is open while the work goes on.
        var hold = Of(
            [Delivery(0, 6, 20, 1000m), Delivery(1, 6, 25, 500m), Notice(2, 6, 22), new Paid { Index = 3, On = On(7, 1), Amount = 300m }]);
        Assert.Equal((1200m, 1200m), (hold.Owed, hold.Claimable));
        Assert.Equal((0m, 1200m), (hold.HeldOn(Asked), hold.MaySecureOn(Asked)));
        Assert.Contains(hold.Rights, right => right is { By: SecurityKind.Lien, IsHeld: false });
    }

    [Fact]
    public void A_recorded_claim_holds_for_ninety_days_and_no_longer_if_nobody_sues()
    {
        // Civ. Code § 8460(a): an action within 90 days after recording. Recorded 2026-06-29: the ninetieth day is 2026-09-27, a Sunday;
        // the Friday before it is Native American Day, a court holiday (Code Civ. Proc. § 135), so the day to act by is Thursday the 24th.
        var hold = Of([Delivery(0, 6, 1, 1000m), Notice(1, 6, 3), new Completed { Index = 2, On = On(6, 15), By = CompletionTheory.Actual },
            new ClaimRecorded { Index = 3, On = On(6, 29), Amount = 1000m, Instrument = "1" }]);
        var lien = Assert.Single(hold.Rights, right => right.By == SecurityKind.Lien);
        Assert.True(lien.IsHeld);
        Assert.Equal(1000m, hold.HeldOn(Asked));
        Assert.Equal(1000m, hold.HeldOn(new LocalDate(2026, 9, 24)));
        Assert.Equal(0m, hold.HeldOn(new LocalDate(2026, 9, 25)));
    }

    [Fact]
    public void What_may_not_be_claimed_is_owed_all_the_same()
    {
        // Civ. Code § 8204: a late notice reaches back 20 days. Notice 2026-06-30 reaches 2026-06-10; the delivery of 2026-05-01 is out.
        var hold = Of([Delivery(0, 5, 1, 700m), Delivery(1, 6, 20, 300m), Notice(2, 6, 30)]);
        Assert.Equal((1000m, 300m), (hold.Owed, hold.Claimable));
    }

    [Fact]
    public void Written_and_read_it_is_the_same()
    {
        var hold = new Security(10.05m, 9m,
            [new SecuredRight(SecurityKind.Bond, true, "payment-bond.action-last-day", Standing.InDoubt, new LocalDate(2027, 1, 4), 8.25m),
                new SecuredRight(SecurityKind.Lien, false, "claim-of-lien.last-day", Standing.Open, null, 9m)]);
        using var stream = new MemoryStream();
        using (var json = new System.Text.Json.Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            hold.Write(json);
            json.WriteEndObject();
        }

        var read = Security.Read(stream.ToArray());
        Assert.Equal((hold.Owed, hold.Claimable), (read.Owed, read.Claimable));
        Assert.Equal(hold.Rights, read.Rights);
    }

    /// <summary>An assessment that was kept before each right had its own dollars: those of the whole.</summary>
    [Fact]
    public void A_right_kept_without_dollars_has_those_of_the_whole()
    {
        var read = Security.Read(
            """{"owed":10.05,"claimable":9,"rights":[{"by":0,"held":true,"finding":"enforcement.last-day","standing":0}]}"""u8.ToArray());
        Assert.Equal(9m, Assert.Single(read.Rights).Dollars);
    }

    /// <summary>
    /// Civ. Code § 8204(a) limits the lien of one whose notice came late; the bond pays what is unpaid (§ 8606(a)). Each right holds its
    /// own dollars, and together they hold what the larger one reaches.
    /// </summary>
    [Fact]
    public void Each_right_holds_what_it_reaches_and_together_they_hold_the_most_of_it()
    {
        var day = new LocalDate(2026, 7, 15);
        var lien = new SecuredRight(SecurityKind.Lien, true, "enforcement.last-day", Standing.Open, day, 300m);
        var bond = new SecuredRight(SecurityKind.Bond, true, "payment-bond.action-last-day", Standing.Open, day.PlusDays(30), 1000m);
        var both = new Security(1200m, 1000m, [lien, bond]);
        Assert.Equal((1000m, 0m), (both.HeldOn(day), both.MaySecureOn(day)));
        var toCome = new Security(1200m, 1000m, [lien, bond with { IsHeld = false }]);
        Assert.Equal((300m, 700m), (toCome.HeldOn(day), toCome.MaySecureOn(day)));
        Assert.Equal((0m, 1000m), (toCome.HeldOn(day.PlusDays(1)), toCome.MaySecureOn(day.PlusDays(1))));
        Assert.Equal((0m, 0m), (toCome.HeldOn(day.PlusDays(31)), toCome.MaySecureOn(day.PlusDays(31))));
    }

    [Fact]
    public void A_bond_reaches_what_a_late_notice_leaves_out_of_the_lien()
    {
        var hold = Of([Delivery(0, 5, 1, 700m), Delivery(1, 6, 20, 300m), Notice(2, 6, 30)], w =>
            w with { PaymentBond = new PaymentBond { Recorded = new LocalDate(2026, 4, 1), Surety = "p4" } });
        Assert.Equal(300m, Assert.Single(hold.Rights, r => r.By == SecurityKind.Lien).Dollars);
        Assert.Equal(1000m, Assert.Single(hold.Rights, r => r.By == SecurityKind.Bond).Dollars);
        Assert.Equal((1000m, 1000m), (hold.Owed, hold.Claimable));
    }

    /// <summary>
    /// Civ. Code §§ 8306(b), 8319: recorded on 2026-06-01 a design lien holds until the suit of the ninetieth day, Sunday 2026-08-30; once
    /// work commences on
    /// 2026-07-06 nothing holds, and until 2026-08-05 what is unpaid can be secured by converting it.
    /// </summary>
    [Fact]
    public void A_design_lien_holds_until_its_day_to_sue_and_once_ended_can_be_converted()
    {
        Entry[] entries =
        [
            Delivery(0, 3, 2, 24_000m),
            new PaymentDemanded { Index = 1, On = On(5, 4), Amount = 24_000m, To = ["p1"], OfDefault = true },
            new WorkWillNotCommence { Index = 2, On = On(5, 1) },
            new ClaimRecorded { Index = 3, On = On(6, 1), Amount = 24_000m, Instrument = "1", Lien = LienKind.Design },
        ];
        var permit = new Permit { Number = "B26-1", Authority = "City of Woodland" };
        var recorded = Assert.Single(Of(entries, w => w with { Permit = permit }, ClaimantRole.DesignProfessional).Rights,
            r => r.By == SecurityKind.Lien);
        Assert.Equal((true, "design-lien.enforcement-last-day", 24_000m), (recorded.IsHeld, recorded.Finding, recorded.Dollars));
        var ended = Assert.Single(Of(entries, w => w with { Permit = permit, Commenced = new LocalDate(2026, 7, 6) },
            ClaimantRole.DesignProfessional).Rights, r => r is { By: SecurityKind.Lien });
        Assert.False(ended.IsHeld);
    }

    private static Security Of(IReadOnlyList<Entry> entries, Func<Work, Work>? work = null, ClaimantRole role = ClaimantRole.Supplier) =>
        Security.Of(UseCases.Assess(
        new JobFile
        {
            Name = "Sluice Street",
            Work = (work ?? (w => w))(new Work { Kind = WorkKind.Private, Use =
                WorkUse.Commercial, Site = new Site { Street = "4 Sluice Street", City = "Woodland", Zip = "95695", County = "Yolo" } }),
            Claimant = new Claimant { Name = "Quillback Lumber & Truss, Inc.", Role =
                role, HiredBy = role == ClaimantRole.DesignProfessional ? "p1" : "p3", License = new License { Required = false } },
            Contract = new Contract { Written = true },
            Parties =
            [
                new Party { Id =
                    "p1", Capacity = PartyCapacity.Owner, Name = "Sluice Street Partners", Address = "1 Weir Lane\nDavis, CA 95616" },
                new Party { Id =
                    "p2", Capacity = PartyCapacity.DirectContractor, Name = "Weir Builders", Address = "2 Weir Lane\nDavis, CA 95616" },
                .. work is null
                    ? [] : (Party[])[new Party { Id = "p4", Capacity = PartyCapacity.Surety, Name = "Weir Surety Company",
                        Address = "5 Weir Lane\nDavis, CA 95616" }],
                new Party { Id =
                    "p3", Capacity = PartyCapacity.Subcontractor, Name = "Sawpit Framing", Address = "3 Weir Lane\nDavis, CA 95616" },
            ],
            Entries = entries,
        },
        Asked));

    private static DayFact On(int month, int day) => DayFact.On(new LocalDate(2026, month, day));

    private static Furnished Delivery(int index, int month, int day, decimal dollars) =>
        new() { Index = index, On = On(month, day), Until = On(month, day), Amount = dollars };

    private static NoticeGiven Notice(int index, int month, int day) =>
        new() { Index = index, On = On(month, day), Notice = NoticeKind.Preliminary, To = ["p1", "p2"], Manner = Manner.CertifiedMail,
            Article = "9407 1118 9876 5430 0000 01" };
}
