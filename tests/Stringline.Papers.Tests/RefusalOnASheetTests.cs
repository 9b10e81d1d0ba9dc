using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Papers.Catalogue;
using Stringline.Papers.DisputedClaim;
using Stringline.Papers.Writing;

namespace Stringline.Papers.Tests;

/// <summary>A printed sheet says a refusal for somebody who has neither the job file nor the command line before the eye.</summary>
public sealed class RefusalOnASheetTests
{
    private const string Typed =
        "\"add-on\" --through 2026-05-31, Inc. (work.commenced), \"paymentCleared\" of work.site.street; add furnishing-ended "
            + "(notice-given)";

    private static readonly JobFile Job = PaperJobs.Private();

    [Fact]
    public void What_somebody_typed_is_said_whole() => Assert.Equal($"What was entered: {Typed} has no address. Ask {Typed}.",
        RefusalInWords.Whole(Job, Job.Assessed(), new Refusal("typed", Place.Journal, $"{Typed} has no address.", $"Ask {Typed}.", "")));

    [Fact]
    public void What_a_sentence_names_is_said_as_a_person_calls_it()
    {
        (Sentence Sentence, string Sheet)[] all =
        [
            ($"Say so with {new InputName(PaperInput.To, PaperInput.Bonded)}.", "Say so with the request."),
            ($"Say it{ForTheAsker.SuchAs(PaperInput.Through, new LocalDate(2026, 5, 31))}.", "Say it."),
            ($"Say it: {new InputTold(PaperInput.PaymentCleared, new LocalDate(2026, 5, 31))}.", "Say it: 2026-05-31."),
            ($"Say it: {new InputTold(PaperInput.Words, "The notice claims")}.", "Say it: “The notice claims”."),
            ($"Printed by {new DraftName()}.", "Printed by the request."),
            ($"Add {new KindName("furnishing-ended")}.", $"Add “{EntryName.Find("furnishing-ended")}”."),
            ($"No {new FileWord(PartyCapacity.PublicEntity)}, no {new FileWord("paymentCleared")}.", "No “public entity”, no “payment "
                + "cleared”."),
            ($"Say {new FieldSaid("reputed", "true")}.", "Say that it is only reputed."),
            ($"Name {new HeadField("work.permit.ownerAddress")}.", "Name owner address."),
            ($"Make {new PaperName(ClaimRequestPaper.Paper, The: true)}.", $"Make the paper “{ClaimRequestPaper.Paper.Title}”."),
            ($"Make the paper {new PaperWord(ClaimRequestPaper.Paper)}.", $"Make the paper “{ClaimRequestPaper.Paper.Title}”."),
        ];
        Assert.All(all, said => Assert.Equal(said.Sheet, RefusalInWords.Said(said.Sentence)));
    }

    [Fact]
    public void Every_place_has_words_or_needs_none()
    {
        (Place Place, string Words)[] all =
        [
            (Place.Of(PaperInput.To, PaperInput.WholeWork), ""), (Place.Assessment, ""), (Place.Demand, "The amount: "),
            (Place.Parties, "The parties: "), (new Place.OfJournal("paid"), "What was entered: "),
            (Place.Of(Job.Entries[0], "on"), $"What was entered for {PaperText.Day(Job.Entries[0].On.Earliest!.Value)}: "),
            (Place.Of(Job, Job.Parties[1], "address"), $"{Job.Parties[1].Name}: "),
            (new Place.OfHead("claimant.hiredBy"), "Who hired the claimant: "), (new Place.OfHead("work.site.county"), "The site: "),
            (new Place.OfFinding("no-such-finding"), ""), (Place.PaperTexts, "The texts of the paper: "),
        ];
        Assert.Equal(typeof(Place).GetNestedTypes().Length, all.Select(one => one.Place.GetType()).Distinct().Count());
        Assert.All(all, one => Assert.Equal($"{one.Words}Nothing is there.",
            RefusalInWords.There(Job, Job.Assessed(), new Refusal("any", one.Place, $"Nothing is there.", $"Add it.", ""))));
    }
}
