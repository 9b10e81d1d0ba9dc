using Microsoft.AspNetCore.Mvc;
using Stringline.Office.Entering;
using Stringline.Web.Entering;
using Stringline.Tables;
using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Store;

namespace Stringline.Web.Pages.Job;

/// <summary>The head of a job file: what is true of the job as a whole, read part by part and changed part by part.</summary>
internal sealed class FileModel(Desk desk) : JobPage(desk)
{
    /// <summary>The field in which it is said since when the claimant knows it.</summary>
    public const string Since = "known-since";

    /// <summary>The part that is changed; blank where the file is read.</summary>
    [BindProperty(SupportsGet = true)]
    public string? Part { get; set; }

    /// <summary>The number of the last change that the page has shown.</summary>
    [BindProperty]
    public long Expected { get; set; }

    /// <summary>What is to be done with the form: look, write, or back to it.</summary>
    [BindProperty]
    public string? Step { get; set; }

    /// <summary>The part that is changed; null where the file is read.</summary>
    public HeadPart? Changing { get; private set; }

    /// <summary>What stands in the form.</summary>
    public Typed Typed { get; private set; } = new();

    /// <summary>What is wrong.</summary>
    public Faults Faults { get; private set; } = new();

    /// <summary>What it changes; null where the form is shown.</summary>
    public WhatChanges? Changes { get; private set; }

    /// <summary>Each field that changes: what it is called, what it was, what it would be.</summary>
    public IReadOnlyList<(string Label, string Before, string After)> Fields { get; private set; } = [];

    /// <summary>What others wrote while the form was open.</summary>
    public IReadOnlyList<string> Between { get; private set; } = [];

    /// <summary>What is asked about the county; null where nothing is.</summary>
    public CountyDoubt? Doubt { get; private set; }

    /// <summary>Whether nothing was changed.</summary>
    public bool IsSame { get; private set; }

    /// <summary>The questions of the assessment that this file can answer.</summary>
    public IReadOnlyList<(Question Question, string Words, string Address)> Questions =>
    [
        .. Job.Assessment.Findings.SelectMany(finding => finding.Questions)
            .Select(question => (Question: question, Link: QuestionLinks.Of(Id, question)))
            .Where(asked => asked.Link is not null)
            .Select(asked => (asked.Question, asked.Link!.Value.Words, asked.Link.Value.Address))
            .DistinctBy(asked => asked.Question.Text),
    ];

    /// <summary>What a part says now, field by field; what is not said is left out.</summary>
    public IReadOnlyList<(string Label, string Value)> Told(HeadPart part) => Told(Job.Facts, part);

    /// <summary>What the office's settings offer for a field, while typing: those who sign for it, and their titles.</summary>
    public IReadOnlyList<string> Offered(Asked asked) => asked.Name switch
    {
        "claimant.signer.name" => [.. Desk.Settings.Signers.Select(signer => signer.Name).Distinct()],
        "claimant.signer.title" => [.. Desk.Settings.Signers.Select(signer => signer.Title).OfType<string>().Distinct()],
        _ => [],
    };

    /// <summary>Shows the file, or the form of one part.</summary>
    public IActionResult OnGet()
    {
        if (!Open())
            return NotFound();
        if (Changing is { } part)
        {
            Typed = HeadDraft.Typed(Job.Facts, part);
            Typed.Set(Since, "today");
        }

        return Page();
    }

    /// <summary>Looks at what was typed, and writes it once it was looked at.</summary>
    public IActionResult OnPost()
    {
        if (!Open() || Changing is not { } part)
            return NotFound();
        Typed = Request.Form.AsTyped();
        if (Step == "back")
            return Page();
        var draft = HeadDraft.Of(Job.Facts, part, Typed);
        Faults = draft.Faults;
        if (draft.Job is not { } job)
            return Page();
        if (JournalText.Head(job).AsSpan().SequenceEqual(JournalText.Head(Job.Facts)))
        {
            IsSame = true;
            return Page();
        }

        // Asked where county, ZIP or city was changed; what stood so before is asked on the job’s page.
        if (CountyDoubt.Of(job.Work.Site) is { } doubt && !doubt.IsAlso(Job.Facts.Work.Site)
            && !doubt.IsConfirmedBy(Typed[CountyDoubt.Field]))
        {
            Doubt = doubt;
            return Page();
        }

        if (Step == "save" && Expected == Job.Stored.Tip.Sequence)
        {
            LocalDate? learned = Typed[Since] == "start" ? null : Desk.Today;
            switch (Desk.Append(Id, Expected, new JobChange.Revised(job, learned)))
            {
                case AppendOutcome.Appended:
                    return Redirect($"/job/{Id}/file#{part.Word}");
                case AppendOutcome.Refused refused:
                    foreach (var fault in refused.Faults)
                        Faults.Add("", $"{fault.Path}: {fault.Found}; it should be {fault.Expected}.");
                    return Page();
                case AppendOutcome.NoSuchJob:
                    return NotFound();
                case AppendOutcome.SomeoneWroteFirst:
                    Open();
                    break;
            }
        }

        Between = WrittenSince.Of(Job.Stored, Expected);
        Changes = WhatChanges.Between(Job.Assessment, Desk.Assess(job, Desk.Today));
        Fields = Differences(Told(Job.Facts, part), Told(job, part));
        Expected = Job.Stored.Tip.Sequence;
        ModelState.Clear();
        return Page();
    }

    private bool Open()
    {
        if (!Find())
            return false;
        Changing = HeadForms.Find(Part);
        return Changing is not null || string.IsNullOrEmpty(Part);
    }

    private static List<(string Label, string Value)> Told(JobFile job, HeadPart part)
    {
        var typed = HeadDraft.Typed(job, part);
        var told = part.Fields.Select(asked => (asked.Label, InWords(asked, typed[asked.Name], job))).ToList();
        if (part.List is { } list)
        {
            for (var i = 0; i < HeadDraft.Shown(list, typed); i++)
            {
                foreach (var asked in list.Fields)
                    told.Add(($"{list.Item} {i + 1}: {asked.Label}", InWords(asked, typed[HeadDraft.Field(list, i, asked)], job)));
            }
        }

        return [.. told.Where(row => row.Item2.Length > 0)];
    }

    private static string InWords(Asked asked, string value, JobFile job) => asked.Answer switch
    {
        _ when value.Length == 0 => "",
        Answer.OneOf => asked.Choices.FirstOrDefault(choice => choice.Word == value)?.Words ?? value,
        Answer.YesOrNo => value == "true" ? "yes" : "no",
        Answer.Tick => value == "true" ? "yes" : "",
        Answer.Party => job.Party(value)?.Name ?? value,
        Answer.Day when DayText.Read(value, out var day) is null => LawText.Day(day),
        Answer.Money when TypedMoney.Read(value) is { } dollars => LawText.Money(dollars),
        _ => value,
    };

    private static List<(string, string, string)> Differences(List<(string Label, string Value)> before,
        List<(string Label, string Value)> after)
    {
        var was = before.ToDictionary(row => row.Label, row => row.Value, StringComparer.Ordinal);
        var now = after.ToDictionary(row => row.Label, row => row.Value, StringComparer.Ordinal);
        return
        [
            .. now.Keys.Union(was.Keys)
                .Select(label => (label, was.GetValueOrDefault(label, ""), now.GetValueOrDefault(label, "")))
                .Where(row => row.Item2 != row.Item3),
        ];
    }
}
