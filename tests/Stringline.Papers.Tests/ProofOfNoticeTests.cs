using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using static Stringline.Papers.Tests.Jobs;
using static Stringline.Papers.Tests.PaperJobs;

namespace Stringline.Papers.Tests;

/// <summary>
/// Every notice that the file can tell of, and every one that a paper gives, has its proof of notice (Civ. Code § 8118(a): type of notice;
/// date, place and manner; name and address of each person).
/// </summary>
public sealed class ProofOfNoticeTests
{
    /// <summary>What is no notice of this file's side to be proved by such a declaration, each with the reason.</summary>
    private static readonly Dictionary<Type, string> NoNotice = new()
    {
        [typeof(ClaimServed)] = "the affidavit that is part of the claim proves it (Civ. Code § 8416(a)(7))",
        [typeof(OwnerToldUs)] = "the owner gave it",
        [typeof(ReleaseAffidavitServed)] = "the public entity served it",
        [typeof(ReleasePetitionServed)] = "the owner served it",
        [typeof(ActionServed)] = "a summons has a proof of service of its own (Code Civ. Proc. § 417.10)",
    };

    /// <summary>An entry that tells to whom or how something was given is a notice with its proof, or stands in the list above.</summary>
    [Fact]
    public void Every_entry_that_tells_of_giving_has_a_proof_of_its_kind()
    {
        var given = typeof(Entry).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Entry)))
            .Where(t => t.GetProperty("Manner") is not null || (t.GetProperty("To") is { } to && to.PropertyType != typeof(DayFact)))
            .Except(NoNotice.Keys).ToList();
        Assert.True(given.Count >= 12, $"{given.Count}");
        Assert.All(given, t => Assert.True(ProvedNotices.Of(Empty(t)) is not null, t.Name));
    }

    // Nothing of the entry is read but its type and its kind.
    private static Entry Empty(Type type) => (Entry)System.Runtime.CompilerServices.RuntimeHelpers.GetUninitializedObject(type);

    public static TheoryData<ProvedNotice> Kinds() => [.. ProvedNotices.All];

    private static JobFile Fitting(ProvedNotice kind) => kind switch
    {
        ProvedNotice.ReleaseAffidavit or ProvedNotice.Counteraffidavit or ProvedNotice.Hearing => Contested(),
        ProvedNotice.Default => Designed(),
        ProvedNotice.Action => SuedOnNotice(),
        ProvedNotice.StopPaymentRelease => SuedOnNotice(),
        _ => Private(),
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_proof_of_every_kind_can_be_made_and_names_it(ProvedNotice kind)
    {
        var made = Make("proof-of-notice", _ => Fitting(kind), o => o with { Notice = kind }, Day("2026-06-20"));
        Assert.True(made.Says("Type of notice"), "label");
        Assert.True(made.Says($"{char.ToUpperInvariant(kind.Words()[0])}{kind.Words()[1..]}, given by"), kind.Words());
        Assert.Equal(ProvedNotices.Of(kind.Word()), kind);
    }

    public static TheoryData<string> GivenPapers() => [.. PaperCatalogue.All.Where(p => p.Use == PaperUse.Given).Select(p => p.Id)];

    /// <summary>A new notice without its proof fails here.</summary>
    [Theory]
    [MemberData(nameof(GivenPapers))]
    public void The_sheet_of_every_paper_that_is_given_leads_to_the_proof_of_its_kind(string id)
    {
        var kind = PaperCatalogue.Find(id)!.ProvedAs;
        Assert.NotNull(kind);
        var made = Make(id);
        var sheet = made.SheetText();
        if (made.Files.Any(f => f.Name == "proof-of-notice.pdf"))
        {
            Assert.True(sheet.Contains("proof of notice declaration that comes with it", StringComparison.Ordinal)
                || sheet.Contains("signs the proof of service", StringComparison.Ordinal), id);
        }
        else
        {
            Assert.Contains($"make the paper “Proof of Notice Declaration” for the kind “{kind.Value.Words()}”", sheet,
                StringComparison.Ordinal);
        }
    }

    /// <summary>No sheet asks for a proof of notice in words that lead nowhere.</summary>
    [Theory]
    [MemberData(nameof(GivenPapers))]
    public void No_sheet_says_only_fill_in_a_proof_of_notice(string id) =>
        Assert.DoesNotContain("Fill in a proof of notice", Make(id).SheetText(), StringComparison.Ordinal);

    public static TheoryData<Entry, ProvedNotice> Told() => new()
    {
        { new StopPaymentGiven { Index = 30, On = DayFact.On(Day("2026-05-07")), To = ["p1"], Manner = Manner.CertifiedMail,
            Article = "9407111898765432101269" }, ProvedNotice.StopPayment },
        { new BondNoticeGiven { Index = 30, On = DayFact.On(Day("2026-05-07")), To = ["p5"], Manner = Manner.OvernightCarrier },
            ProvedNotice.Bond },
        { new PaymentDemanded { Index = 30, On = DayFact.On(Day("2026-05-07")), To = ["p2"], Amount = 5m, Manner = Manner.Personal },
            ProvedNotice.PaymentDemand },
        { new StopWorkNoticeGiven { Index = 30, On = DayFact.On(Day("2026-05-07")), To = ["p1", "p2"] }, ProvedNotice.StopWork },
        { new SecurityDemanded { Index = 30, On = DayFact.On(Day("2026-05-07")), Manner = Manner.RegisteredMail }, ProvedNotice.Security },
        { new ActionTold { Index = 30, On = DayFact.On(Day("2026-05-07")), To = ["p1", "p4"], Manner = Manner.ExpressMail },
            ProvedNotice.Action },
    };

    [Theory]
    [MemberData(nameof(Told), DisableDiscoveryEnumeration = true)]
    public void What_the_file_tells_of_the_giving_is_filled_in_and_nothing_else_is_sworn(Entry entry, ProvedNotice kind)
    {
        // Two kinds are in the file: it is asked which.
        var asked = Assert.Single(Refusals("proof-of-notice", _ => Private().With(entry), asOf: Day("2026-06-20")));
        Assert.Equal(("notice-kind-missing", "--kind"), (asked.Id, asked.Where.ToString()));
        Assert.Contains(kind.Words(), asked.There.ToString(), StringComparison.Ordinal);
        var text = Make("proof-of-notice", _ => Private().With(entry), o => o with { Notice = kind }, Day("2026-06-20")).TextOf();
        Assert.Contains("May 7, 2026", text, StringComparison.Ordinal);
        Assert.DoesNotContain("February 20, 2026", text, StringComparison.Ordinal);
    }

    /// <summary>A manner in which no notice is given proves nothing: it is not sworn to.</summary>
    [Fact]
    public void A_notice_sent_by_email_or_on_a_day_not_known_leaves_blanks()
    {
        JobFile Of(DayFact on, Manner manner) => Begun().With(new StopPaymentGiven { Index = 1, On = on, To = ["p1"], Manner = manner });
        Assert.DoesNotContain("2026", Make("proof-of-notice", _ => Of(DayFact.On(Day("2026-02-25")), Manner.Email)).TextOf(),
            StringComparison.Ordinal);
        Assert.DoesNotContain("2026", Make("proof-of-notice", _ => Of(new DayFact.Unknown(), Manner.CertifiedMail)).TextOf(),
            StringComparison.Ordinal);
    }

    /// <summary>Of several owners nobody knows which was told where the file names none.</summary>
    [Fact]
    public void A_notice_of_which_the_file_does_not_say_to_whom_it_went_is_sworn_for_one_possible_person_only()
    {
        var told = new SecurityDemanded { Index = 1, On = DayFact.On(Day("2026-02-25")), Manner = Manner.CertifiedMail };
        Assert.Contains("February 25, 2026", Make("proof-of-notice", _ => Begun().With(told)).TextOf(), StringComparison.Ordinal);
        var two = Begun() with { Parties = [.. Begun().Parties, new Party { Id = "p9", Capacity = PartyCapacity.Owner, Name = "Ida Quill",
            Address = "12 Weir Street, Davis, CA 95616" }] };
        Assert.DoesNotContain("February", Make("proof-of-notice", _ => two.With(told)).TextOf(), StringComparison.Ordinal);
    }

    /// <summary>A notice made now has not been given yet: an earlier one of the same kind is not its proof.</summary>
    [Fact]
    public void The_proof_that_comes_with_a_new_notice_is_blank() => Assert.DoesNotContain("2026",
        Make("preliminary-notice", _ => Private(), asOf: Day("2026-03-10")).TextOf(1), StringComparison.Ordinal);

    /// <summary>Whoever gets a notice looks for a number to call; the owner's demand for release is not the claimant's paper.</summary>
    [Theory]
    [MemberData(nameof(GivenPapers))]
    public void A_paper_that_the_claimant_gives_says_how_to_reach_it(string id)
    {
        var made = Make(id, j => j with { Claimant = j.Claimant with { Telephone = "(530) 555-0142", Email = "credit@quarry.example" } });
        Assert.Equal(id != "release-demand", made.Says("Telephone (530) 555-0142, e-mail credit@quarry.example"));
        Assert.False(Make(id).Says("Telephone"));
    }
}
