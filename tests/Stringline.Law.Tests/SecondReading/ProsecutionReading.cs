using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>
/// What comes after filing: trial within two years, else the court may dismiss (Civ. Code § 8462), within five it must be (Code Civ.
/// Proc. § 583.310);
/// word of an action on a stop payment notice within five days (Civ. Code §§ 8550(e), 9504).
/// </summary>
internal static class ProsecutionReading
{
    public static Answer Trial(World w)
    {
        if (w.Matter.Of<ActionEnded>().Length > 0 || w.Matter.Of<ReleaseRecorded>().Length > 0 || w.Matter.Of<ActionFiled>().Length != 1)
            return Answer.Free;
        var filed = w.On(w.Matter.Of<ActionFiled>()[0]);
        if (w.Matter.Of<TrialBegun>().Length > 0)
            return Answer.Free;
        var two = PlainCalendar.Years(filed, 2);
        var five = PlainCalendar.Years(filed, 5);
        if (!w.IsOver(two, "two years to trial"))
            return new Answer(May.Open | May.Lost, two);
        return w.IsOver(five, "five years to trial") ? Answer.Lost : new Answer(May.None, five);
    }

    public static Answer FiveYears(World w)
    {
        if (w.Matter.Of<ActionEnded>().Length > 0 || w.Matter.Of<TrialBegun>().Length > 0 || w.Matter.Of<ActionFiled>().Length != 1)
            return Answer.Free;
        var five = PlainCalendar.Years(w.On(w.Matter.Of<ActionFiled>()[0]), 5);
        return w.IsOver(five, "five years to trial") ? Answer.Lost : new Answer(May.Open | May.Lost, five);
    }

    public static Answer Tell(World w)
    {
        if (w.Matter.Kind == WorkKind.Private && PrivateStopPaymentReading.HasLaterLender(w))
            return Answer.Free;
        LocalDate? first = null;
        var unsaid = false;
        foreach (var action in w.Matter.Of<ActionFiled>())
        {
            if (action.Enforces.Count > 0 && !action.Enforces.Contains(ActionOn.StopPaymentNotice))
                continue;
            if (!w.Matter.Of<StopPaymentGiven>().Any(s => w.On(s) <= w.On(action)))
                continue;
            unsaid |= action.Enforces.Count == 0;
            first = World.Earlier(first, w.On(action));
        }

        if (first is not { } day || unsaid || w.Matter.Of<ActionTold>().Length > 0)
            return Answer.Free;

        if (w.Matter.IsSurelyLost(w.Matter.Kind == WorkKind.Public ? PublicStopPaymentReading.LastDay : PrivateStopPaymentReading.LastDay))
            return new Answer(May.Lost);

        // Told late without harm the right lives: never lost on this alone.
        return w.IsOver(day.PlusDays(5), "five days to tell") ? Answer.Doubt : new Answer(May.Open | May.Lost, day.PlusDays(5));
    }
}
