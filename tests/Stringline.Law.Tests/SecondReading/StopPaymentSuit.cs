using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>
/// An action on a stop payment notice: after ten days from giving it, within 90 days after the time to give it (Civ. Code §§ 8550,
/// 9502).
/// </summary>
internal static class StopPaymentSuit
{
    /// <summary>The row of the action; of an action that does not say what it enforces it may be taken that it enforces this.</summary>
    public static Answer Finding(World w, LocalDate? given, LocalDate? givenLast, LocalDate? last)
    {
        var unsaid = false;
        if (given is { } first && IsKept(w, first, givenLast ?? first, last, out unsaid) && !unsaid)
            return Answer.Kept;
        var open = last is not { } ends || !w.IsOver(ends, "time to sue on the notice");
        return new Answer((open ? May.Open : May.Lost) | (unsaid ? May.Kept : May.None), open ? last : null);
    }

    // § 9502(b) names the public entity and the direct contractor; on private work it is whoever withholds the money (§ 8550).
    private static bool SuesAll(World w, ActionFiled action)
    {
        bool Sues(PartyCapacity capacity) => action.Against.Any(id => w.Job.Party(id)?.Capacity == capacity);
        if (w.Matter.Kind == WorkKind.Public)
            return Sues(PartyCapacity.PublicEntity) && Sues(PartyCapacity.DirectContractor);
        return w.Matter.Of<StopPaymentGiven>().Where(paper => Paper.Given(w, paper, null) is not null)
            .All(paper => paper.To.All(id => w.Job.Party(id)?.Capacity switch
        {
            PartyCapacity.Owner or PartyCapacity.Architect or PartyCapacity.OwnersAgent or PartyCapacity.Association =>
                Sues(PartyCapacity.Owner),
            PartyCapacity.ConstructionLender => action.Against.Contains(id),
            _ => true,
        }));
    }

    private static bool IsKept(World w, LocalDate given, LocalDate givenLast, LocalDate? last, out bool unsaid)
    {
        unsaid = false;
        foreach (var action in w.Matter.Of<ActionFiled>())
        {
            if (action.Enforces.Count > 0 && !action.Enforces.Contains(ActionOn.StopPaymentNotice))
                continue;
            var day = w.On(action);
            if (day <= given || (last is { } end && !w.InTime(day, end, "sued on the notice in time", action.Index)))
                continue;
            if (day <= given.PlusDays(10) && !w.Either("brought before the eleventh day", action.Index))
                continue;
            if (givenLast != given && day <= givenLast.PlusDays(10) && !w.Either("brought for the first notice", action.Index))
                continue;
            if (action.Against.Count > 0 && !SuesAll(w, action) && !w.Either("the right ones were sued", action.Index))
                continue;
            unsaid = action.Enforces.Count == 0;
            if (!unsaid)
                return true;
        }

        return unsaid;
    }
}
