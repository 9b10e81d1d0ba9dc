using System.Globalization;
using Stringline.Law.Plan;

namespace Stringline.Office.Settings;

/// <summary>What the form of settings holds, as typed.</summary>
public sealed class SettingsForm
{
    private const int MostReminders = 6;
    private const int LongestReminder = 180;

    /// <summary>The office's name.</summary>
    public string? Name { get; set; }

    /// <summary>Signers, one a line: name, comma, title.</summary>
    public string? Signers { get; set; }

    /// <summary>Days before a day to act, separated by commas.</summary>
    public string? Reminders { get; set; }

    /// <summary>The folder for the daily backups; blank for one beside the store.</summary>
    public string? BackupFolder { get; set; }

    /// <summary>Calendar days from mailing to recording.</summary>
    public string? MailBacklogDays { get; set; }

    /// <summary>Open days by which the index lags.</summary>
    public string? IndexLagDays { get; set; }

    /// <summary>Open days kept in hand.</summary>
    public string? ReserveDays { get; set; }

    /// <summary>The form for settings.</summary>
    internal static SettingsForm Of(OfficeSettings settings) => new()
    {
        Name = settings.Name,
        Signers = string.Join('\n', settings.Signers.Select(signer => signer.Title is null
            ? signer.Name : $"{signer.Name}, {signer.Title}")),
        Reminders = string.Join(", ", settings.Reminders),
        BackupFolder = settings.BackupFolder,
        MailBacklogDays = settings.Plan.MailBacklogDays.ToString(CultureInfo.InvariantCulture),
        IndexLagDays = settings.Plan.IndexLagDays.ToString(CultureInfo.InvariantCulture),
        ReserveDays = settings.Plan.ReserveDays.ToString(CultureInfo.InvariantCulture),
    };

    /// <summary>The settings, or what is wrong by field.</summary>
    internal (OfficeSettings? Settings, IReadOnlyDictionary<string, string> Faults) Read()
    {
        var faults = new Dictionary<string, string>(StringComparer.Ordinal);
        int Days(string field, string? text, int most)
        {
            if (int.TryParse(text?.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var days) && days <= most)
                return days;
            faults[field] = $"\"{text}\" is no number of days: a whole number from 0 to {most}.";
            return 0;
        }

        var reminders = new SortedSet<int>();
        foreach (var part in (Reminders ?? "").Split([',', ' ', ';'],
            StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out var days) && days is >= 1 and <= LongestReminder)
                reminders.Add(days);
            else
                faults[nameof(Reminders)] =
                    $"\"{part}\" is no number of days: whole numbers from 1 to {LongestReminder}, separated by commas, such as 14, 3.";
        }

        if (reminders.Count > MostReminders)
            faults[nameof(Reminders)] =
                $"{reminders.Count} reminders for each day to act are more than a calendar shows: at most {MostReminders}.";
        var settings = new OfficeSettings
        {
            Name = string.IsNullOrWhiteSpace(Name) ? null : Name.Trim(),
            Signers = [.. (Signers ?? "").ReplaceLineEndings("\n")
                .Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(Signer)],
            Reminders = [.. reminders.Reverse()],
            BackupFolder = string.IsNullOrWhiteSpace(BackupFolder) ? null : BackupFolder.Trim(),
            Plan = new PlanSettings
            {
                MailBacklogDays = Days(nameof(MailBacklogDays), MailBacklogDays, 180),
                IndexLagDays = Days(nameof(IndexLagDays), IndexLagDays, 30),
                ReserveDays = Days(nameof(ReserveDays), ReserveDays, 15),
            },
        };
        if (settings.Name is { Length: > 100 })
            faults[nameof(Name)] = "A name of at most 100 letters; it stands at the head of every page.";
        if (settings.BackupFolder is { } folder && !Path.IsPathFullyQualified(folder))
            faults[nameof(BackupFolder)] =
                $"\"{folder}\" is no full path: write it from the drive or the root on, such as {Path.GetFullPath("/backups")}.";
        return (faults.Count == 0 ? settings : null, faults);
    }

    private static OfficeSigner Signer(string line)
    {
        var comma = line.IndexOf(',', StringComparison.Ordinal);
        return comma < 0
            ? new OfficeSigner(line, null)
            : new OfficeSigner(line[..comma].TrimEnd(), line[(comma + 1)..].Trim() is { Length: > 0 } title ? title : null);
    }
}
