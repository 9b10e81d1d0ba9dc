namespace Stringline.Papers.ClaimOfLien;

/// <summary>A recorded claim on which a new claim of mechanics lien stands.</summary>
/// <param name="Words">The recorded claim in words.</param>
/// <param name="MailedAfter">A copy mailed on or before that day is not this claim's; null where no such day is known.</param>
internal abstract record EarlierClaim(string Words, LocalDate? MailedAfter)
{
    /// <summary>The new claim's title.</summary>
    public abstract string PaperTitle { get; }

    /// <summary>What sets the new claim apart from a first one, in a sentence: <c>amended</c>.</summary>
    public abstract string Kind { get; }

    /// <summary>The new claim's file.</summary>
    public abstract string FileName { get; }

    /// <summary>What the new claim says of it.</summary>
    public abstract string Sentence { get; }

    /// <summary>The section under the title.</summary>
    public virtual string Heads => ClaimPaper.Heads;

    /// <summary>Id of the finding whose day governs the new claim.</summary>
    public virtual string Deadline => ClaimPaper.Deadline;

    /// <summary>What the counter sheet says of it.</summary>
    public abstract string Warning { get; }
}

/// <summary>What a claim amends.</summary>
/// <param name="Words">The recorded claim in words.</param>
/// <param name="MailedAfter">The day on which it was recorded: a copy mailed on or before it is that claim's.</param>
internal sealed record Amendment(string Words, LocalDate? MailedAfter)
    : EarlierClaim(Words, MailedAfter)
{
    /// <summary>Title.</summary>
    public const string Title = "Amended Claim of Mechanics Lien";

    /// <summary>The day to plan on for an action on the claim that is amended; null where the assessment has none.</summary>
    public LocalDate? SueBy { get; init; }

    /// <inheritdoc/>
    public override string PaperTitle => Title;

    /// <inheritdoc/>
    public override string Kind => "amended";

    /// <inheritdoc/>
    public override string FileName => "amended-claim-of-mechanics-lien.pdf";

    /// <inheritdoc/>
    public override string Sentence => $"This claim amends the claim of mechanics lien {Words}.";

    /// <inheritdoc/>
    public override string Warning =>
        "An amended claim is treated like a first one: served anew, with an affidavit of its own, and recorded within the time. Whether "
        + "one recorded later reaches back to the first has not been verified here: ask counsel. Until the first claim is released, "
        + $"plan to sue by its day{(SueBy is { } day ? $", {PaperText.DayOfWeek(day)}" : "")}, not by the later day of this one.";
}

/// <summary>The design professional's lien from which a claim is converted (Civ. Code § 8319).</summary>
/// <param name="Words">The recorded design lien in words.</param>
/// <param name="MailedAfter">The day on which work commenced: a copy mailed on or before it is not this claim's.</param>
/// <param name="Unpaid">What is unpaid of it, dollars and cents.</param>
internal sealed record Conversion(string Words, LocalDate? MailedAfter, decimal Unpaid)
    : EarlierClaim(Words, MailedAfter)
{
    /// <summary>Title.</summary>
    public const string Title = "Claim of Mechanics Lien, Converted";

    /// <summary>The contract, as the design lien names it; null where the file has none.</summary>
    public string? Contract { get; init; }

    /// <inheritdoc/>
    public override string PaperTitle => Title;

    /// <inheritdoc/>
    public override string Kind => "converted";

    /// <inheritdoc/>
    public override string FileName => "converted-claim-of-mechanics-lien.pdf";

    /// <inheritdoc/>
    public override string Sentence =>
        $"This claim is a converted design professional lien (Civil Code section 8319). It converts the claim of design professional’s "
        + $"lien {Words}, and is for the amount of that lien that is unpaid.";

    /// <inheritdoc/>
    public override string Heads => "California Civil Code sections 8319 and 8416";

    /// <inheritdoc/>
    public override string Deadline => Law.DesignLien.Conversion.Id;

    /// <inheritdoc/>
    public override string Warning =>
        "This claim needs no preliminary notice (§ 8319(a)(4)). It is effective from its own recording, and the 90 days to sue run from "
        + "that day. An action on the design lien, if one was filed, is on a lien that has ended: bring this claim into it.";
}
