using Stringline.Papers.Layout;

namespace Stringline.Papers.Writing;

/// <summary>How the claimant signs, and verifies (Civ. Code § 8066: an agent may, within the agent's authority).</summary>
internal static class Signing
{
    /// <summary>The claimant's signature; a missing signer is a reason against the paper.</summary>
    /// <param name="leaf">The paper.</param>
    /// <param name="matter">The matter.</param>
    /// <param name="section">The section that asks for it.</param>
    /// <param name="called">What the paper calls the claimant of the job file: "claimant", unless another one is the claimant
    /// there.</param>
    public static void Claimant(PaperBuilder leaf, Matter matter, string section, string called = "claimant") =>
        leaf.Sign(Signer(matter, section), Under(matter, called));

    /// <summary>The verification, in the form of Code Civ. Proc. §§ 446 and 2015.5.</summary>
    /// <param name="leaf">The paper.</param>
    /// <param name="matter">The matter.</param>
    /// <param name="paper">What the paper is called.</param>
    /// <param name="section">The section that asks for it.</param>
    /// <param name="called">What the paper calls the claimant of the job file.</param>
    /// <param name="shortly">What the oath calls the paper once it is named; null takes the same.</param>
    /// <param name="saysReputed">
    /// Whether the paper names somebody as reputed, where that is said behind the oath too; null where all of it stands before.
    /// </param>
    public static void Verify(PaperBuilder leaf, Matter matter, string paper, string section, string called = "claimant",
        string? shortly = null,
        bool? saysReputed = null)
    {
        var facts = matter.Facts;
        var who = facts.SignsForSelf
            ? $"I am the {called} named in the foregoing {paper}."
            : $"I am {facts.SignerTitle ?? "the agent"} of {facts.Claimant}, the {called} named in the foregoing {paper}, and I am "
            + $"authorized to make this verification for the {called}.";
        leaf.Oath("VERIFICATION", $"{who} I have read the {shortly ?? paper} and know its contents. "
            + OfKnowledge(saysReputed ?? SaysReputed(leaf)),
            Signer(matter, section), Under(matter, called));
    }

    /// <summary>
    /// What is sworn: own knowledge, but for what the paper states on belief, such as who is only reputed to be the owner
    /// (Code Civ. Proc. § 446(a)).
    /// </summary>
    /// <param name="saysReputed">Whether the paper names somebody as reputed.</param>
    private static string OfKnowledge(bool saysReputed) => saysReputed
        ? "The statements in it are true of my own knowledge, except as to who is named as reputed, which is stated on information and "
        + "belief, and as to that I believe it to be true."
        : "The statements in it are true of my own knowledge.";

    // What the paper was given to say so far: it comes before its oath.
    private static bool SaysReputed(PaperBuilder leaf) => leaf.Texts.Any(t => t.Contains("(reputed ", StringComparison.Ordinal));

    /// <summary>The owner's verification; the job file is the claimant's and does not know who signs for the owner.</summary>
    /// <param name="leaf">The paper.</param>
    /// <param name="paper">What the paper is called.</param>
    /// <param name="several">Whether the paper names several owners.</param>
    public static void VerifyOwner(PaperBuilder leaf, string paper, bool several)
    {
        leaf.Blank("Verification: mark who signs it");
        leaf.Add(new Together(
            new Heading("VERIFICATION", TypeStyle.Heading) { Before = 20 },
            new Paragraph("I am (mark one):", TypeStyle.Body) { Before = 9, WithNext = true },
            new TickBox($"{(several ? "one of the owners" : "the owner")} named in the foregoing {paper}.", false) { Indent = 18 },
            new TickBox($"authorized to make this verification for {(several ? "one of the owners" : "the owner")} named in it.", false)
            { Indent = 18 },
            new Paragraph($"I have read the {paper} and know its contents. The statements in it are true of my own knowledge.",
                TypeStyle.Body) { Before = 9 },
            new Paragraph("I declare under penalty of perjury under the laws of the State of California that the foregoing is true and "
                + "correct.", TypeStyle.Body),
            new Signature(null, $"Owner, or title and authority to sign for {(several ? "an" : "the")} owner")));
    }

    private static string? Signer(Matter matter, string section) =>
        matter.Need(matter.Facts.Signer, "signer-missing", new Place.OfHead("claimant.signer.name"),
            $"Add the name of the person who signs; it is typed under the signature.", section);

    private static IReadOnlyList<string> Under(Matter matter, string called) => matter.Facts switch
    {
        { SignsForSelf: true } => [$"{char.ToUpperInvariant(called[0])}{called[1..]}"],
        { SignerTitle: { } title } facts => [$"{title}, for {called} {facts.Claimant}"],
        var facts => [$"For {called} {facts.Claimant}"],
    };
}
