using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>
/// The papers that hold the money (Civ. Code § 9406(a)): a counteraffidavit served on the entity within the time, "together with proof of
/// service of a copy" on the direct contractor. The affidavit came on Monday 1 December 2025 and asks for an answer by Friday the 12th.
/// Entries 0 to 3 are the furnishing, the two notices and the affidavit; the answers follow.
/// </summary>
public sealed class CounterPapersTests
{
    private static JobBuilder Served(string answerBy = "2025-12-12") => new JobBuilder().PublicWork().Furnished("2025-08-05", 6430m)
        .Notice("2025-08-14", Manner.CertifiedMail, "city", "direct").StopPaymentGiven("2025-11-03", 6430m, false, "city")
        .Add(i => new ReleaseAffidavitServed { Index = i, On = When("2025-12-01"), Manner = Manner.CertifiedMail, AnswerBy = Day(answerBy),
            Amount = 6430m });

    private static JobBuilder Answer(JobBuilder job, string on, bool? proof, Manner? manner, params string[] to) =>
        job.Add(i => new CounteraffidavitServed { Index = i, On = When(on), To = to.Length == 0
            ? ["city", "direct"] : to, Manner = manner, Proof = proof });

    private static Finding Last(JobBuilder job, string asOf = "2025-12-15") => job.On(asOf).Get("summary-release.answer-last-day");

    // What was served before the affidavit came answers nothing; on its day, or on a day in doubt that may be later, it may.
    [Theory]
    [InlineData("2025-11-30", Standing.Lost)]
    [InlineData("2025-12-01", Standing.Kept)]
    [InlineData("2025-11-28..2025-11-30", Standing.Lost)]
    [InlineData("2025-11-28..2025-12-03", Standing.Kept)]
    [InlineData("2025-12-10..2025-12-12", Standing.Kept)]
    [InlineData("2025-12-10..2025-12-13", Standing.InDoubt)]
    [InlineData("2025-12-13..2025-12-14", Standing.Lost)]
    [Proves("Civ. Code § 9406(a)")]
    public void The_answer_is_served_after_the_affidavit_came_and_by_the_day_stated(string on, Standing expected)
    {
        var last = Last(Answer(Served(), on, true, Manner.Personal));
        Assert.Equal(expected, last.Standing);
        Assert.Equal(expected == Standing.Lost, last.Says("Lost for the money withheld, unless the papers"));
    }

    // With or without proof of service of the copy, whichever came first: the paper that has it counts, and one in time before one too
    // late.
    [Theory]
    [InlineData("2025-12-10", null, "2025-12-12", true, Standing.Kept, -1)]
    [InlineData("2025-12-10", true, "2025-12-11", null, Standing.Kept, -1)]
    [InlineData("2025-12-10", true, "2025-12-13", true, Standing.Kept, -1)]
    [InlineData("2025-12-10", true, "2025-12-11", false, Standing.Kept, -1)]
    [InlineData("2025-12-10", false, "2025-12-12", true, Standing.Kept, -1)]
    [InlineData("2025-12-10", false, "2025-12-12", null, Standing.InDoubt, 5)]
    [InlineData("2025-12-10", null, "2025-12-12", false, Standing.InDoubt, 4)]
    [InlineData("2025-12-10", null, "2025-12-12", null, Standing.InDoubt, 4)]
    [InlineData("2025-12-10", null, "2025-12-13", true, Standing.InDoubt, 4)] // the one surely good came too late
    [InlineData("2025-12-10", false, "2025-12-13", true, Standing.Lost, -1)]
    [InlineData("2025-12-13", null, "2025-12-15", true, Standing.Lost, -1)]
    [Proves("Civ. Code § 9406(a)")]
    public void Of_two_answers_the_one_that_serves_better_counts(string first, bool? firstProof, string second, bool? secondProof,
        Standing expected, int asked)
    {
        var job = Answer(Answer(Served(), first, firstProof, Manner.Personal), second, secondProof, Manner.Personal);
        var last = Last(job, "2025-12-16");
        Assert.Equal(expected, last.Standing);
        Assert.Equal(asked < 0 ? [] : [asked], last.Corrected("(counteraffidavit-served.proof)"));
    }

    // Left and mailed on the 9th it is complete on the 14th (Civ. Code § 8116(c)); handed over on the 12th it is in time.
    [Theory]
    [InlineData("2025-12-12", Standing.Kept)]
    [InlineData("2025-12-13", Standing.Lost)]
    [Proves("Civ. Code § 9406(a)")]
    public void Of_two_answers_with_proof_the_one_first_complete_counts(string byHand, Standing expected) =>
        Assert.Equal(expected,
            Last(Answer(Answer(Served(), "2025-12-09", true, Manner.Substituted), byHand, true, Manner.Personal)).Standing);

    [Theory]
    [InlineData(true, "city", true, false, false)]
    [InlineData(true, "direct", false, true, false)]
    [InlineData(true, "city,direct", false, false, false)]
    [InlineData(false, "city,direct", false, false, true)]
    [InlineData(null, "city,direct", false, false, false)]
    [InlineData(true, "sub", false, false, false)]
    [InlineData(true, "nobody", false, false, false)]
    [Proves("Civ. Code § 9406(a)")]
    public void What_is_missing_of_the_three_is_told(bool? proof, string to, bool noCopy, bool noEntity, bool noProof)
    {
        var last = Last(Answer(Served(), "2025-12-10", proof, Manner.Personal, to.Split(',')), "2025-12-11");
        Assert.Equal(to == "city,direct" && proof == true ? Standing.Kept : Standing.Open, last.Standing);
        Assert.Equal(noCopy, last.Says("no copy to the direct contractor"));
        Assert.Equal(noEntity, last.Says("no counteraffidavit served on the public entity"));
        Assert.Equal(noProof, last.Says("went without proof of service of the copy"));
        Assert.Equal([4], last.EntriesOf("Counteraffidavit served, complete 2025-12-10"));
    }

    [Fact]
    [Proves("Civ. Code § 9406(a)")]
    public void One_that_went_in_no_good_manner_is_passed_over_and_told()
    {
        var last = Last(Answer(Served(), "2025-12-10", true, Manner.Email));
        Assert.Equal((Standing.Lost, true), (last.Standing, last.PassesOver("in a manner that is none")));
        Assert.Equal([4], last.EntriesOf("in a manner that is none"));
        Assert.False(last.Says("Counteraffidavit served, complete"));
        Assert.False(Last(Answer(Served(), "2025-12-10", true, Manner.ExpressMail)).PassesOver("in a manner that is none"));
    }

    // Without its proof the paper does not hold the money, however it went: nothing is left to ask.
    [Theory]
    [InlineData(true, null, Standing.InDoubt, new[] { 4 }, new int[0])]
    [InlineData(null, null, Standing.InDoubt, new[] { 4 }, new[] { 4 })]
    [InlineData(null, Manner.Personal, Standing.InDoubt, new int[0], new[] { 4 })]
    [InlineData(false, null, Standing.Lost, new int[0], new int[0])]
    [InlineData(true, Manner.Personal, Standing.Kept, new int[0], new int[0])]
    [Proves("Civ. Code § 9406(a)")]
    public void Manner_and_proof_are_asked_only_where_they_decide(bool? proof, Manner? manner, Standing expected, int[] asksManner,
        int[] asksProof)
    {
        var last = Last(Answer(Served(), "2025-12-10", proof, manner));
        Assert.Equal(expected, last.Standing);
        Assert.Equal(asksManner, last.Corrected("(counteraffidavit-served.manner)"));
        Assert.Equal(asksProof, last.Corrected("(counteraffidavit-served.proof)"));
        Assert.Equal(asksProof.Length > 0, last.Says("unless the proof of service went with it"));
    }

    [Fact]
    [Proves("Civ. Code § 9406(a)")]
    public void Of_a_paper_and_a_copy_that_went_apart_each_is_asked_about()
    {
        var apart = Last(Answer(Answer(Served(), "2025-12-09", null, null, "direct"), "2025-12-10", true, null, "city"));
        Assert.Equal((Standing.InDoubt, "4,5"),
            (apart.Standing, string.Join(',', apart.Corrected("(counteraffidavit-served.manner)").Order())));
        Assert.Equal([5], Last(Answer(Answer(Served(), "2025-12-09", null, Manner.Personal, "direct"), "2025-12-10", true, null, "city"))
            .Corrected("(counteraffidavit-served.manner)"));
    }

    // The copy that came first decides; the later of paper and copy is the day on which all was complete.
    [Theory]
    [InlineData("2025-12-12", "2025-12-11", Standing.Kept)]
    [InlineData("2025-12-13", "2025-12-11", Standing.Lost)]
    [InlineData("2025-12-11", "2025-12-13", Standing.Lost)]
    [Proves("Civ. Code § 9406(a)")]
    public void All_of_it_is_complete_with_the_later_of_paper_and_copy(string copy, string paper, Standing expected) =>
        Assert.Equal(expected,
            Last(Answer(Answer(Served(), copy, null, Manner.Personal, "direct"), paper, true, Manner.Personal, "city")).Standing);

    // An unanswered question changes nothing where the paper is too late on every reading: more than twenty days, the 21st and the 22nd.
    [Theory]
    [InlineData("2025-12-12", "2025-12-12", Standing.InDoubt)]
    [InlineData("2025-12-12", "2025-12-13", Standing.Lost)]
    [InlineData("2025-12-22", "2025-12-21", Standing.InDoubt)]
    [InlineData("2025-12-22", "2025-12-22", Standing.InDoubt)]
    [InlineData("2025-12-22", "2025-12-23", Standing.Lost)]
    [Proves("Civ. Code § 9404")]
    public void What_is_not_known_of_the_answer_puts_it_in_doubt_only_while_it_may_be_in_time(string answerBy, string on, Standing expected)
    {
        Assert.Equal(expected, Last(Answer(Served(answerBy), on, null, Manner.Personal), "2025-12-29").Standing);
        Assert.Equal(expected, Last(Answer(Served(answerBy), on, true, null), "2025-12-29").Standing);
    }
}
