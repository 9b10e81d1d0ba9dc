using Stringline.Law;
using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Office.Batch;
using Stringline.Office.Import;
using Stringline.Papers;
using Stringline.Papers.Catalogue;
using Stringline.Tables.Sheets;
using Stringline.Testing;
using Stringline.Web.Papers;

namespace Stringline.Cli.Tests;

/// <summary>Each door says in its own words what a refusal names, and says whole what somebody typed.</summary>
public sealed class RefusalsAtTheDoorsTests
{
    // Each piece looks like something that a door has words for.
    private const string Typed =
        "\"add-on\" --through 2026-05-31, Inc. (work.commenced), \"paymentCleared\" of work.site.street; add furnishing-ended (see "
            + "lien-right)";

    private static readonly JobFile Job = Named(Typed);

    [Fact]
    public void What_somebody_typed_is_said_whole_at_every_door()
    {
        var refusal = new Refusal("typed", Place.Journal, $"{Typed} has no address.", $"Ask {Typed} for it.", "");
        var expected = $"{Typed} has no address. Ask {Typed} for it.";
        Assert.Equal("entries: " + expected, refusal.ToString());
        Assert.Equal("entries: " + expected, PageWords.Of(refusal));
        Assert.Equal($"Ask {Typed} for it.", BatchWords.Of(refusal.Right));
    }

    [Fact]
    public void The_name_of_a_party_is_said_whole_in_a_refusal_of_a_paper()
    {
        var made = PaperMaker.Make(PaperCatalogue.Find("preliminary-notice")!, Job,
            Assessment.Of(Job, new LocalDate(2026, 3, 2), OpenDays.Statutory), PaperOptions.None);
        var refusal = Assert.Single(Assert.IsType<PacketOutcome.Refused>(made).Refusals, r => r.Id == "recipient-address-missing");
        Assert.StartsWith(Typed, refusal.There.ToString(), StringComparison.Ordinal);
        Assert.StartsWith(Typed, PageWords.Of(refusal.There), StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_paper_is_told_has_one_word_that_each_door_shows_in_its_own_way() => Assert.All(Enum.GetValues<PaperInput>(), input =>
    {
        Sentence sentence = $"Say {new InputName(input)}.";
        Assert.Equal($"Say {PaperOption.Of(input).Option.Name}.", sentence.ToString());
        Assert.Equal($"Say “{PaperField.Of(new PaperAsk(input)).Name}”.", PageWords.Of(sentence));
        Assert.Equal($"Say {input.Word()}.", BatchWords.Of(sentence));
        Assert.Equal("#field-" + input.Word(),
            FixLink.Of(new Refusal("any", Place.Of(input), sentence, sentence, ""), null!, null!)!.Address);
    });

    [Fact]
    public void A_page_leaves_out_the_option_before_what_it_may_say()
    {
        Sentence sentence = $"Say the day{ForTheAsker.SuchAs(PaperInput.Day, new LocalDate(2026, 5, 18))}, or \"{Typed}\".";
        Assert.Equal($"Say the day, such as --day 2026-05-18, or \"{Typed}\".", sentence.ToString());
        Assert.Equal($"Say the day, such as 2026-05-18 (Mon), or \"{Typed}\".", PageWords.Of(sentence));
    }

    [Fact]
    public void The_page_of_imports_has_words_for_all_that_a_reason_names_and_says_a_cell_whole()
    {
        const string cell = "Lot 4 --county \"days\" in a mapping, see --dry-run";
        var asks = typeof(ImportAsk).GetProperties(System.Reflection.BindingFlags.Public | System.Reflection.BindingFlags.Static)
            .Select(property => (ImportAsk)property.GetValue(null)!).ToList();
        Assert.Equal(9, asks.Count);
        Assert.All(asks, ask =>
        {
            var row = new RefusedRow(2, [$"job {cell} is not in the store: {ask}"]);
            Assert.Equal($"Job {cell} is not in the store: {ask.Name}.", row.Why);
            Assert.StartsWith($"Job {cell} is not in the store: ", DeskWords.Of(row), StringComparison.Ordinal);
            Assert.DoesNotContain("--", DeskWords.Of(row)[$"Job {cell}".Length..], StringComparison.Ordinal);
        });
    }

    /// <summary>
    /// No door looks for words in a sentence. What may: a folder's name is taken out of what the system says, file names and heads of a
    /// table are brought into one form, and the faults of a job file have names in them that the reader puts there as text.
    /// </summary>
    [Fact]
    public void No_door_searches_a_sentence()
    {
        string[] doors =
            ["FixLink.cs", "PageWords.cs", "RefusalInWords.cs", "DeskWords.cs", "BatchWords.cs", "BatchReport.cs", "PlainWords.cs",
            "GuideSheet.cs", "CounterSheet.cs", "Refusal.cs", "Place.cs", "Named.cs", "ImportSummary.cs", "SheetException.cs"];
        var files = Directory.EnumerateFiles(Repository.Path("src"), "*.cs", SearchOption.AllDirectories)
            .Where(file => doors.Contains(Path.GetFileName(file)) && !file.Contains("/obj/", StringComparison.Ordinal)).ToList();
        Assert.Equal(doors.Order(StringComparer.Ordinal), files.Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.All(files, file => Assert.DoesNotMatch(@"Regex|\.Replace\(|\.IndexOf\(", File.ReadAllText(file)));
    }

    private static JobFile Named(string owner)
    {
        var job = Assert.IsType<Tables.JobFileResult.Read>(
            Tables.JobFileReader.ReadFile(Repository.Path("data/demo/alder-court.json"))).Job;
        return job with
        {
            Parties = [.. job.Parties.Select(party => party.Capacity == PartyCapacity.Owner
                ? party with { Name = owner, Address = null } : party)],
            Work = job.Work with { Permit = null },
        };
    }
}
