using Gylebook.Store.Rows;

namespace Gylebook.Store;

/// <summary>The brewer's food sheets.</summary>
public sealed class BookFoods : BookSheets<FoodRow>
{
    internal BookFoods(BookAccess access)
        : base(access, new FoodDraftRows())
    {
    }

    /// <summary>The food that recipes name so; the one last changed, should two claim the id; null when none does.</summary>
    /// <param name="foodId">The <c>id</c> in the food's document.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public async Task<Sheet?> FindAsync(string foodId, CancellationToken cancellation = default)
    {
        List<Sheet> found = await ChooseAsync(
            rows => rows.Where(f => f.FoodId == foodId && f.DeletedTicks == null).OrderByDescending(f => f.UpdatedTicks).Take(1),
            cancellation);
        return found.SingleOrDefault();
    }
}
