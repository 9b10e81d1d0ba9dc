namespace Stringline.Desk.Entering;

/// <summary>The forms of all kinds of entry. A new kind of entry is one more row, in the table of its group.</summary>
internal static class EntryForms
{
    /// <summary>Every form, in the order of the start page.</summary>
    public static IReadOnlyList<EntryForm> All { get; } =
        [.. Forms.WorkForms.All, .. Forms.MoneyForms.All, .. Forms.NoticeForms.All, .. Forms.OwnerForms.All, .. Forms.CompletionForms.All, .. Forms.ClaimForms.All, .. Forms.DisputeForms.All, .. Forms.PublicForms.All, TakeBack];

    /// <summary>Takes an entry back; it is reached from the entry and not from the start page.</summary>
    public static EntryForm TakeBack => new("withdrawn", "Take an entry back", "The file itself", "An entry that was made by mistake counts no more. It stays in the journal, with who took it back and when.")
    {
        DayLabel = "The day you take it back",
        StartsToday = true,
    };

    /// <summary>The form of a kind; null where there is none.</summary>
    public static EntryForm? Find(string? what) => All.FirstOrDefault(form => form.What == what);
}
