namespace Stringline.Law.LienableAmount;

/// <summary>
/// What is left of the sum that a claim or a notice states, once a paper lowers it: a partial release, a partial satisfaction, a reduction.
/// </summary>
public static class Lowered
{
    /// <summary>
    /// Dollars and cents that it still stands for; null where nothing would be left, which is a full release and no lowering.
    /// </summary>
    /// <param name="stated">Dollars and cents stated.</param>
    /// <param name="by">Dollars and cents by which it is lowered.</param>
    public static decimal? Left(decimal stated, decimal by) => by < stated ? stated - by : null;
}
