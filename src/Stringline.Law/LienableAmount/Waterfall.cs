using Stringline.Law.Reasoning;

namespace Stringline.Law.LienableAmount;

/// <summary>The amount from the agreed price down to the demand. The steps add up to the demand to the cent.</summary>
/// <param name="Demand">The amount that may be claimed after all just credits and offsets (Civ. Code § 8416(a)(1)), dollars and cents,
/// never negative.</param>
/// <param name="Steps">The steps, in order.</param>
/// <param name="LeftOut">What was billed but may not be claimed, dollars and cents.</param>
/// <param name="InDoubt">Dollars and cents that are left out only because a day is in doubt, or because one entry lies on both sides of a
/// line.</param>
public sealed record Waterfall(decimal Demand, IReadOnlyList<WaterfallStep> Steps, decimal LeftOut, decimal InDoubt = 0m)
{
    private readonly decimal? atLeast;
    private readonly decimal? atMost;

    /// <summary>By which remedy.</summary>
    public Remedy Remedy { get; init; } = Remedy.Lien;

    /// <summary>
    /// What is claimed by the remedy. A sum on a public or federal job is never called a demand without the remedy it is asked by.
    /// </summary>
    public string Title => Remedy switch
    {
        Remedy.Lien or Remedy.DesignLien => "Demand",
        Remedy.StopPaymentNotice => "Demand of the stop payment notice",
        Remedy.PaymentBond => "Demand on the payment bond",
        Remedy.FederalBond => "Demand on the federal bond",
        Remedy.Debt => "Owed under the contract",
        _ => throw new InvalidOperationException($"No such remedy: {Remedy}."),
    };

    /// <summary>The section that takes credits and payments off it.</summary>
    public string Section { get; init; } = "Civ. Code § 8416(a)(1)";

    /// <summary>Whether it comes to different sums on different open readings of the facts.</summary>
    public bool IsBand => !IsUnknown && AtLeast != AtMost;

    /// <summary>Whether the file does not give what the work was worth, so that a demand of nothing says nothing.</summary>
    public bool IsUnknown { get; init; }

    /// <summary>The least that it comes to on any open reading of the facts.</summary>
    public decimal AtLeast
    {
        get => atLeast ?? Demand;
        init => atLeast = value;
    }

    /// <summary>The most that it comes to on any open reading of the facts.</summary>
    public decimal AtMost
    {
        get => atMost ?? Demand;
        init => atMost = value;
    }

    // What these steps take off is owed all the same: it may only not be claimed, or was counted elsewhere.
    private static readonly string[] NotPayment = ["outside-reach", "paid-elsewhere", "waived", "charges-left-out", "overpaid"];

    /// <summary>What is owed in all, whether or not it may be claimed by this remedy.</summary>
    public decimal InAll
    {
        get
        {
            var sum = LeftOut;
            foreach (var step in Steps)
                sum += Array.IndexOf(NotPayment, step.Id) < 0 ? step.Amount : 0m;
            return Math.Max(sum, Demand);
        }
    }

    /// <summary>
    /// Whether nothing is left because it was paid, credited or waived; not because nothing is priced, lies out of reach or is barred.
    /// </summary>
    internal bool IsPaid
    {
        get
        {
            if (AtMost != 0 || InDoubt != 0 || IsUnknown)
                return false;
            var paid = false;
            foreach (var step in Steps)
            {
                if (step is { Id: "outside-reach" or "outside-direct-contract" or "barred", Amount: < 0 })
                    return false;
                paid |= step is { Id: "paid" or "credited" or "waived", Amount: < 0 };
            }

            return paid;
        }
    }

    /// <summary>What would settle or change it.</summary>
    public IReadOnlyList<Question> Questions { get; init; } = [];

    /// <summary>What each waiver and release of the file does to the demand, by the day it was signed.</summary>
    public IReadOnlyList<WaiverEffect> Waivers { get; init; } = [];
}

/// <summary>What one waiver and release does to the demand.</summary>
/// <param name="Waiver">The paper.</param>
/// <param name="Binding">Whether it binds on the day of asking.</param>
/// <param name="Reached">Unpaid dollars and cents of the work that it reaches as a fact.</param>
/// <param name="Kept">What of that its exceptions keep alive, or may.</param>
public sealed record WaiverEffect(Facts.Waived Waiver, Verdict Binding, decimal Reached, decimal Kept)
{
    /// <summary>Whether it surely binds.</summary>
    public bool Binds => Binding == Verdict.Yes;

    /// <summary>What it releases as a fact, or would once it binds.</summary>
    public decimal Released => Reached - Kept;

    /// <summary>What more it may release, or would once it binds.</summary>
    public decimal InDoubt { get; init; }

    /// <summary>What it releases at the most on the day of asking.</summary>
    public decimal AtMost => Binding == Verdict.No ? 0m : Released + InDoubt;

    /// <summary>How far its words reach.</summary>
    internal WaiverReach Reach { get; init; }

    /// <summary>What its exceptions keep.</summary>
    internal WaiverExceptions Exceptions { get; init; }
}

/// <summary>One step of the waterfall.</summary>
/// <param name="Id">
/// Stable id: agreed-price, changes, outside-direct-contract, beyond-price, not-furnished, reasonable-value, outside-reach, paid, credited,
/// paid-elsewhere, waived, charges-left-out, value-unknown, overpaid, set-free, barred.
/// </param>
/// <param name="Title">What it is, in words.</param>
/// <param name="Amount">Dollars and cents added (negative: taken off).</param>
/// <param name="Why">The reason, with its section and entries.</param>
public sealed record WaterfallStep(string Id, string Title, decimal Amount, Reason Why);
