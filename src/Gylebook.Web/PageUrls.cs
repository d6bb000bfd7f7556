namespace Gylebook.Web;

/// <summary>The only place where links are built. All are relative to the site's base, wherever a proxy puts it.</summary>
public static class PageUrls
{
    /// <summary>What there is, and what needs a hand.</summary>
    public const string Today = "";

    /// <summary>The list of recipes.</summary>
    public const string Recipes = "recipes";

    /// <summary>The list of kits.</summary>
    public const string Kits = "kits";

    /// <summary>Water plans.</summary>
    public const string Liquors = "liquor";

    /// <summary>Foods: the table and the brewer's own sheets.</summary>
    public const string Foods = "foods";

    /// <summary>A food that is not in the book yet, typed from its label.</summary>
    public const string NewFood = "foods/new";

    /// <summary>Units, theme, demo.</summary>
    public const string Settings = "settings";

    /// <summary>One recipe.</summary>
    public static string Recipe(Guid id) => $"recipes/{id}";

    /// <summary>One recipe as it is looked at; null for what is usual.</summary>
    /// <param name="id">Which recipe.</param>
    /// <param name="panel">The panel that is open.</param>
    /// <param name="bitterness">The model of bitterness that is shown.</param>
    /// <param name="style">Id of the style it is compared with.</param>
    public static string RecipeAs(Guid id, string? panel, string? bitterness, string? style)
    {
        IEnumerable<string> query = new[] { ("open", panel), ("bitterness", bitterness), ("style", style) }
            .Where(part => part.Item2 is not null)
            .Select(part => $"{part.Item1}={Uri.EscapeDataString(part.Item2!)}");
        string all = string.Join('&', query);
        return all.Length == 0 ? Recipe(id) : $"{Recipe(id)}?{all}";
    }

    /// <summary>One kit.</summary>
    public static string Kit(Guid id) => $"kits/{id}";

    /// <summary>One water plan.</summary>
    public static string Liquor(Guid id) => $"liquor/{id}";

    /// <summary>The water plan of a recipe, or the beginning of one.</summary>
    public static string RecipeLiquor(Guid recipe) => $"{Recipe(recipe)}/liquor";

    /// <summary>A food of the table.</summary>
    public static string Food(string id) => $"foods/{Uri.EscapeDataString(id)}";

    /// <summary>The foods that fit a search.</summary>
    public static string FoodsLike(string search) => search.Length == 0 ? Foods : $"foods?search={Uri.EscapeDataString(search)}";

    /// <summary>A food sheet of the brewer's own.</summary>
    public static string OwnFood(Guid id) => $"foods/own/{id}";

    /// <summary>The label of a food sheet, to be typed or changed.</summary>
    public static string FoodLabel(Guid id) => $"{OwnFood(id)}/label";

    /// <summary>The same, with what is asked of the food; a food that is not in the book yet has no id.</summary>
    public static string FoodLabelWith(Guid? id, string? amount, string into, string at, string beside)
    {
        string page = id is { } known ? FoodLabel(known) : NewFood;
        string asked = $"into={Uri.EscapeDataString(into)}&at={Uri.EscapeDataString(at)}&beside={Uri.EscapeDataString(beside)}";
        return amount is null ? $"{page}?{asked}" : $"{page}?amount={Uri.EscapeDataString(amount)}&{asked}";
    }
}
