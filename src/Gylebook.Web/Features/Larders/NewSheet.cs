using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Lots;
using Gylebook.Store;
using Gylebook.Web.Features.Recipes.Showing;
using Gylebook.Web.Reading;

namespace Gylebook.Web.Features.Larders;

/// <summary>Sheets that are begun from a row of the tables.</summary>
public static class NewSheet
{
    /// <summary>A sheet of something like that row, with an id that no other sheet has.</summary>
    /// <param name="choice">The row.</param>
    /// <param name="name">What the sheet is to be called.</param>
    /// <param name="others">The sheets there are.</param>
    public static LarderSheet Like(IngredientChoice choice, string name, IEnumerable<Sheet> others)
    {
        string id = IdOf(name, others);
        return choice.Kind switch
        {
            IngredientKind.Malt => new MaltSheet { Id = id, Name = name, Like = choice.Of },
            IngredientKind.Hop => new HopSheet { Id = id, Name = name, Like = choice.Of },
            IngredientKind.Yeast => Yeast(choice.Of, name, others),
            _ => new ShelfSheet { Id = id, Name = name, Like = choice.Of, Kind = choice.Kind },
        };
    }

    /// <summary>A sheet of a yeast like that row of the tables.</summary>
    /// <param name="like">The row, by id or name.</param>
    /// <param name="name">What the sheet is to be called.</param>
    /// <param name="others">The sheets there are.</param>
    public static YeastSheet Yeast(string like, string name, IEnumerable<Sheet> others) => new() { Id = IdOf(name, others), Name = name, Like = like };

    private static string IdOf(string name, IEnumerable<Sheet> others)
    {
        HashSet<string?> taken = [.. others.Where(WholeText.Is).Select(sheet => LarderDraft.Of(sheet.Document)["id"])];
        return FreeId.Of($"my {name}", "sheet", taken.Contains);
    }
}
