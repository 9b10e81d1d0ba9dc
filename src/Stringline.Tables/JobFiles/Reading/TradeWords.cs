namespace Stringline.Tables.JobFiles.Reading;

/// <summary>
/// What the trade calls things, and what the format calls them. A hint by likeness of letters is no help where it changes who somebody is
/// in law: "contractor" is nearest in its letters to "subcontractor", and means the other one.
/// </summary>
internal static class TradeWords
{
    /// <summary>The fields in which a word that is only spelled alike would change the answer.</summary>
    private static readonly string[] ByMeaningOnly = ["role", "capacity", "form", "by"];

    private static readonly Dictionary<string, Meaning[]> Words = new(StringComparer.Ordinal)
    {
        ["role"] =
        [
            new("direct-contractor", "contractor", "general", "general-contractor", "gc", "prime", "prime-contractor", "main-contractor",
                "original-contractor", "builder"),
            new("subcontractor", "sub", "sub-contractor", "subcontract", "specialty-contractor"),
            new("supplier", "vendor", "material-supplier", "materialman", "material-man", "dealer"),
            new("equipment-lessor", "lessor", "rental", "equipment-rental", "equipment"),
            new("laborer", "labor", "worker", "employee", "labourer"),
            new("design-professional", "architect", "engineer", "designer", "surveyor", "land-surveyor"),
        ],
        ["capacity"] =
        [
            new("direct-contractor", "contractor", "general", "general-contractor", "gc", "prime", "prime-contractor", "main-contractor",
                "original-contractor", "builder"),
            new("subcontractor", "sub", "sub-contractor", "subcontract", "specialty-contractor"),
            new("supplier", "vendor", "material-supplier", "materialman", "material-man", "dealer"),
            new("owner", "property-owner", "homeowner", "home-owner", "landowner", "developer"),
            new("construction-lender", "lender", "owner's-lender", "owners-lender", "bank", "construction-loan"),
            new("surety", "bond", "bonding-company", "bond-company", "surety-company"),
            new("public-entity", "city", "county", "state", "district", "agency", "public-agency", "public-owner"),
            new("owners-agent", "agent", "owner's-agent", "owner's-representative", "owners-representative"),
            new("association", "hoa", "homeowners-association", "homeowners'-association", "owners-association"),
        ],
        ["form"] =
        [
            new("8132", "conditional-progress", "conditional-waiver-progress", "progress-conditional"),
            new("8134", "unconditional-progress", "unconditional-waiver-progress", "progress-unconditional"),
            new("8136", "conditional-final", "conditional-waiver-final", "final-conditional"),
            new("8138", "unconditional-final", "unconditional-waiver-final", "final-unconditional"),
            new("company", "corporation", "llc", "partnership", "inc"),
            new("joint-tenants", "joint-tenancy", "joint-tenant"),
            new("trust", "living-trust", "family-trust", "trustee"),
            new("individual", "person", "natural-person"),
            new("estate", "decedent", "probate"),
        ],
        ["by"] =
        [
            new("actual", "completion", "completed", "finished", "done"),
            new("occupation", "occupancy", "occupied", "use", "moved-in"),
            new("cessation", "ceased", "stopped"),
            new("acceptance", "accepted"),
        ],
        ["manner"] =
        [
            new("certified-mail", "certified"),
            new("registered-mail", "registered"),
            new("express-mail", "express"),
            new("overnight-carrier", "overnight", "courier", "carrier", "overnight-delivery"),
            new("personal", "hand", "in-person", "hand-delivery", "hand-delivered", "by-hand", "personal-delivery"),
            new("first-class-mail", "first-class", "mail", "regular-mail", "us-mail", "plain-mail"),
            new("email", "e-mail"),
            new("fax", "facsimile"),
        ],
        ["what"] =
        [
            new("furnished", "delivery", "delivered", "work", "labor", "materials"),
            new("furnished", "invoice", "bill", "billed", "billing", "pay-application") { Beside = " with the invoice's number as `ref`" },
            new("change", "change-order", "co", "extra", "changeorder"),
            new("paid", "payment", "check", "payment-received"),
            new("credited", "credit-memo", "credit", "back-charge", "backcharge", "return"),
            new("retained", "retention", "retainage", "holdback"),
            new("notice-given", "notice", "preliminary-notice", "prelim", "20-day-notice", "preliminary", "prelim-notice") { Beside =
                " with `notice`" },
            new("waived", "waiver", "lien-waiver", "conditional-waiver", "unconditional-waiver") { Beside = " with `form`" },
            new("claim-recorded", "lien", "mechanics-lien", "claim-of-lien", "lien-recorded"),
            new("stop-payment-given", "stop-notice", "stop-payment-notice", "stop-payment", "stop-notice-given"),
            new("bond-notice-given", "bond-claim", "bond-notice"),
            new("action-filed", "lawsuit", "suit", "complaint", "foreclosure", "suit-filed"),
            new("completed", "completion", "finished", "done"),
            new("owner-recorded", "notice-of-completion", "noc", "notice-of-cessation"),
            new("release-recorded", "release-of-lien"),
            new("lis-pendens-recorded", "lis-pendens"),
            new("disputed", "dispute"),
            new("payment-demanded", "demand", "demand-letter"),
        ],
    };

    private static readonly Meaning[] FieldNames =
    [
        new("telephone", "phone", "tel", "phonenumber", "telephonenumber", "mobile", "cell"),
        new("email", "e-mail", "emailaddress"),
        new("due", "duedate", "dueon", "paymentdue"),
        new("on", "date", "day", "when"),
        new("ref", "invoice", "invoicenumber", "invoiceno", "number"),
        new("amount", "price", "sum", "total"),
        new("text", "description", "memo", "note", "notes"),
        new("zip", "zipcode", "postalcode"),
        new("street", "address"),
        new("form", "waiver", "waiverform"),
        new("capacity", "role", "type"),
        new("role", "capacity", "type"),
    ];

    /// <summary>The clause <c> (did you mean "x"?)</c> for a word of a field's set, or nothing.</summary>
    public static string Clause(string field, string word, IEnumerable<string> words)
    {
        if (Words.TryGetValue(field, out var meanings) && Of(meanings, Plain(word), words) is { } meant)
            return meant;
        return ByMeaningOnly.Contains(field) ? "" : Nearest.Clause(word, words);
    }

    /// <summary>The clause for the name of a field that is not known, or nothing.</summary>
    public static string FieldClause(string name, IEnumerable<string> known)
    {
        if (name == "state" && known.Contains("county"))
            return " (leave the state out: every site is in California)";
        return Of(FieldNames, name.ToLowerInvariant().Replace("_", "", StringComparison.Ordinal), known) ?? Nearest.Clause(name, known);
    }

    private static string? Of(Meaning[] meanings, string word, IEnumerable<string> words)
    {
        foreach (var meaning in meanings)
        {
            if (meaning.Said.Contains(word) && words.Contains(meaning.Word))
                return $" (did you mean \"{meaning.Word}\"{meaning.Beside}?)";
        }

        return null;
    }

    private static string Plain(string word) =>
        word.Trim().ToLowerInvariant().Replace(' ', '-').Replace('_', '-').Replace('’', '\'');

    /// <summary>One word of the format and what the trade says for it.</summary>
    private sealed class Meaning(string word, params string[] said)
    {
        public string Word { get; } = word;

        public string[] Said { get; } = said;

        /// <summary>What stands beside the word in the hint.</summary>
        public string Beside { get; init; } = "";
    }
}
