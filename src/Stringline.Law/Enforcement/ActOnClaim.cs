using Stringline.Law.Numbers;

namespace Stringline.Law.Enforcement;

/// <summary>What can be done once a claim of lien is recorded, with what it does.</summary>
/// <param name="Title">What is done, in a few words.</param>
/// <param name="Words">By whom, within which time, and what it does.</param>
/// <param name="Finding">Id of the finding whose day it keeps.</param>
/// <param name="Entry">The kind of entry that tells of it, by its word in the job file.</param>
public sealed record ActOnClaim(string Title, string Words, string Finding, string Entry)
{
    /// <summary>Whether an attorney's paper does it, and none of a claimant's own.</summary>
    public bool IsAttorneys { get; init; }

    /// <summary>The acts, in the order in which they are thought of.</summary>
    /// <param name="numbers">The numbers of the law.</param>
    /// <param name="day">The day whose numbers are told.</param>
    public static IReadOnlyList<ActOnClaim> On(NumberTable numbers, LocalDate day) =>
    [
        new(
            "Sue to enforce the lien",
            $"A lawyer files the action within the {numbers.On(Number.SueOnClaim, day)}. Neither a demand nor a notice stops them.",
            "enforcement.last-day",
            "action-filed") { IsAttorneys = true },
        new(
            "Give credit",
            "Where you and the owner agree on time to pay: both sign, and the notice of credit is recorded within the "
            + $"{numbers.On(Number.RecordCredit, day)}. The time to sue then runs from the end of the credit, at most "
            + $"{numbers.On(Number.SueAfterCompletion, day).Spelled} after completion.",
            "credit.last-day",
            "credit-recorded"),
        new(
            "Notice of pendency of action",
            $"Recorded within {numbers.On(Number.RecordPendency, day)} after the suit is filed; buyers and lenders are bound from its "
                + $"recording.",
            "lis-pendens.last-day",
            "lis-pendens-recorded"),
        new(
            "Release",
            "Once you are paid, or the claim cannot stand: it names the owners and the claim's instrument number, and is signed before a "
            + "notary.",
            "release.when-paid",
            "release-recorded"),
        new(
            "The owner acted",
            "A demand for release, or a release bond in place of the property: enter the day you got it.",
            "release.answer-by",
            "release-demanded"),
    ];
}
