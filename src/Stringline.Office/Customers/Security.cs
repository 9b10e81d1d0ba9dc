using System.Text.Json;
using Stringline.Tables;
using Stringline.Law;
using Stringline.Law.DesignLien;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;

namespace Stringline.Office.Customers;

/// <summary>By what money can be held.</summary>
internal enum SecurityKind
{
    /// <summary>The claim of lien, or the design professional's lien.</summary>
    Lien,

    /// <summary>The stop payment notice.</summary>
    StopPaymentNotice,

    /// <summary>The payment bond of private, public or federal work.</summary>
    Bond,
}

/// <summary>A right that holds the money of a job, or that could.</summary>
/// <param name="By">Which.</param>
/// <param name="IsHeld">Whether its paper is recorded or given; else it is only open.</param>
/// <param name="Finding">Id of the finding that says by when the next act is due.</param>
/// <param name="Standing">Where that finding stands.</param>
/// <param name="Through">The day to plan the next act on: the right lapses if nothing is done by then; null where no such day is known
/// yet.</param>
/// <param name="Dollars">Dollars and cents that it reaches: each right has limits of its own.</param>
internal sealed record SecuredRight(SecurityKind By, bool IsHeld, string Finding, Standing Standing, LocalDate? Through, decimal Dollars)
{
    /// <summary>Whether it can be counted on, on a day: a right whose day is past is not, though it may be only in doubt.</summary>
    public bool CountsOn(LocalDate day) => Through is not { } through || day <= through;

    /// <summary>The right in words.</summary>
    public string Words => By switch
    {
        SecurityKind.Lien => "Lien",
        SecurityKind.StopPaymentNotice => "Stop payment notice",
        SecurityKind.Bond => "Bond",
        _ => throw new InvalidOperationException($"No such holding: {By}."),
    };
}

/// <summary>
/// What is owed on a job, and by which rights it is held or can be. It decides no law: days and standings are those of the findings.
/// </summary>
/// <param name="Owed">Dollars and cents owed, whether or not they may be claimed.</param>
/// <param name="Claimable">Dollars and cents of it that may be claimed by one right or another.</param>
/// <param name="Rights">The rights that live, each kind once.</param>
internal sealed record Security(decimal Owed, decimal Claimable, IReadOnlyList<SecuredRight> Rights)
{
    /// <summary>Dollars and cents that a recorded or given right holds on a day: the most that one of them reaches.</summary>
    public decimal HeldOn(LocalDate day) => Most(isHeld: true, day);

    /// <summary>Dollars and cents that are not held on a day but could still be secured.</summary>
    public decimal MaySecureOn(LocalDate day) => Math.Max(0m, Most(isHeld: false, day) - HeldOn(day));

    private decimal Most(bool isHeld, LocalDate day) =>
        Rights.Where(right => right.IsHeld == isHeld && right.CountsOn(day)).Select(right => right.Dollars).DefaultIfEmpty(0m).Max();

    /// <summary>What an assessment says of it.</summary>
    public static Security Of(Assessment assessment)
    {
        SecuredRight[] rights =
            [.. ((SecuredRight?[])[Lien(assessment), StopPayment(assessment), Bond(assessment)]).OfType<SecuredRight>()];
        return new Security(assessment.Owed.InAll, rights.Select(right => right.Dollars).Append(assessment.Amount.Demand).Max(), rights);
    }

    private static decimal By(Assessment assessment, Remedy remedy) => assessment.AmountOf(remedy)?.Demand ?? 0m;

    // What is recorded holds; else what can still be recorded, the mechanics lien before the others, since its time is the longest.
    private static SecuredRight? Lien(Assessment assessment) =>
        MechanicsLien(assessment) ?? RecordedDesignLien(assessment) ?? MechanicsLienToCome(assessment) ?? DesignLienToCome(assessment);

    private static bool IsOver(Assessment assessment) => assessment.Right.Standing is Standing.Lost or Standing.Done;

    private static SecuredRight? MechanicsLien(Assessment assessment)
    {
        if (IsOver(assessment)
            || assessment.Find("enforcement.last-day") is not { Standing: Standing.Open or Standing.InDoubt or Standing.Kept } sue)
            return null;
        var credit = assessment.Find("credit.enforcement-last-day");
        return Held(SecurityKind.Lien, credit is { Standing: Standing.Open or Standing.InDoubt }
            ? credit : sue, By(assessment, Remedy.Lien));
    }

    private static SecuredRight? MechanicsLienToCome(Assessment assessment) =>
        !IsOver(assessment) && assessment.Find("claim-of-lien.last-day") is { Standing: not (Standing.Lost or Standing.Done) } record
            ? ToCome(SecurityKind.Lien, record, By(assessment, Remedy.Lien))
            : null;

    // Converted, it holds until the day to sue on that claim; before it ended, until its own (Civ. Code §§ 8306(b), 8319).
    private static SecuredRight? RecordedDesignLien(Assessment assessment) =>
        assessment.Find("design-lien.converted-action-last-day") is { } converted
        && Held(SecurityKind.Lien, converted, assessment.Find(Conversion.Id)?.Amount ?? By(assessment, Remedy.DesignLien)) is { } anew
            ? anew
            : assessment.Find("design-lien.enforcement-last-day") is { } sue
            ? Held(SecurityKind.Lien, sue, By(assessment, Remedy.DesignLien)) : null;

    private static SecuredRight? DesignLienToCome(Assessment assessment) =>
        assessment.Find(Conversion.Id) is { Standing: Standing.Open or Standing.InDoubt } convert
        ? ToCome(SecurityKind.Lien, convert, convert.Amount ?? 0m)
        : assessment.Find("design-lien.last-day") is { Standing: Standing.Open or Standing.InDoubt } record
        ? ToCome(SecurityKind.Lien, record, By(assessment, Remedy.DesignLien))
        : null;

    private static SecuredRight? StopPayment(Assessment assessment)
    {
        var dollars = By(assessment, Remedy.StopPaymentNotice);
        return assessment.Find("stop-payment-notice.last-day") switch
        {
            { Standing: Standing.Open or Standing.InDoubt or Standing.NotYet or Standing.Narrowed } give =>
                ToCome(SecurityKind.StopPaymentNotice, give, dollars),
            { Standing: Standing.Kept } given =>
                Held(SecurityKind.StopPaymentNotice, assessment.Find("stop-payment-notice.action-last-day") ?? given, dollars),
            _ => null,
        };
    }

    private static SecuredRight? Bond(Assessment assessment)
    {
        if ((assessment.Find("payment-bond.action-last-day") ?? assessment.Find("federal-bond.action-last-day")) is not { } sue
            || sue.Standing is Standing.Lost or Standing.Done)
            return null;
        var dollars = By(assessment, sue.Id.StartsWith("federal", StringComparison.Ordinal) ? Remedy.FederalBond : Remedy.PaymentBond);
        return (assessment.Find("payment-bond.notice-last-day") ?? assessment.Find("federal-bond.notice-last-day")) switch
        {
            null or { Standing: Standing.Kept or Standing.Done } => Held(SecurityKind.Bond, sue, dollars),
            { Standing: Standing.Lost } => null,
            var notice => ToCome(SecurityKind.Bond, notice, dollars),
        };
    }

    private static SecuredRight ToCome(SecurityKind by, Finding next, decimal dollars) =>
        new(by, false, next.Id, next.Standing, next.ActBy, dollars);

    // Once the action is filed no day of this right lapses by itself.
    private static SecuredRight? Held(SecurityKind by, Finding sue, decimal dollars) => sue.Standing is Standing.Lost or Standing.Done
        ? null
        : new SecuredRight(by, true, sue.Id, sue.Standing, sue.Standing == Standing.Kept ? null : sue.ActBy, dollars);

    /// <summary>Writes it as properties of an object.</summary>
    public void Write(Utf8JsonWriter json)
    {
        json.WriteNumber("owed", Owed);
        json.WriteNumber("claimable", Claimable);
        json.WriteStartArray("rights");
        foreach (var right in Rights)
        {
            json.WriteStartObject();
            json.WriteNumber("by", (int)right.By);
            json.WriteBoolean("held", right.IsHeld);
            json.WriteString("finding", right.Finding);
            json.WriteNumber("standing", (int)right.Standing);
            if (right.Through is { } through)
                json.WriteString("through", DayText.Write(through));
            json.WriteNumber("dollars", right.Dollars);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>Reads what <see cref="Write"/> wrote.</summary>
    public static Security Read(ReadOnlyMemory<byte> document)
    {
        using var json = JsonDocument.Parse(document);
        var root = json.RootElement;
        return new Security(root.GetProperty("owed").GetDecimal(), root.GetProperty("claimable").GetDecimal(),
            [.. root.GetProperty("rights").EnumerateArray().Select(right => Right(right, root))]);
    }

    // An assessment kept before each right had its own dollars has those of the whole.
    private static SecuredRight Right(JsonElement json, JsonElement whole) => new(
        (SecurityKind)json.GetProperty("by").GetInt32(),
        json.GetProperty("held").GetBoolean(),
        json.GetProperty("finding").GetString()!,
        (Standing)json.GetProperty("standing").GetInt32(),
        json.TryGetProperty("through", out var through) && DayText.Read(through.GetString()!, out var day) is null ? day : null,
        (json.TryGetProperty("dollars", out var dollars) ? dollars : whole.GetProperty("claimable")).GetDecimal());
}
