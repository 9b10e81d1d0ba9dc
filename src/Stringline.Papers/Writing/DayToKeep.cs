using Stringline.Law.Reasoning;
using Stringline.Law.Recording;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Counter;
using Stringline.Papers.Layout;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Writing;

/// <summary>The day that a paper must keep, in a frame: the law's day, and at a counter the hour with it.</summary>
/// <param name="paper">The paper.</param>
/// <param name="matter">The job and what the law makes of it.</param>
/// <param name="guide">What its sheet says.</param>
/// <param name="office">The recorder’s office where one goes there with the paper; else null.</param>
/// <param name="draft">Whether the sheet is that of a draft.</param>
/// <param name="set">How close a counter sheet is set; null on any other sheet.</param>
internal sealed class DayToKeep(Paper paper, Matter matter, Guide guide, RecorderOffice? office, bool draft, Closeness? set)
{
    private readonly bool near = set is not null;

    private TypeStyle Text => set?.Text ?? CounterType.Text;

    private TypeStyle Bold => set?.Bold ?? CounterType.Bold;

    private TypeStyle Large => near ? new(Face.SansBold, 22, 27) : new(Face.SansBold, 24, 30);

    /// <summary>The frame; nothing where there is no day.</summary>
    public IEnumerable<Block> Blocks => guide.ActBy is { } day ? [Framed([.. ActBy(day)])]
        : paper.Deadline is null || matter.Assessment.Find(paper.Deadline) is not { } last ? []
        : last.IsDeadline ? Deadline(last) : NotBefore(last);

    private IEnumerable<Block> NotBefore(Finding last)
    {
        // A day that is past reads as leave, which a draft never gives.
        var own = last.Band is { } from ? (from.Latest ?? from.Earliest).Day : (LocalDate?)null;
        if (draft && own > matter.AsOf)
            yield return NotBefore(own.Value, null);
        else if (!draft && (guide.NotBefore?.Day ?? own) is { } soonest)
            yield return NotBefore(soonest, guide.NotBefore?.If);
    }

    private Framed NotBefore(LocalDate day, string? condition) => Framed(
    [
        new Paragraph("NOT BEFORE", Bold) { Before = 0, WithNext = true },
        new Paragraph(DayOfWeek(day), Large) { Before = 0 },
        .. condition is null ? Array.Empty<Block>() : [new Paragraph(condition, Text) { Before = 2 }],
    ]);

    private IEnumerable<Block> Deadline(Finding last)
    {
        // A duty that is done, or that was never due, has no day.
        if (last is { ActBy: null, Band: null, Standing: Standing.Kept or Standing.Done })
            yield break;
        List<Block> lines = [.. ActBy(last.ActBy)];
        if (last.Band is { } band)
        {
            lines.Add(new Paragraph(last.ActBy == band.Earliest.Day ? $"Reading: {Name(band.Earliest)}."
                : $"Last day: {DayOfWeek(band.Earliest.Day)}, on the reading “{Name(band.Earliest)}”.", Text)
            { Before = 3 });
            if (band.Latest is { } latest && latest.Day != band.Earliest.Day)
            {
                lines.Add(new Paragraph($"On another reading (“{Name(latest)}”) the last day is {DayOfWeek(latest.Day)}. Plan on the "
                    + $"first; the later day "
                    + "is an argument, not a plan.", Text) { Before = 2 });
            }
        }

        if (last.Standing is Standing.InDoubt or Standing.Narrowed or Standing.Lost)
        {
            lines.Add(new Paragraph($"Standing: {last.Standing.Word()}. {Shortened(Matter.Reasons(last), near ? 320 : 600)}", Text)
            { Before = 2 });
        }

        yield return Framed(lines);
    }

    private IEnumerable<Block> ActBy(LocalDate? day)
    {
        yield return new Paragraph("ACT BY", Bold) { Before = 0, WithNext = true };
        yield return new Paragraph(day is { } by ? DayOfWeek(by) : "no day can be given yet", Large) { Before = 0 };
        if (day < matter.AsOf)
        {
            yield return new Paragraph(draft ? "That day is past. Ask a lawyer what is left."
                : "That day is past. Act at once, and ask a lawyer what is left.", Bold) { Before = 2 };
        }

        if (office is not null)
            yield return OfficeBlocks.LastTime(office);
    }

    private string Name(Reading reading) => near ? Shortened(Dated(reading), 160) : Dated(reading);

    // "On the day of acceptance": which day that is, the completion has.
    private string Dated(Reading reading)
    {
        var words = LawForReaders.Of(reading);
        foreach (var done in matter.Assessment.Find("completion.day")?.Readings ?? [])
            words = words.Replace($"on the day of {done.Name}", $"on {Day(done.Day)}, the day of {done.Name}", StringComparison.Ordinal);
        return words;
    }

    private Framed Framed(IReadOnlyList<Block> lines) => new([.. lines]) { Before = near ? 6 : 10 };
}
