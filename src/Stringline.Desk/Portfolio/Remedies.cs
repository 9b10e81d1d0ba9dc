namespace Stringline.Desk.Portfolio;

/// <summary>To which remedy a finding belongs: by the first part of its id.</summary>
internal static class Remedies
{
    /// <summary>The claim of lien with all that follows it.</summary>
    public const string Lien = "Claim of lien";

    /// <summary>The remedies, in the order in which a page shows them.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        Lien, "Preliminary notice", "Stop payment notice", "Payment bond", "Federal bond", "Design professional's lien", "Waivers and releases",
        "Prompt payment", "The file itself",
    ];

    /// <summary>The remedy of a finding.</summary>
    /// <param name="finding">Its id, such as <c>claim-of-lien.last-day</c>.</param>
    public static string Of(string finding)
    {
        var dot = finding.IndexOf('.', StringComparison.Ordinal);
        return (dot < 0 ? finding : finding[..dot]) switch
        {
            "preliminary-notice" => All[1],
            "stop-payment-notice" => All[2],
            "payment-bond" => All[3],
            "federal-bond" => All[4],
            "design-lien" => All[5],
            "waiver" => All[6],
            "prompt-payment" or "retention" or "stop-work" or "dispute-claim" => All[7],
            "assumptions" or "site" or "licence" => All[8],
            _ => Lien,
        };
    }
}
