using Stringline.Law.Facts;

namespace Stringline.Office.Entering;

/// <summary>The forms of all kinds of entry, made from the descriptions of the kinds.</summary>
internal static class EntryForms
{
    /// <summary>Every form, in the order of the start page.</summary>
    public static IReadOnlyList<EntryForm> All { get; } = [.. EntryKinds.InForms.Select(EntryForm.Of)];

    /// <summary>Takes an entry back; it is reached from the entry and not from the start page.</summary>
    public static EntryForm TakeBack { get; } = All.Single(form => form.What == EntryKinds.Withdrawn.Name);

    /// <summary>The form of a kind; null where there is none.</summary>
    public static EntryForm? Find(string? what) => All.FirstOrDefault(form => form.What == what);
}
