using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.LienableAmount;

/// <summary>
/// Extras that are in no direct contract. A lien does not extend to them if the claimant knew it, or was on notice, before it provided
/// them.
/// </summary>
/// <param name="Surely">Dollars and cents of those that surely are.</param>
/// <param name="Maybe">Those of which it is not known, each with the question.</param>
/// <param name="Why">The reason for those that surely are.</param>
internal sealed record OutsideContract(decimal Surely, IReadOnlyList<(Change Change, Sentence Question)> Maybe, Reason Why)
{
    /// <summary>Looks at every agreed extra.</summary>
    [Rule("Civ. Code § 8432(a)")]
    public static OutsideContract Of(FactsAsOf facts)
    {
        var filed = FiledBeforeCommencement(facts);
        var surely = new List<Change>();
        var maybe = new List<(Change, Sentence)>();
        foreach (var change in facts.All<Change>())
        {
            if (!change.Agreed || change.Amount <= 0 || change.InDirectContract == true)
                continue;
            var knew = filed ? true : change.KnewOutside;
            switch (change.InDirectContract, knew)
            {
                case (_, false):
                    break;
                case (false, true):
                    surely.Add(change);
                    break;
                case (null, _):
                    maybe.Add((change, $"Is the extra in the direct contract, or in a modification of it? If not, and the claimant knew "
                        + $"that before the work, the lien does not extend to it.{WorkKinds.Change.At("inDirectContract"):aside}"));
                    break;
                case (false, null):
                    maybe.Add((change, $"Did the claimant know before the work that the extra is not in the direct contract? Then the lien "
                        + $"does not extend to it.{WorkKinds.Change.At("knewOutside"):aside}"));
                    break;
                default:
                    throw new InvalidOperationException("No such case.");
            }
        }

        var sum = Total.Of(surely, static c => c.Amount);
        return new OutsideContract(sum, maybe,
            Reason.Of("Civ. Code § 8432(a)", $"The lien does not extend to {sum}: extras that are in no direct contract nor a modification "
                + $"of one, as the claimant knew or was on notice before it provided them.", surely));
    }

    /// <summary>
    /// Filed with the county recorder before the work of improvement commenced, the direct contract is notice of what it says to all who
    /// provide work.
    /// </summary>
    [Rule("Civ. Code § 8432(b)")]
    private static bool FiledBeforeCommencement(FactsAsOf facts) =>
        facts.Job.Work is { DirectContract.Filed: { } filed, Commenced: { } commenced } && filed < commenced;
}
