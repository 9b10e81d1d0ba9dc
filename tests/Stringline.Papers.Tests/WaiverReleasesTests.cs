using System.Collections.Concurrent;
using System.Text.RegularExpressions;
using CsCheck;
using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Preflight;
using Stringline.Papers.Waiver;
using Stringline.Testing;

namespace Stringline.Papers.Tests;

/// <summary>
/// What is said before a waiver is signed is what the law makes of it afterwards: the page of every form, drawn on jobs with sums, changes,
/// retention and earlier waivers, against the demand once the paper is entered as its page says (Civ. Code §§ 8132-8138).
/// </summary>
public sealed partial class WaiverReleasesTests(ITestOutputHelper output)
{
    private const int Papers = 200;

    [Fact]
    [Slow(Slow.Lasting)]
    public void What_the_page_says_is_released_is_released_once_the_waiver_is_entered()
    {
        var made = new ConcurrentDictionary<string, int>();
        PaperDraws.Waivers.Sample(
            drawn =>
            {
                var (form, job, asOf, options) = drawn;
                var id = $"waiver-{WaiverToBe.NumberOf(form)}";
                var before = PaperJobs.Assess(job, asOf);
                if (PaperMaker.Make(id, job, before, options) is not PacketOutcome.Made paper)
                    return;
                var says = Assert.Single(Released().Matches(ReadBack.Of(paper.Files[^1].Bytes).Text.ReplaceLineEndings(" "))
                    .DistinctBy(m => m.Groups[1].Value));
                var released = decimal.Parse(says.Groups[1].Value, NumberStyles.Number, CultureInfo.InvariantCulture);
                var entered = Entered(WaiverOrder.Of(form, job, before, options).Waiver, job, asOf);
                var after = PaperJobs.Assess(job with { Entries = [.. job.Entries, entered] }, asOf);
                Assert.Equal(before.Amount.Demand - after.Amount.Demand, released);
                Assert.Equal(paper.Outlook?.Released, released);
                made.AddOrUpdate($"{id}, {(released > 0 ? "something" : "nothing")} released", 1, static (_, n) => n + 1);
            },
            iter: Papers);
        foreach (var (what, count) in made.OrderBy(m => m.Key, StringComparer.Ordinal))
            output.WriteLine($"{count,5}  {what}");
        Assert.All(Enum.GetValues<WaiverForm>(), form =>
            Assert.Contains($"waiver-{WaiverToBe.NumberOf(form)}, something released", made.Keys));
    }

    // As whoever keeps the file enters it: what stands on the paper, and that its payment cleared.
    private static Waived Entered(WaiverToBe waiver, JobFile job, LocalDate on) => new()
    {
        Index = job.Entries.Count,
        On = DayFact.On(on),
        Form = waiver.Form,
        Through = waiver.IsProgress ? waiver.Through : null,
        Amount = waiver.Amount,
        Excepted = waiver.IsProgress ? null : waiver.Disputed,
        UnpaidWaivers = waiver.Form == WaiverForm.ConditionalProgress ? [.. waiver.Earlier.Select(e => e.On)] : null,
        PaymentCleared = waiver.IsConditional ? on : null,
    };

    [GeneratedRegex(@"\$(\d[\d,]*\.\d\d) is released\.")]
    private static partial Regex Released();
}
