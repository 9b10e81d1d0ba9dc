using Stringline.Law.Facts;

namespace Stringline.Exchange.Reading;

/// <summary>Notices and waivers that the claimant gives, and what is answered to them.</summary>
internal sealed partial class EntryReading
{
    private static NoticeGiven NoticeGiven(Fields fields, int index)
    {
        var on = When(fields);
        return new NoticeGiven
        {
            Index = index,
            On = on,
            Notice = (NoticeKind)fields.RequiredWord("notice", JobFileWords.Notice),
            To = fields.RequiredPartyIds("to"),
            Manner = (Manner)fields.RequiredWord("manner", JobFileWords.Manner),
            Article = fields.Line("article"),
            Estimate = fields.Money("estimate", MoneyRange.ZeroOrMore),
            EstimateBasis = (EstimateBasis?)fields.Word("estimateBasis", JobFileWords.Basis),
            Lacks = fields.Line("lacks"),
            Mailed = Mailed(fields, on),
            Tries = Tries(fields),
        };
    }

    private StopPaymentGiven StopPaymentGiven(Fields fields, int index)
    {
        var on = When(fields);
        var notice = new StopPaymentGiven
        {
            Index = index,
            On = on,
            To = fields.RequiredPartyIds("to"),
            Amount = fields.Money("amount", MoneyRange.ZeroOrMore),
            Bonded = fields.Flag("bonded"),
            BondAmount = fields.Money("bondAmount", MoneyRange.AboveZero),
            Manner = Manner(fields),
            Article = fields.Line("article"),
            Mailed = Mailed(fields, on),
            Tries = Tries(fields),
            Lacks = fields.Line("lacks"),
            TenDollars = fields.Truth("tenDollars"),
        };
        if (notice is { BondAmount: not null, Bonded: false })
            fields.Fault("bondAmount", fields.Raw("bondAmount")!, "nothing: `bonded` does not say that a bond came with it");
        if (notice.TenDollars is not null)
            OnlyPublicField(fields, "tenDollars");
        return notice;
    }

    private static BondNoticeGiven BondNoticeGiven(Fields fields, int index)
    {
        var on = When(fields);
        return new BondNoticeGiven
        {
            Index = index,
            On = on,
            To = fields.RequiredPartyIds("to"),
            Manner = Manner(fields),
            Article = fields.Line("article"),
            Mailed = Mailed(fields, on),
            Tries = Tries(fields),
            Amount = fields.Money("amount", MoneyRange.ZeroOrMore),
        };
    }

    private StopPaymentReleased StopPaymentReleased(Fields fields, int index) => new()
    {
        Index = index,
        On = When(fields),
        Amount = fields.Money("amount", MoneyRange.AboveZero),
        Of = EntryId(fields, "of", "stop-payment-given"),
    };

    private static StopPaymentDemanded StopPaymentDemanded(Fields fields, int index) =>
        new() { Index = index, On = When(fields), From = fields.PartyId("from", PartyCapacity.Owner) };

    private static StopPaymentBondGiven StopPaymentBondGiven(Fields fields, int index) => new()
    {
        Index = index,
        On = When(fields),
        Amount = fields.Money("amount", MoneyRange.AboveZero),
        Surety = fields.PartyId("surety", PartyCapacity.Surety),
    };

    private static BondObjected BondObjected(Fields fields, int index)
    {
        var objected = new BondObjected
        {
            Index = index,
            On = When(fields),
            By = fields.PartyId("by", PartyCapacity.ConstructionLender),
            NewBond = fields.Day("newBond"),
        };
        if (objected.NewBond is { } brought)
            NotBefore(fields, "newBond", brought, objected.On);
        return objected;
    }

    private static ActionTold ActionTold(Fields fields, int index) =>
        new() { Index = index, On = When(fields), To = fields.RequiredPartyIds("to"), Manner = Manner(fields) };

    private static LowerTierClaim LowerTierClaim(Fields fields, int index) => new()
    {
        Index = index,
        On = When(fields),
        Amount = fields.RequiredMoney("amount", MoneyRange.AboveZero),
        By = fields.Line("by"),
        StopPaymentNotice = fields.Flag("stopPaymentNotice"),
    };

    /// <summary>Progress forms (Civ. Code §§ 8132, 8134) have a through date; final forms (§§ 8136, 8138) have none.</summary>
    private static Waived Waived(Fields fields, int index)
    {
        var on = When(fields);
        var form = Form(fields);
        LocalDate? through = null;
        if (form is WaiverForm.ConditionalProgress or WaiverForm.UnconditionalProgress)
            through = fields.RequiredDay("through");
        else if (fields.Raw("through") is { Kind: not JsonKind.Null } piece && form is not null)
            fields.Fault("through", piece, $"no through date: form {JobFileWords.Word(form.Value)} is for final payment");
        return new Waived
        {
            Index = index,
            On = on,
            Form = form ?? default,
            Through = through,
            Amount = fields.Money("amount", MoneyRange.ZeroOrMore),
            Excepted = fields.Money("excepted", MoneyRange.ZeroOrMore),
            PaymentCleared = fields.Day("paymentCleared"),
            InStatutoryForm = fields.Truth("inStatutoryForm"),
            UnpaidWaivers = UnpaidWaivers(fields, form),
            Settlement = fields.Truth("settlement"),
        };
    }

    /// <summary>The form's section as text; the bare number is taken too, since it reads as one.</summary>
    private static WaiverForm? Form(Fields fields)
    {
        if (fields.Raw("form") is { Kind: JsonKind.Number } number && JobFileWords.Form.IndexOf(number.Text) is { } index)
            return (WaiverForm)index;
        if (fields.Has("form"))
            return (WaiverForm?)fields.Word("form", JobFileWords.Form);
        fields.RequiredWord("form", JobFileWords.Form);
        return null;
    }

    /// <summary>Only the conditional progress form has such a list (Civ. Code § 8132).</summary>
    private static IReadOnlyList<LocalDate>? UnpaidWaivers(Fields fields, WaiverForm? form)
    {
        var listed = fields.DayList("unpaidWaivers");
        if (listed is not null && form is not null and not WaiverForm.ConditionalProgress)
            fields.Fault("unpaidWaivers", fields.Raw("unpaidWaivers")!, "nothing: only form 8132 lists earlier waivers that are not paid");
        return listed;
    }
}
