using Gylebook.Recipes.Lots;

namespace Gylebook.Gyles.BrewDay;

/// <summary>What logs call a lot by: its sheet's id and its own name. It stays what it is when the sheet is gone.</summary>
public static class LotKey
{
    /// <summary>The key of a lot: <c>sheet/lot</c>.</summary>
    public static string Of(LarderSheet sheet, Lot lot)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(lot);
        return $"{sheet.Id}/{lot.Name}";
    }

    /// <summary>What stands on the sack, of a key.</summary>
    public static string NameIn(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        return key[(key.IndexOf('/', StringComparison.Ordinal) + 1)..];
    }
}
