using Gylebook.Forecast;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Ingredients;
using Gylebook.Web.Features.Recipes.Showing;
using Gylebook.Web.Widgets;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Recipes;

/// <summary>One stage of the recipe, edited in place.</summary>
public sealed partial class StageSection
{
    private const double UsualBoilMinutes = 60;

    private readonly string _id = FieldIds.Next();

    /// <summary>The recipe.</summary>
    [Parameter]
    [EditorRequired]
    public required RecipeDesk Desk { get; set; }

    /// <summary>Which stage.</summary>
    [Parameter]
    [EditorRequired]
    public required RecipeStage Stage { get; set; }

    /// <summary>Its name on the page.</summary>
    [Parameter]
    [EditorRequired]
    public required string Title { get; set; }

    /// <summary>The stage in a few words.</summary>
    [Parameter]
    public string Summary { get; set; } = "";

    /// <summary>Its own fields.</summary>
    [Parameter]
    public RenderFragment? Settings { get; set; }

    /// <summary>What was reckoned for it, under what goes in.</summary>
    [Parameter]
    public RenderFragment? Advice { get; set; }

    /// <summary>Paths of those fields, whose findings stand under them.</summary>
    [Parameter]
    public string[] ShownFields { get; set; } = [];

    /// <summary>Finds what can go in.</summary>
    [Parameter]
    [EditorRequired]
    public required IngredientSearch Search { get; set; }

    /// <summary>The line whose details are open; null for none.</summary>
    [Parameter]
    public int? OpenLine { get; set; }

    /// <summary>Details of a line are to open or close.</summary>
    [Parameter]
    public EventCallback<int> LineToggled { get; set; }

    /// <summary>Leads to the label of a food that nothing here is called by.</summary>
    [Inject]
    public required NavigationManager Navigation { get; init; }

    private IReadOnlyList<DraftLine> Lines => [.. Desk.Now.Lines.Where(line => StagePlaces.Of(line.Time.Point) == Stage)];

    private string AddHint => Stage switch
    {
        RecipeStage.Mash => "Add a malt or a food",
        RecipeStage.Boil => "Add hops, sugar or a food",
        RecipeStage.KnockOut => "Add hops or a food",
        RecipeStage.Ferment => "Add yeast, fruit, sugar, hops",
        _ => "Add sugar to prime",
    };

    private IngredientKind[] First => Stage switch
    {
        RecipeStage.Mash => [IngredientKind.Malt, IngredientKind.Food, IngredientKind.Salt, IngredientKind.Acid, IngredientKind.Sugar, IngredientKind.Extract],
        RecipeStage.Boil => [IngredientKind.Hop, IngredientKind.Sugar, IngredientKind.Extract, IngredientKind.Food, IngredientKind.Spice, IngredientKind.Fining],
        RecipeStage.KnockOut => [IngredientKind.Hop, IngredientKind.Food, IngredientKind.Spice, IngredientKind.Sugar],
        RecipeStage.Ferment => [IngredientKind.Yeast, IngredientKind.Food, IngredientKind.Sugar, IngredientKind.Spice, IngredientKind.Hop],
        _ => [IngredientKind.Sugar, IngredientKind.Food, IngredientKind.Spice, IngredientKind.Fining],
    };

    private IReadOnlyList<IngredientChoice> Find(string typed) => Search.Find(typed, First);

    private async Task AddAsync(IngredientChoice choice)
    {
        double boil = Desk.Now.Recipe?.Boil?.Time.Value.Minutes ?? UsualBoilMinutes;
        AdditionTime at = IngredientSearch.StartingTime(Stage, choice.Kind, boil);
        if (choice.IsNew)
        {
            Navigation.NavigateTo(PageUrls.NewFoodFor(Desk.Draft.Id, choice.Of, Words.Of(at), Desk.TextAt("package.volume")));
            return;
        }

        await Desk.EditAsync(draft =>
        {
            DraftEdit<RecipeDraft> edit = draft.Add(choice.Kind, choice.Of, IngredientSearch.StartingAmount(choice.Kind), at);
            Desk.NewLine = edit.After.Lines.Last(line => line.Of == choice.Of && line.Time == at).Number;
            return edit;
        });
    }
}
