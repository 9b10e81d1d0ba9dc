using Stringline.Office.Entering;
using Stringline.Web.Papers;
using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;

namespace Stringline.Web.Tests;

/// <summary>What a paper says of itself goes together with the forms and options of the desk.</summary>
public sealed class PaperDescriptionTests
{
    public static TheoryData<string> Ids => [.. PaperCatalogue.All.Select(paper => paper.Id)];

    /// <summary>An entry after a paper names to whom it went just where the form of that entry asks it.</summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_entry_after_a_paper_has_a_form_that_asks_what_the_paper_fills_in(string id)
    {
        foreach (var entry in PaperCatalogue.Find(id)!.Entries)
        {
            var form = EntryForms.Find(entry.Kind);
            Assert.NotNull(form);
            Assert.Equal(form.Fields.Any(field => field.Name == "to"), entry.NamesPersons);
            var filled = entry.FilledFrom(new Occasion(Job, Assessed, Named)).Select(Prefilled.Of).ToList();
            Assert.All(filled, field => Assert.Contains(form.Fields, asked => asked.Name == field.Field));
        }
    }

    /// <summary>A sum, a day, words and a number mean another thing on each paper, so each says what.</summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void What_means_another_thing_on_each_paper_is_labeled_by_it(string id) =>
        Assert.All(
            PaperCatalogue.Find(id)!.Asks.Where(ask => MeansAnother.Contains(ask.Input)),
            ask => Assert.NotNull(ask.Label));

    [Theory]
    [InlineData("waiver-8134", "waiver-8132")]
    [InlineData("waiver-8138", "waiver-8136")]
    public void A_paper_that_gives_up_rights_at_once_names_the_one_to_use_until_then(string id, string until) =>
        Assert.Equal(until, PaperCatalogue.Find(id)!.GivesUpAtOnce?.Until.Id);

    [Fact]
    public void No_other_paper_gives_up_rights_at_once() =>
        Assert.Equal(["waiver-8134", "waiver-8138"], PaperCatalogue.All.Where(paper => paper.GivesUpAtOnce is not null).Select(p => p.Id));

    /// <summary>Whom the request names goes before those whom the law names.</summary>
    [Fact]
    public void The_persons_named_with_the_request_go_before_those_of_the_law()
    {
        var entry = PaperCatalogue.Find("preliminary-notice")!.Entries.Single();
        string[] To(PaperOptions told) =>
            [.. entry.FilledFrom(new Occasion(Job, Assessed, told)).OfType<Filled.Person>().Select(p => p.Party)];
        Assert.Equal(["owner", "direct"], To(PaperOptions.None));
        Assert.Equal(["owner"], To(Named));
    }

    private static readonly PaperInput[] MeansAnother = [PaperInput.Amount, PaperInput.Words, PaperInput.Day];

    private static readonly PaperOptions Named = new()
    {
        To = ["owner"], Amount = 1_000m, Through = new LocalDate(2026, 5, 1), PaymentCleared = new LocalDate(2026, 5, 2), Bonded = true,
        Until = new LocalDate(2026, 12, 31), Disputed = 5m,
    };

    private static readonly DayFact First = DayFact.On(new LocalDate(2026, 4, 1));

    private static readonly JobFile Job = new()
    {
        Name = "A job",
        Work = new Work { Kind = WorkKind.Private, Site = new Site { County = "Yolo" } },
        Claimant = new Claimant { Name = "A supplier", Role = ClaimantRole.Supplier, HiredBy = "sub" },
        Parties =
        [
            new Party { Id = "owner", Capacity = PartyCapacity.Owner, Name = "An owner" },
            new Party { Id = "direct", Capacity = PartyCapacity.DirectContractor, Name = "A contractor" },
            new Party { Id = "sub", Capacity = PartyCapacity.Subcontractor, Name = "A subcontractor" },
        ],
        Contract = new Contract { Price = 10_000m },
        Entries = [new Furnished { Index = 0, On = First, Until = First, Amount = 10_000m }],
    };

    private static readonly Assessment Assessed = UseCases.Assess(Job, new LocalDate(2026, 5, 6));
}
