using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Layout;
using Stringline.Papers.Mailing;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.StopPaymentNotice;

/// <summary>
/// The notice, within five days after it is filed, of an action on a stop payment notice to those who hold money under it
/// (Civ. Code §§ 8550(e), 9504).
/// </summary>
internal static class ActionNoticePaper
{
    private const string Deadline = "stop-payment-notice.tell-of-action";

    /// <summary>The paper.</summary>
    public static Paper Paper { get; } = new("action-notice", "Notice of Commencement of Action on Stop Payment Notice", Write)
    {
        Sections = "Civ. Code §§ 8102, 8550(e), 9504",
        Use = PaperUse.Given,
        Works = [WorkKind.Private, WorkKind.Public],
        Words = $"The claimant, within five days after suit, to everyone to whom the stop payment notice was given.",
        Asks = [new(PaperInput.To)],
        Deadline = Deadline,
        ProvedAs = ProvedNotice.Action,
        Entries = [new("action-told", "It was given: day and to whom") { To = _ => [] }],
    };

    private static Bundle Write(Matter matter)
    {
        var isPublic = matter.Job.Work.Kind == WorkKind.Public;
        var section = isPublic ? "Civ. Code § 9504" : "Civ. Code § 8550(e)";
        var given = matter.Known.All<StopPaymentGiven>();
        if (given.Count == 0)
        {
            matter.NotEntered("stop-payment-given", "no-stop-payment-notice", $"No stop payment notice is entered.",
                $"Enter the one given as {new KindName("stop-payment-given")} with its day, to and amount.", section);
        }

        var action = Action(matter);
        if (action is null)
        {
            matter.NotEntered("action-filed", "no-action-filed", $"No action on the stop payment notice is entered.",
                $"Enter it as {new KindName("action-filed")} with its day, court and case number, "
                    + $"and {new FieldSaid("enforces", "[\"stop-payment-notice\"]")}.", section);
        }

        var court = action is null
            ? null : matter.Need(action.Court, "court-missing", Place.Of(action, "court"), $"Add the court.", section);
        var number = action is null ? null
            : matter.Need(action.Case, "case-missing", Place.Of(action, "case"), $"Add the case number.", section);
        var to = Addressees.WithAddress(matter,
            matter.Named(matter.Options.To.Count > 0 ? matter.Options.To : [.. given.SelectMany(g => g.To).Distinct()]),
            "Civ. Code § 8108");
        var leaf = new PaperBuilder("notice-of-action-on-stop-payment-notice.pdf",
            "Notice of Commencement of Action on Stop Payment Notice");
        leaf.Head(isPublic ? "Public works. California Civil Code section 9504"
            : "California Civil Code sections 8102 and 8550, subdivision (e)");
        leaf.Line("Date", Day(matter.AsOf));
        Addressees.Put(leaf, matter, to);
        leaf.Say($"{matter.Facts.Claimant} (“claimant”) gives notice that claimant has commenced an action to enforce payment of the "
            + $"claim stated in claimant’s stop payment {(given.Count > 1 ? "notices" : "notice")}.");
        leaf.Field("Court", court);
        leaf.Field("Case number", number);
        leaf.Field("Commenced on", action?.On is DayFact.Exact on ? Day(on.Day) : null);
        leaf.Field(given.Count > 1
            ? "Stop payment notices" : "Stop payment notice", [.. given.Select(g => Given(matter, g)).DefaultIfEmpty(null)]);
        var demand = matter.Assessment.AmountOf(Remedy.StopPaymentNotice)?.Demand ?? 0m;
        leaf.Field("Claimant’s demand", TypeStyle.BodyBold,
            [.. NoticeContents.Demand(matter, demand, "Civ. Code § 8102(a)(6)(C)"), .. WhatDiffers.BesideNotice(demand, given)]);
        NoticeContents.Put(leaf, matter);
        Signing.Claimant(leaf, matter, section);
        return new Bundle([leaf, ProofOfNotice.Build(matter, ProvedNotice.Action, to)], new Guide
        {
            To = to,
            Manner = isPublic ? $"{Addressees.Manner} It goes in the manner of a stop payment notice: to the office to which that was "
                + "given (§§ 9354, 9504)." : Addressees.Manner,
            First = [.. WhatDiffers.FromNotice(demand, given),
                "It goes to each person to whom the stop payment notice was given. Leaving one out is not fatal where that harms nobody "
                + "(Brewer Corp. v. Point Center Financial (2014) 223 Cal.App.4th 831); do not risk it."],
            Steps = ["Sign in ink, with date and place, and keep a signed copy. Mail one to each person named above, or hand it over.",
                ProofOfNotice.WithIt],
            After = [$"{EntryName.Enter("action-told")}its day, to whom ({Addressees.Names(to)}) and how."],
        });
    }

    // The one from which the law counts the five days; else the last that may be on the notice.
    private static ActionFiled? Action(Matter matter) =>
        matter.Assessment.Find(Deadline)?.Why.SelectMany(w => w.Facts).OfType<ActionFiled>().FirstOrDefault()
        ?? matter.Known.All<ActionFiled>().LastOrDefault(a => a.Enforces.Count == 0 || a.Enforces.Contains(ActionOn.StopPaymentNotice));

    private static string Given(Matter matter, StopPaymentGiven notice)
    {
        var to = string.Join("; ", notice.To.Select(id => OneLine(Clean(matter.Job.Party(id)?.Name) ?? id)));
        var amount = notice.Amount is { } sum ? $", in the amount of {Dollars(sum)}" : "";
        return $"Given{(notice.On is DayFact.Exact on ? $" on {Day(on.Day)}" : "")} to {to}{amount}";
    }
}
