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

    /// <summary>Foods: the table and the brewer's own sheets.</summary>
    public const string Foods = "foods";

    /// <summary>Units, theme, demo.</summary>
    public const string Settings = "settings";

    /// <summary>One recipe.</summary>
    public static string Recipe(Guid id) => $"recipes/{id}";

    /// <summary>One recipe, with a panel open: <c>versions</c>, <c>history</c>.</summary>
    public static string RecipeWith(Guid id, string panel) => $"recipes/{id}?open={panel}";

    /// <summary>One kit.</summary>
    public static string Kit(Guid id) => $"kits/{id}";

    /// <summary>A food of the table.</summary>
    public static string Food(string id) => $"foods/{Uri.EscapeDataString(id)}";

    /// <summary>The foods that fit a search.</summary>
    public static string FoodsLike(string search) => search.Length == 0 ? Foods : $"foods?search={Uri.EscapeDataString(search)}";

    /// <summary>A food sheet of the brewer's own.</summary>
    public static string OwnFood(Guid id) => $"foods/own/{id}";
}
