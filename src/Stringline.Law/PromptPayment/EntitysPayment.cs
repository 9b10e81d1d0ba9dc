using Stringline.Law.Facts;
using Stringline.Law.Numbers;

namespace Stringline.Law.PromptPayment;

/// <summary>In what time the body that contracted for the work pays a request, and returns one that is not proper.</summary>
/// <param name="ToPay">From receipt of a proper request.</param>
/// <param name="ToReturn">From receipt of one that is not.</param>
internal readonly record struct EntitysPayment(Number ToPay, Number ToReturn)
{
    /// <summary>The times of that body.</summary>
    public static EntitysPayment Of(FactsAsOf facts) => (facts.Job.Work.Body, PublicPayer.IsState(facts)) switch
    {
        (PublicBody.StateUniversity, _) => new(Number.TrusteesProgress, Number.TrusteesReturn),
        (_, true) => new(Number.StateProgress, Number.StateReturn),
        _ => new(Number.LocalProgress, Number.LocalReturn),
    };
}
