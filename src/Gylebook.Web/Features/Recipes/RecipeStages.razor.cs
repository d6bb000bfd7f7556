using Gylebook.Engine.State;
using Gylebook.Forecast.Report.Stages;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Web.Features.Recipes.Showing;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Recipes;

/// <summary>What goes in, by stage.</summary>
public sealed partial class RecipeStages
{
    private static readonly (string, string)[] MashMethods =
        [("bag", "in a bag"), ("tun", "in a tun"), ("part", "small, beside extract"), ("none", "none, extract only")];

    private static readonly (string, string)[] SpargeMethods =
        [("none", "none"), ("pour", "pour over the bag"), ("dunk", "dunk the bag"), ("batch", "batch"), ("continuous", "continuous")];

    private static readonly string[] WishFields = ["package.volume", "package.in", "package.carbonation"];
    private static readonly string[] BoilFields = ["souring.culture", "souring.temperature", "souring.ph", "souring.time", "boil.time"];
    private static readonly string[] StandFields = ["stand.temperature", "stand.time"];
    private static readonly string[] PackageFields = WishFields;

    private int? _open;

    /// <summary>The recipe.</summary>
    [Parameter]
    [EditorRequired]
    public required RecipeDesk Desk { get; set; }

    /// <summary>Finds what can go in.</summary>
    [Parameter]
    [EditorRequired]
    public required IngredientSearch Search { get; set; }

    /// <summary>The kit, to be chosen beside the wish.</summary>
    [Parameter]
    public RenderFragment? KitSettings { get; set; }

    private IReadOnlyList<(string Value, string Words)> PackageChoices => [.. Desk.Kit.Packages.Select(p => (p.Kind, p.Kind)).Distinct()];

    private string[] MashFields =>
    [
        "mash.method", "mash.sparge.method", "mash.sparge.volume", "mash.sparge.temperature", "liquor.strike", "liquor.topUp",
        .. Rests("mash.rests"),
    ];

    private string[] FermentFields => [.. Rests("ferment"), .. Items("portions", "name", "share")];

    private string Gravity => Desk.Outlook?["originalGravity"] is { } band ? Desk.Shown.Gravity(band.Likely) : "";

    private string Ibu => Desk.Outlook?["bitterness"] is { } band ? Desk.Shown.Ibu(band.Likely) : "";

    private string MashSummary => Desk.Outlook is { HasRun: true } outlook && outlook.Recipe.Mash is not null && outlook["mashYield"] is { } yield
        ? $"{Desk.Shown.Kilograms(outlook.Recipe.Ingredients.Where(l => l.Kind == Gylebook.Recipes.Ingredients.IngredientKind.Malt).Sum(l => l.Amount.Mass?.Value.Kilograms ?? 0))} of malt · {Desk.Shown.Percent(yield.Likely)} of it becomes extract, {Desk.Shown.Percent(outlook["laboratoryShare"]?.Likely ?? 0)} of what a laboratory finds"
        : "";

    private string BoilSummary => Reached(Stage.CopperUp) is { } copperUp
        ? $"starts with {Told(copperUp)}"
        : "";

    private string StandSummary => Reached(Stage.KnockOut) is { } knockOut
        ? Told(knockOut)
        : "";

    private string FermentSummary => Reached(Stage.Cast) is { } cast
        ? $"cast: {Told(cast)}"
        : "";

    private string PackageSummary => Desk.Outlook?.Forecast.Package is { } package && Desk.Outlook["packagedLitres"] is { } litres
        ? $"{Desk.Shown.Litres(litres.Likely)} · {Desk.Shown.Volumes(package.Co2Volumes)}{(package.PrimingSugarGrams > 0 ? $" · primed with {Desk.Shown.Kilograms(package.PrimingSugarGrams / 1000)} of white sugar, planned" : "")}"
        : "";

    /// <summary>Litres and gravity; and what a hydrometer reads with the solids stirred up, where that is another number.</summary>
    private string Told(StageRow row)
    {
        string clear = Desk.Shown.Gravity(row.Gravity), stirred = Desk.Shown.Gravity(row.SuspensionGravity);
        string told = $"{Desk.Shown.Litres(row.LitresAt20C)} at {clear}";
        return stirred == clear ? told : $"{told}, {stirred} with its solids stirred up";
    }

    private void Toggle(int line) => _open = _open == line ? null : line;

    private StageRow? Reached(Stage stage) => Desk.Outlook?.Forecast.Stages.FirstOrDefault(s => s.Stage == stage);

    private IEnumerable<string> Rests(string list) => Items(list, "temperature", "time");

    private IEnumerable<string> Items(string list, params string[] keys) =>
        Enumerable.Range(0, Desk.Now.CountOf(list)).SelectMany(i => keys.Select(key => Invariant($"{list}[{i}].{key}")));

    private static DraftEdit<RecipeDraft>? ChooseSparge(RecipeDraft draft, string word) =>
        draft.Sparge(Enum.Parse<SpargeMethod>(word, ignoreCase: true));
}
