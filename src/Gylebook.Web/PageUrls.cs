using Gylebook.Gyles;
using Gylebook.Web.Features.Recipes.Showing;

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

    /// <summary>What is at hand, and what it cost.</summary>
    public const string Larder = "larder";

    /// <summary>The gyles: planned, brewing, fermenting, packaged.</summary>
    public const string Gyles = "gyles";

    /// <summary>Units, theme, demo.</summary>
    public const string Settings = "settings";

    /// <summary>In the query of the way to begin: which planned gyle it is.</summary>
    public const string PlannedGyle = "gyle";

    /// <summary>Floats and whatever else sends readings.</summary>
    public const string Devices = "settings/devices";

    /// <summary>One of them as its file, as the book has it.</summary>
    /// <param name="kind">One of <see cref="Gylebook.Store.BookFiles.Kinds"/>.</param>
    /// <param name="id">Which one.</param>
    public static string File(string kind, Guid id) => $"files/{kind}/{id}";

    /// <summary>One recipe.</summary>
    public static string Recipe(Guid id) => $"recipes/{id}";

    /// <summary>One recipe, with the amount of that line to be typed over.</summary>
    public static string RecipeAt(Guid id, int line) => Invariant($"{Recipe(id)}?{RecipeQuery.Line}={line}");

    /// <summary>One recipe as it is looked at; null for what is usual.</summary>
    /// <param name="id">Which recipe.</param>
    /// <param name="panel">The panel that is open.</param>
    /// <param name="bitterness">The model of bitterness that is shown.</param>
    /// <param name="style">Id of the style it is compared with.</param>
    public static string RecipeAs(Guid id, string? panel, string? bitterness, string? style) =>
        Asking(Recipe(id), ("open", panel), ("bitterness", bitterness), ("style", style));

    /// <summary>One recipe as a sheet to print.</summary>
    /// <param name="id">Which recipe.</param>
    /// <param name="bitterness">The model of bitterness that is shown; null for the usual one.</param>
    public static string RecipeSheet(Guid id, string? bitterness) => Asking($"{Recipe(id)}/sheet", ("bitterness", bitterness));

    /// <summary>The way out of a recipe: onto its public page.</summary>
    public static string Publish(Guid id) => $"{Recipe(id)}/publish";

    /// <summary>A published recipe's page, as everybody sees it.</summary>
    public static string Public(string slug) => $"p/{slug}/";

    /// <summary>One recipe for other programs: the formats there are, and what each cannot carry.</summary>
    public static string RecipeForOthers(Guid id) => $"{Recipe(id)}/others";

    /// <summary>One recipe as a file for other programs.</summary>
    /// <param name="id">Which recipe.</param>
    /// <param name="format">In which format: <c>beerjson</c>.</param>
    public static string RecipeAsFile(Guid id, string format) => $"{RecipeForOthers(id)}/{format}";

    /// <summary>One gyle: its plan beside what happened.</summary>
    public static string Gyle(Guid id) => $"gyles/{id}";

    /// <summary>What has to be at hand before a recipe is brewed, and the way to begin.</summary>
    /// <param name="recipe">Of which recipe.</param>
    /// <param name="planned">The planned gyle that is to start; null for a new one.</param>
    public static string StartGyle(Guid recipe, Guid? planned = null) => Asking($"{Recipe(recipe)}/start", (PlannedGyle, planned?.ToString()));

    /// <summary>What a brew of it wants, as a list to print.</summary>
    public static string Shopping(Guid recipe) => $"{Recipe(recipe)}/shopping";

    /// <summary>A gyle's brew day.</summary>
    public static string BrewDay(Guid id) => $"{Gyle(id)}/brew";

    /// <summary>Where a gyle wants a hand by how far it has come; null where nowhere in particular.</summary>
    public static string? OfStatus(Guid id, GyleStatus status) => status switch
    {
        GyleStatus.Fermenting => Fermenter(id),
        GyleStatus.Packaged or GyleStatus.Finished => Glass(id),
        _ => null,
    };

    /// <summary>A gyle in the fermenter.</summary>
    public static string Fermenter(Guid id, string? portion = null) => $"{Gyle(id)}/ferment{Of(portion)}";

    /// <summary>A gyle on its way into bottles or a keg.</summary>
    public static string Package(Guid id, string? portion = null) => $"{Gyle(id)}/package{Of(portion)}";

    /// <summary>A gyle's bottle labels as a sheet to print.</summary>
    public static string Labels(Guid id, string? portion = null) => $"{Gyle(id)}/labels{Of(portion)}";

    /// <summary>A gyle in the glass: tasted, and held against its plan.</summary>
    public static string Glass(Guid id) => $"{Gyle(id)}/glass";

    /// <summary>A gyle's brew day as a sheet to print.</summary>
    public static string GyleSheet(Guid id) => $"{Gyle(id)}/sheet";

    /// <summary>A gyle's days as a calendar file.</summary>
    public static string GyleCalendar(Guid id) => $"{Gyle(id)}/days.ics";

    /// <summary>One kit, with a panel open; null for none.</summary>
    public static string Kit(Guid id, string? panel = null) => Asking($"kits/{id}", ("open", panel));

    /// <summary>One water plan, with a panel open; null for none.</summary>
    public static string Liquor(Guid id, string? panel = null) => Asking($"liquor/{id}", ("open", panel));

    /// <summary>One sheet of the larder, with a panel open; null for none.</summary>
    public static string LarderSheet(Guid id, string? panel = null) => Asking($"larder/{id}", ("open", panel));

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

    /// <summary>The same, with a panel open, what is asked of the food and the recipe that wants it; a food that is not in the book yet has no id.</summary>
    public static string FoodLabelWith(Guid? id, string? panel, string? amount, string into, string at, string beside, Guid? recipe)
    {
        string page = id is { } known ? FoodLabel(known) : NewFood;
        return Asking(page, ("open", panel), ("amount", amount), ("into", into), ("at", at), ("beside", beside), ("for", recipe?.ToString()));
    }

    /// <summary>A new food that a recipe wants.</summary>
    /// <param name="recipe">Which recipe it goes into.</param>
    /// <param name="name">What it is called.</param>
    /// <param name="at">When it goes in.</param>
    /// <param name="into">Into how much; null when that is not known.</param>
    public static string NewFoodFor(Guid recipe, string name, string at, string? into) =>
        Asking(NewFood, ("name", name), ("at", at), ("into", into), ("for", recipe.ToString()));

    /// <summary>A page with what is asked of it; what is null is not.</summary>
    private static string Asking(string page, params IEnumerable<(string Key, string? Text)> asked)
    {
        string all = string.Join('&', asked.Where(part => part.Text is not null).Select(part => $"{part.Key}={Uri.EscapeDataString(part.Text!)}"));
        return all.Length == 0 ? page : $"{page}?{all}";
    }

    /// <summary>Which portion is meant; nothing for the whole.</summary>
    private static string Of(string? portion) => portion is null ? "" : $"?portion={Uri.EscapeDataString(portion)}";
}
