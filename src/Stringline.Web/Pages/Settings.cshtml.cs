using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Stringline.Office.Backups;
using Stringline.Office.Settings;
using Stringline.Law.Recording;
using Stringline.Papers.Fees;

namespace Stringline.Web.Pages;

/// <summary>What the office sets once for all its desks, and the tables of counties that the program reckons with.</summary>
internal sealed class SettingsModel(Desk office, DailyBackup backup) : PageModel
{
    private const int MostCounties = 58;

    /// <summary>The fields of the form.</summary>
    [BindProperty]
    public SettingsForm Form { get; set; } = new();

    /// <summary>The document that the form was shown with; blank where nothing was set.</summary>
    [BindProperty]
    public string? Seen { get; set; }

    /// <summary>What is wrong, by field.</summary>
    public IReadOnlyDictionary<string, string> Faults { get; private set; } = new Dictionary<string, string>();

    /// <summary>Whether somebody else changed the settings in the meantime.</summary>
    public bool Overtaken { get; private set; }

    /// <summary>Whether they were just written.</summary>
    [BindProperty(SupportsGet = true)]
    public bool Kept { get; set; }

    /// <summary>The recorders of the counties in which the office has jobs.</summary>
    public IReadOnlyList<RecorderOffice> Used { get; private set; } = [];

    /// <summary>All others.</summary>
    public IReadOnlyList<RecorderOffice> Others { get; private set; } = [];

    /// <summary>How it stands with the backups.</summary>
    public BackupStanding Backups => backup.Standing();

    /// <summary>Whether this desk makes any.</summary>
    public bool MakesBackups => backup.IsOn;

    /// <summary>Shows them.</summary>
    public void OnGet()
    {
        Seen = office.Journal.ReadSettings();
        Form = SettingsForm.Of(OfficeSettings.Of(Seen));
        ReadCounties();
    }

    /// <summary>Writes them, or shows the form again with what is wrong beside each field.</summary>
    public IActionResult OnPost()
    {
        ReadCounties();
        var (settings, faults) = Form.Read();
        Faults = faults;
        if (settings is null)
            return Page();
        var seen = string.IsNullOrEmpty(Seen) ? null : Seen;
        settings = settings with { Mappings = OfficeSettings.Of(seen).Mappings };
        if (office.WriteSettings(seen, settings.Document()))
        {
            backup.Wake();
            return Redirect("/settings?kept=true");
        }

        Overtaken = true;
        Seen = office.Journal.ReadSettings();
        ModelState.Clear();
        return Page();
    }

    /// <summary>Deletes a mapping of the import.</summary>
    public IActionResult OnPostDeleteMapping(string name)
    {
        office.ChangeSettings(settings => settings with { Mappings = settings.Mappings.RemoveAll(mapping => mapping.Name == name) });
        return Redirect("/settings#s-mappings");
    }

    private void ReadCounties()
    {
        var counties = office.Journal.Choices(MostCounties).Counties;
        Used = [.. counties.Where(county => Law.Facts.Counties.Find(county) is not null)
            .Select(county => RecorderTable.For(county, office.Today))];
        Others = [.. RecorderTable.All(office.Today).Where(row => !counties.Contains(row.County))];
    }
}
