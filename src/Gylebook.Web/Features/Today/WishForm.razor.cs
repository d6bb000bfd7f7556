using Gylebook.Forecast.Solving;
using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Larders;
using Gylebook.Science.Quantities;
using Gylebook.Store;
using Gylebook.Web.Features.Kits;
using Gylebook.Web.Features.Larders;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Logging;

namespace Gylebook.Web.Features.Today;

/// <summary>Asks what somebody would like to drink, and leads to a first draft of it.</summary>
public sealed partial class WishForm
{
    private const string Litres = "litres", Alcohol = "alcohol", Gravity = "gravity", Colour = "colour", Bitterness = "bitterness", Food = "food", Amount = "amount";

    private IReadOnlyList<Asked> _asked = [];
    private IReadOnlyList<Finding> _problems = [];
    private List<string> _foods = [];
    private string _kitName = "";
    private bool _isOpen, _isMaking;

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>Where what fails is told.</summary>
    [Inject]
    public required ILoggerFactory Logs { get; init; }

    /// <summary>Leads to the draft.</summary>
    [Inject]
    public required NavigationManager Navigation { get; init; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    private ReaderUnits Units => Shown.Units;

    private async Task ToggledAsync()
    {
        _isOpen = !_isOpen;
        if (_isOpen && _asked.Count == 0)
        {
            _asked = Blank();
            _kitName = (await KitInUse.FindAsync(Book)).Kit.Name;
            Larder larder = await OwnLarder.OfAsync(Book);
            _foods = [.. larder.Sheets.OfType<FoodSheet>().Select(sheet => sheet.Name).Concat(FoodTable.All.Select(food => food.Name)).Distinct()];
        }
    }

    /// <summary>A beer to start from, in the reader's units; there to be typed over.</summary>
    private IReadOnlyList<Asked> Blank() =>
    [
        new(Litres, "Beer", Units.Volume switch { VolumeUnit.UsGallon => "5 US gal", VolumeUnit.ImperialGallon => "4 imp gal", _ => "20 L" }),
        new(Alcohol, "Alcohol", "5 %"),
        new(Gravity, "or original gravity", ""),
        new(Colour, "Colour", Units.Colour == ColourUnit.Ebc ? "20 EBC" : "10 SRM"),
        new(Bitterness, "Bitterness", "30 IBU"),
        new(Food, "With a food", ""),
        new(Amount, "How much of it", ""),
    ];

    private bool IsWrong(Asked asked) => _problems.Any(problem => problem.Where == asked.Id);

    private async Task MakeAsync()
    {
        List<Finding> problems = [];
        FirstWish wish = Wish(problems);
        _problems = problems;
        if (_isMaking || problems.Count > 0)
        {
            return;
        }

        _isMaking = true;
        try
        {
            KitInUse kit = await KitInUse.FindAsync(Book);
            Larder larder = await OwnLarder.OfAsync(Book);
            ReckoningDoor door = new(Logs.CreateLogger<WishForm>());
            FirstDraft draft = await Task.Run(() => door.Reckon(() => new FirstRecipe(kit.Kit, larder).Of(wish), Told, out Finding? problem) ?? new FirstDraft(null, [], [problem!]));
            _problems = draft.Findings;
            if (draft.Recipe is { } recipe)
            {
                Navigation.NavigateTo(PageUrls.Recipe(await Book.Recipes.CreateAsync(RecipeFile.Write(recipe))));
            }
        }
        finally
        {
            _isMaking = false;
        }
    }

    private FirstWish Wish(List<Finding> problems) => new()
    {
        Litres = Read<VolumeAt20C>(Litres, problems) ?? default,
        Alcohol = TextOf(Alcohol).Length == 0 ? null : Read<Fraction>(Alcohol, problems),
        OriginalGravity = TextOf(Gravity).Length == 0 ? null : Read<SpecificGravity>(Gravity, problems),
        Colour = Read<BeerColour>(Colour, problems) ?? default,
        Bitterness = Read<Bitterness>(Bitterness, problems) ?? default,
        Food = TextOf(Food) is { Length: > 0 } food ? food : null,
        FoodAmount = TextOf(Amount).Length == 0 ? null : Read<Mass>(Amount, problems),
    };

    private string Told() => string.Join('\n', _asked.Select(asked => $"{asked.Id}: {asked.Text}"));

    private string TextOf(string id) => _asked.First(asked => asked.Id == id).Text.Trim();

    private Entered<T>? Read<T>(string id, List<Finding> problems)
        where T : struct, IQuantity<T>
    {
        if (TypedText.TryRead(TextOf(id), null, Units, out Entered<T> entered, out string problem))
        {
            return entered;
        }

        problems.Add(new Finding($"draft.{id}", Severity.Error, id, problem, TextOf(id), UnitTable.RangeOf<T>()));
        return null;
    }

    /// <summary>A field of the wish.</summary>
    private sealed class Asked(string id, string label, string text)
    {
        public string Id => id;

        public string Label => label;

        public string Text { get; set; } = text;
    }
}
