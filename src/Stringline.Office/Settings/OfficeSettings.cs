using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Stringline.Law.Plan;
using Stringline.Store;

namespace Stringline.Office.Settings;

/// <summary>Somebody who signs for the office.</summary>
/// <param name="Name">Name as typed under the signature.</param>
/// <param name="Title">Title or capacity; null for one who signs for himself or herself.</param>
internal sealed record OfficeSigner(string Name, string? Title);

/// <summary>What an office sets once for all its desks. It lies in the store, as one JSON document.</summary>
internal sealed record OfficeSettings
{
    /// <summary>Nothing set.</summary>
    public static OfficeSettings Default { get; } = new();

    /// <summary>The office's name, for the head of every page; null where none is set.</summary>
    public string? Name { get; init; }

    /// <summary>Who signs for the office.</summary>
    public ImmutableList<OfficeSigner> Signers { get; init; } = [];

    /// <summary>
    /// Days before a day to act on which the calendar reminds, most days first. Common practice, no source: two weeks and three days.
    /// </summary>
    public ImmutableList<int> Reminders { get; init; } = [14, 3];

    /// <summary>The folder for the daily backups; null for one beside the store.</summary>
    public string? BackupFolder { get; init; }

    /// <summary>How tables of the office's accounting systems are read, by name.</summary>
    public ImmutableList<SavedMapping> Mappings { get; init; } = [];

    /// <summary>What plans reckon with.</summary>
    public PlanSettings Plan { get; init; } = PlanSettings.Default;

    /// <summary>Whether what the office had set is damaged, so that these are the defaults.</summary>
    [JsonIgnore]
    public bool AreDamaged { get; init; }

    /// <summary>What is said where they are.</summary>
    public const string DamagedWords =
        "What the office had set is damaged, so everything is reckoned with what the program starts with: no name, no signers, reminders "
            + "14 and 3 days "
        + "before, the usual days for mail, index and reserve. Set it anew on the desk’s page of settings and keep it there.";

    /// <summary>What the office has set; the defaults where it has set nothing, or where it is damaged.</summary>
    public static OfficeSettings Of(IJournal journal) => Of(journal.ReadSettings());

    /// <summary>Settings from their document.</summary>
    /// <param name="document">The document; null for the defaults.</param>
    public static OfficeSettings Of(string? document)
    {
        if (document is null)
            return Default;
        try
        {
            return JsonSerializer.Deserialize(document, SettingsJson.Default.OfficeSettings)
                ?? throw new JsonException("null");
        }
        catch (Exception e) when (e is JsonException or ArgumentException)
        {
            // No page, list or calendar stops for it; each says so.
            return Default with { AreDamaged = true };
        }
    }

    /// <summary>The document that is stored.</summary>
    public string Document() => JsonSerializer.Serialize(this, SettingsJson.Default.OfficeSettings);
}
