using Gylebook.Recipes.Forms;
using Gylebook.Forecast;
using Gylebook.Forecast.Foods;
using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Data;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Science.Foods.Words;
using Gylebook.Science.Quantities;
using Gylebook.Store;
using Gylebook.Web.Features.Larders;
using Gylebook.Web.Features.Kits;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Foods;

/// <summary>One food: what it is made of, what it does, what to look out for, and who says so.</summary>
public sealed partial class FoodPage
{
    private ShownFood? _food;
    private IReadOnlyList<Finding> _findings = [];
    private IReadOnlyList<Finding> _ofKit = [];
    private IReadOnlyList<Caution> _cautions = [];
    private IReadOnlyList<string> _nearest = [];

    /// <summary>A row of the table, by id.</summary>
    [Parameter]
    public string? FoodId { get; set; }

    /// <summary>A sheet of the book.</summary>
    [Parameter]
    public Guid? SheetId { get; set; }

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        (_food, _findings, _nearest) = (null, [], []);
        if (SheetId is { } id)
        {
            await OwnAsync(id);
        }
        else if (FoodId is not null)
        {
            OfTable(FoodId);
        }

        List<Finding> ofKit = [];
        Entered<Length>? height = Dose.HeightOn((await KitInUse.FindAsync(Book)).Own, ofKit);
        (_ofKit, _cautions) = (ofKit, _food?.Makeup is { } makeup ? CautionsOf(makeup, height) : []);
    }

    /// <summary>What can go wrong wherever it goes in: each hazard once, for a kilogram into twenty litres.</summary>
    private static IReadOnlyList<Caution> CautionsOf(FoodMakeup makeup, Entered<Length>? height) =>
    [
        .. Places.SelectMany(at => FoodCautions.Of(makeup, new Dose(Mass.FromKilograms(1), at, VolumeAt20C.FromLitres(20)) { Height = height }))
            .DistinctBy(c => c.Code),
    ];

    private static readonly AdditionTime[] Places =
    [
        new(AdditionPoint.Mash), new(AdditionPoint.KnockOut), new(AdditionPoint.Ferment, 3), new(AdditionPoint.Package),
    ];

    private void OfTable(string id)
    {
        Found<Food> found = FoodTable.Find(id);
        _nearest = found.Nearest;
        if (found.Match is { } row)
        {
            MadeUpFood made = FoodMakeups.From(row);
            _findings = made.Findings;
            _food = new ShownFood(
                row.Id, row.Kind, row.Name, row.Family, row.Composition, made.Makeup, row.Allergens, null, row.Provenance.Source, row.Provenance.Status, false);
        }
    }

    private async Task OwnAsync(Guid id)
    {
        if (await Book.Foods.FindAsync(id) is not { } sheet)
        {
            return;
        }

        Reading<FoodSheet> reading = FoodFile.Read(sheet.Document);
        _findings = reading.Findings;
        if (await OwnLarder.ReadableAsync(Book.Foods.Drafts, sheet) is FoodSheet food)
        {
            MadeUpFood made = FoodMakeups.From(food);
            _findings = [.. reading.Findings.Where(finding => finding.Severity != Severity.Note), .. made.Findings];
            _food = new ShownFood(
                food.Id, Gylebook.Recipes.Ingredients.IngredientKind.Food, food.Name, FoodFamilies.Find(food.Family).Match ?? FoodFamilies.Of("other"), made.Composition ?? new FoodComposition(), made.Makeup,
                made.Makeup is { } makeup ? Allergens.State(AllergenList.EuFourteen, [.. makeup.Words]).Contains : [], food.MayContain, food.Composition?.Source ?? "its label, as printed", sheet.IsDemo ? "invented" : "typed", true)
            {
                Trials = food.Trials,
            };
        }
    }

    private sealed record ShownFood(
        string Id, Gylebook.Recipes.Ingredients.IngredientKind Kind, string Name, FoodFamily Family, FoodComposition Composition, FoodMakeup? Makeup, IReadOnlyList<string> Allergens, string? MayContain,
        string Source, string Status, bool IsOwn)
    {
        public IReadOnlyList<KeptTrial> Trials { get; init; } = [];
    }
}
