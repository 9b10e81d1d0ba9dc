using Stringline.Law.Facts;

namespace Stringline.Testing;

/// <summary>
/// What the claimant did on a drawn job: notices, claims, bonds and actions, often about the last day, often not quite right.
/// </summary>
internal sealed class RemedyEvents(Drawing draw, List<Entry> entries, List<Party> parties, Claimant claimant, List<LocalDate> turns)
{
    private static readonly Manner[] Manners = Enum.GetValues<Manner>();

    /// <summary>Which work.</summary>
    public required WorkKind Kind { get; init; }

    /// <summary>The first day of work.</summary>
    public required LocalDate First { get; init; }

    /// <summary>The last day of work.</summary>
    public required LocalDate Last { get; init; }

    /// <summary>The day of completion, whether entered or not.</summary>
    public required LocalDate Complete { get; init; }

    /// <summary>The day on which the time to record or to give ends.</summary>
    public required LocalDate TimeEnds { get; init; }

    /// <summary>The day the work commenced, where the file says it.</summary>
    public LocalDate? Commenced { get; private set; }

    /// <summary>Draws all of it.</summary>
    public void Add()
    {
        var designer = claimant.Role == ClaimantRole.DesignProfessional;
        var begun = !designer || entries.Exists(static e => e is Completed or OwnerRecorded or LaborCeased);
        Commenced = draw.In100(designer ? 55 : 20) ? First.PlusDays(draw.From(-30, begun ? 0 : 200)) : null;
        Preliminary();
        if (!begun && Kind == WorkKind.Private && draw.In100(75))
            Design();
        else if (Kind == WorkKind.Private && draw.In100(55))
            Claim();
        if (draw.In100(45))
            StopPayment();
        if (draw.In100(45))
            BondNotice();
        if (draw.In100(30))
            Action(draw.Of(TimeEnds.PlusDays(draw.From(80, 95)), Complete.PlusDays(draw.From(170, 190)),
                TimeEnds.PlusDays(draw.From(170, 190)), Last.PlusDays(draw.Of(91, 92, 364, 365, 366))), null);
        if (draw.In100(3))
            Add(new StopPaymentDemanded { Index = 0, On = DayFact.On(Last.PlusDays(draw.From(0, 60))) });
        turns.Add(Complete.PlusDays(182));
        turns.Add(Last.PlusDays(Kind == WorkKind.Federal ? 365 : 91));
        turns.Add(TimeEnds.PlusDays(183));
    }

    private void Add(Entry entry)
    {
        entries.Add(entry with { Index = entries.Count });
        if (entry.On is DayFact.Exact(var day))
            turns.Add(day.PlusDays(1));
    }

    private string[] To(params string[] right)
    {
        if (draw.In100(80))
            return right;
        return draw.From(0, 4) switch
        {
            0 => [right[0]],
            1 => [right[^1]],
            2 => [.. right, "sub"],
            3 => ["gc"],
            _ => [draw.Of<Party>([.. parties]).Id],
        };
    }

    private Manner AnyManner() => draw.In100(85)
        ? draw.Of(Manner.CertifiedMail, Manner.CertifiedMail, Manner.Personal, Manner.OvernightCarrier,
            Manner.RegisteredMail) : draw.Of(Manners);

    private Manner? MannerOrNone() => draw.In100(50) ? null : AnyManner();

    private bool Has(string id) => parties.Exists(p => p.Id == id);

    private void Preliminary()
    {
        if (draw.In100(18))
            return;
        var to = new List<string> { "own" };
        if (Has("gc"))
            to.Add("gc");
        if (Has("len") && draw.In100(70))
            to.Add("len");
        var day = First.PlusDays(draw.In100(55) ? draw.From(0, 19) : draw.Of(20, 20, 21, 22, 23, 30, 45, 60, 100, 200));
        Add(new NoticeGiven
        {
            Index = 0,
            On = DayFact.On(day),
            Notice = draw.In100(98) ? NoticeKind.Preliminary : NoticeKind.CompletionClaim,
            To = To([.. to]),
            Manner = AnyManner(),
            Tries = draw.In100(30) ? draw.From(0, 4) : null,
            Mailed = draw.In100(10) ? day.PlusDays(draw.From(0, 3)) : null,
            Lacks = draw.In100(3) ? "the statement in boldface" : null,
        });
        if (draw.In100(15))
            Add(new NoticeGiven { Index = 0, On = DayFact.On(First.PlusDays(draw.From(5, 60))), Notice = NoticeKind.Preliminary,
                To = [draw.Of("own", "gc", "len", "gc2")], Manner = AnyManner() });
    }

    private void Claim()
    {
        var day = draw.In100(50) ? TimeEnds.PlusDays(draw.From(-3, 3)) : Last.PlusDays(draw.From(-2, 90));
        Claimed(day, null, null);
        Served(day);
        if (draw.In100(12))
        {
            var later = day.PlusDays(draw.From(1, 70));
            Claimed(later, draw.In100(50) ? "claim" : null, "later");
            turns.Add(later.PlusDays(90));
        }

        AfterClaim(day);
    }

    private void Claimed(LocalDate day, string? amends, string? id) => Add(new ClaimRecorded
    {
        Index = 0,
        Id = id ?? "claim",
        On = DayFact.On(day),
        Amount = draw.In100(70) ? 6_430m : null,
        County = draw.In100(6) ? draw.Of("Tehama", "Glenn") : null,
        Amends = amends,
        Lien = draw.In100(30) ? LienKind.Mechanics : null,
    });

    private void Served(LocalDate day)
    {
        if (draw.In100(30))
            return;
        Add(new ClaimServed
        {
            Index = 0,
            On = DayFact.On(day.PlusDays(draw.Of(-3, -1, -1, -1, 0, 0, 1, 11))),
            To = To("own"),
            Manner = draw.In100(75) ? draw.Of(Manner.CertifiedMail, Manner.RegisteredMail, Manner.CertificateOfMailing) : draw.Of(Manners),
        });
    }

    private void AfterClaim(LocalDate day)
    {
        turns.Add(day.PlusDays(90));
        if (draw.In100(50))
            Action(day.PlusDays(draw.In100(50) ? draw.From(0, 88) : draw.Of(88, 89, 90, 91, 92, 93, 94)), draw.In100(25)
                ? ActionOn.Lien : null);
        if (draw.In100(8))
        {
            var credit = day.PlusDays(draw.Of(-5, 1, 30, 89, 90, 91, 92, 120));
            var until = credit.PlusDays(draw.From(30, 300));
            Add(new CreditRecorded { Index = 0, On = DayFact.On(credit), Until = until });
            turns.Add(until.PlusDays(90));
        }

        if (draw.In100(10))
            ReleaseBond(day);
        if (draw.In100(4))
            Add(new ReleaseRecorded { Index = 0, On = DayFact.On(day.PlusDays(draw.From(5, 120))), Satisfied = draw.Maybe() });
    }

    private void ReleaseBond(LocalDate day)
    {
        var bonded = day.PlusDays(draw.From(3, 60));
        var told = bonded.PlusDays(draw.From(0, 20));
        Add(new ReleaseBondRecorded { Index = 0, On = DayFact.On(bonded), NoticeGiven = draw.In100(80)
            ? told : null, Amount = draw.In100(70) ? draw.Of(8_037.50m, 8_037.49m, 6_430m, 9_000m) : null });
        turns.Add(told.PlusDays(182));
        if (draw.In100(50))
            Action(told.PlusDays(draw.Of(20, 100, 181, 182, 183, 184, 186)), ActionOn.ReleaseBond);
    }

    private void Action(LocalDate day, ActionOn? on)
    {
        var enforces = on is { } one ? [one] : draw.In100(50) ? (ActionOn[])[] : [draw.Of(Enum.GetValues<ActionOn>())];
        Add(new ActionFiled
        {
            Index = 0,
            On = DayFact.On(day),
            Enforces = enforces,
            SmallClaims = draw.In100(4),
            Claim = draw.In100(6) ? draw.Of("claim", "later") : null,
            Against = draw.In100(8) ? [draw.Of("own", "gc", "sub")] : [],
        });
        if (draw.In100(35))
            Add(new LisPendensRecorded { Index = 0, On = DayFact.On(day.PlusDays(draw.Of(-5, 0, 1, 10, 19, 20, 21, 22, 30))),
                MailedFirst = draw.Maybe(70), ProofRecorded = draw.Maybe(70) });
        turns.Add(day.PlusDays(20));
    }

    private void StopPayment()
    {
        var day = draw.In100(45) ? TimeEnds.PlusDays(draw.From(-3, 3)) : First.PlusDays(draw.From(0, 150));
        Notice(day, To(draw.In100(Has("len") ? 60 : 100) ? "own" : "len"));
        if (draw.In100(20))
            Notice(day.PlusDays(draw.From(1, 40)), To(draw.In100(Has("len") ? 40 : 100) ? "own" : "len"));
        if (draw.In100(25))
            Action(day.PlusDays(draw.Of(5, 10, 11, 12, 40)), draw.In100(60) ? ActionOn.StopPaymentNotice : null);
    }

    private void Notice(LocalDate day, string[] to)
    {
        var bonded = to.Contains("len") && draw.In100(50);
        Add(new StopPaymentGiven
        {
            Index = 0,
            On = DayFact.On(day),
            To = to,
            Amount = draw.In100(60) ? 1_000m : null,
            Bonded = bonded,
            BondAmount = bonded && draw.In100(60) ? draw.Of(1_250m, 1_249.99m, 1_000m) : null,
            Manner = MannerOrNone(),
            Lacks = draw.In100(3) ? "its verification" : null,
        });
        if (draw.In100(4))
            Add(new StopPaymentReleased { Index = 0, On = DayFact.On(day.PlusDays(draw.From(1, 60))), Amount = draw.In100(50)
                ? 100m : null });
    }

    private void BondNotice()
    {
        var day = Kind == WorkKind.Federal
            ? Last.PlusDays(draw.Of(-10, 0, 5, 40, 88, 89, 90, 91, 92, 93))
            : draw.Of(Complete.PlusDays(draw.From(72, 79)), TimeEnds.PlusDays(draw.From(-18, -12)), First.PlusDays(draw.From(10, 120)));
        Add(new BondNoticeGiven { Index = 0, On = DayFact.On(day), To = To("gc", "sur"), Manner = MannerOrNone() });
    }

    private void Design()
    {
        var knew = Last.PlusDays(draw.From(0, 60));
        if (draw.In100(80))
            Add(new WorkWillNotCommence { Index = 0, On = DayFact.On(knew) });
        var day = draw.In100(50) ? knew.PlusDays(draw.From(86, 94)) : knew.PlusDays(draw.From(0, 80));
        if (draw.In100(80))
            Add(new PaymentDemanded { Index = 0, On = DayFact.On(day.PlusDays(-draw.Of(3, 9, 10, 11, 20, 40))), Amount = 6_430m,
                To = ["own"], OfDefault = draw.In100(70) ? true : draw.Maybe() });
        if (draw.In100(65))
        {
            Add(new ClaimRecorded { Index = 0, Id = "claim", On = DayFact.On(day), Amount = 6_430m, Lien = draw.In100(85)
                ? LienKind.Design : null });
            turns.Add(day.PlusDays(90));
            if (draw.In100(40))
                Action(day.PlusDays(draw.Of(20, 60, 88, 89, 90, 91, 92, 93)), ActionOn.Lien);
        }

        turns.Add(knew.PlusDays(90));
        if (Commenced is not { } start)
            return;
        turns.Add(start.PlusDays(30));
        if (draw.In100(50))
            Add(new ClaimRecorded { Index = 0, Id = "later", On = DayFact.On(start.PlusDays(draw.From(25, 34))), Amount = 6_430m,
                Lien = LienKind.Converted });
    }
}
