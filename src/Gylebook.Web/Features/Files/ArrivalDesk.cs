using Gylebook.Forecast.Report;
using Gylebook.Recipes.Interchange.OpenFormats.Arriving;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Store;
using Gylebook.Web.Features.Kits;
using Gylebook.Web.Features.Larders;

namespace Gylebook.Web.Features.Files;

/// <summary>Files of the open standards on their way into the book.</summary>
public static class ArrivalDesk
{
    /// <summary>What the book knows that such a file does not say: the kit in use, and what of a brew reaches its fermenter.</summary>
    public static async Task<ArrivalWishes> WishesAsync(Book book, CancellationToken cancellation = default)
    {
        Kit kit = (await KitInUse.FindAsync(book, cancellation)).Kit;
        Larder larder = await OwnLarder.OfAsync(book, cancellation);
        return new ArrivalWishes { Kit = kit, CastOf = (recipe, sheets) => StatedFigures.CastOf(recipe, kit, [.. sheets, .. larder.Sheets]) };
    }

    /// <summary>Puts all that a file brought into the book.</summary>
    public static Task<Landing> LandAsync(Book book, Arrival arrival, string from, string tabId, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(arrival);
        return book.Landings.PutAsync(arrival.Files.Select(file => file.Text), from, tabId, cancellation);
    }
}
