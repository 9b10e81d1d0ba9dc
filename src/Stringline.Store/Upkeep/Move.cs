namespace Stringline.Store.Upkeep;

/// <summary>Moves a store from one database to the other.</summary>
public static class Move
{
    /// <summary>
    /// Copies a store and proves that both are equal: every chain and paper of both walked, the same counts, the same seal. The old store
    /// stays as it is. Nobody may write to it meanwhile; if somebody did, the seals differ and the move is refused.
    /// </summary>
    /// <param name="from">The store's address.</param>
    /// <param name="to">The address to move to; at most an empty store is there.</param>
    /// <param name="clock">For the stores.</param>
    /// <param name="progress">Told how far it is; may be null.</param>
    /// <returns>The check of the new store.</returns>
    /// <exception cref="StoreException">One of them cannot be used, or is not whole, or they are not equal.</exception>
    public static CheckReport To(string from, string to, IClock clock, IProgress<StoreProgress>? progress = null)
    {
        using var source = Journals.Connect(from, clock, OpenStore.MustExist);
        using var target = Journals.Connect(to, clock, OpenStore.OrMake);
        var copy = StoreCopy.Copy(source, target, progress);
        StoreCopy.MustBeEqual(source.Check(progress), copy, target.Name);
        return copy;
    }
}
