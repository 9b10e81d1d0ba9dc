using Dapper;

namespace Stringline.Store.Upkeep;

/// <summary>Moves a store from one database to the other.</summary>
public static class Move
{
    /// <summary>
    /// Copies a store and proves that both are equal: every chain and paper of both walked, the same counts, the same seal. The old store
    /// stays as it is, and nobody can write to it until the copy is proved.
    /// </summary>
    /// <param name="from">The store's address.</param>
    /// <param name="to">The address to move to; at most an empty store is there.</param>
    /// <param name="clock">For the stores.</param>
    /// <param name="progress">Told how far it is; may be null.</param>
    /// <returns>The check of the new store.</returns>
    /// <exception cref="StoreException">
    /// One of them cannot be used, or is not whole, or they are not equal; or the old one is a file that another program has open, which
    /// would go on writing to it.
    /// </exception>
    public static CheckReport To(string from, string to, IClock clock, IProgress<StoreProgress>? progress = null)
    {
        // First that it is a store: what belongs to another program is not touched.
        using (Journals.Connect(from, clock, OpenStore.MustExist))
        {
        }

        if (StoreAddress.Read(from) is StoreAddress.InFile file)
            SoleUse.Of(file.Path)?.Dispose();
        using var source = Journals.Connect(from, clock, OpenStore.MustExist);
        using var target = Journals.Connect(to, clock, OpenStore.OrMake);
        return source.Database.Change((connection, transaction) =>
        {
            if (source.Database.BeforeSealing.Length > 0)
                connection.Execute(source.Database.BeforeSealing, transaction: transaction);
            var copy = StoreCopy.Copy(source, target, progress);
            StoreCopy.MustBeEqual(source.Check(progress), copy, target.Name);
            return (copy, false);
        });
    }
}
