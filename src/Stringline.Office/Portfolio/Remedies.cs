using System.Collections.Frozen;
using Stringline.Law.Plan;
using Stringline.Law.Reasoning;

namespace Stringline.Office.Portfolio;

/// <summary>To which remedy a finding belongs: by the first part of its id.</summary>
internal static class Remedies
{
    /// <summary>The claim of lien with all that follows it.</summary>
    public const string Lien = "Claim of lien";

    private const string Notice = "Preliminary notice";
    private const string StopPayment = "Stop payment notice";
    private const string Bond = "Payment bond";
    private const string FederalBond = "Federal bond";
    private const string Design = "Design professional's lien";
    private const string Waivers = "Waivers and releases";
    private const string PromptPayment = "Prompt payment";
    private const string Debt = "The debt itself";
    private const string File = "The file itself";

    private static readonly FrozenDictionary<string, string> ByFirstPart = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["lien-right"] = Lien,
        ["authorized-work"] = Lien,
        ["completion"] = Lien,
        ["claim-of-lien"] = Lien,
        ["back-plan"] = Lien,
        ["index-watch"] = Lien,
        ["enforcement"] = Lien,
        ["credit"] = Lien,
        ["lis-pendens"] = Lien,
        ["prosecution"] = Lien,
        ["release"] = Lien,
        ["release-bond"] = Lien,
        ["lower-tier"] = Lien,
        ["preliminary-notice"] = Notice,
        ["stop-payment-notice"] = StopPayment,
        ["summary-release"] = StopPayment,
        ["payment-bond"] = Bond,
        ["federal-bond"] = FederalBond,
        ["design-lien"] = Design,
        ["waiver"] = Waivers,
        ["prompt-payment"] = PromptPayment,
        ["retention"] = PromptPayment,
        ["stop-work"] = PromptPayment,
        ["owners-security"] = PromptPayment,
        ["dispute-claim"] = PromptPayment,
        ["debt"] = Debt,
        ["amount"] = File,
        ["assumptions"] = File,
        ["site"] = File,
        ["license"] = File,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The remedies, in the order in which a page shows them.</summary>
    public static IReadOnlyList<string> All { get; } =
        [Lien, Notice, StopPayment, Bond, FederalBond, Design, Waivers, PromptPayment, Debt, File];

    /// <summary>The remedy of a finding; that of a finding nobody put down here is the file itself.</summary>
    /// <param name="finding">Its id, such as <c>claim-of-lien.last-day</c>.</param>
    public static string Of(string finding) => Knows(finding, out var remedy) ? remedy : File;

    /// <summary>
    /// The remedy of a finding. The county index is watched for whichever notice or claim a recorded notice of completion would cut short.
    /// </summary>
    public static string Of(Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        if (finding.Id != IndexWatch.Id)
            return Of(finding.Id);
        return finding.Sections is [var section, ..] ? section switch
        {
            "Civ. Code § 9356(a)" => StopPayment,
            "Civ. Code § 8612(b)" or "Civ. Code § 9560(b)" => Bond,
            _ => Lien,
        } : Lien;
    }

    /// <summary>Whether the first part of a finding's id was put down.</summary>
    public static bool Knows(string finding, [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out string? remedy)
    {
        var dot = finding.IndexOf('.', StringComparison.Ordinal);
        return ByFirstPart.TryGetValue(dot < 0 ? finding : finding[..dot], out remedy);
    }
}
