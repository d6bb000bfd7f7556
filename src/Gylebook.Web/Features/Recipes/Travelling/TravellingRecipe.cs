using Gylebook.Forecast.Report;
using Gylebook.Recipes;
using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Interchange.BeerJson;
using Gylebook.Recipes.Interchange.BeerXml;
using Gylebook.Recipes.Interchange.Csv;
using Gylebook.Recipes.Interchange.OpenFormats;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Liquors;
using Gylebook.Store;
using Gylebook.Web.Features.Kits;
using Gylebook.Web.Features.Larders;
using Gylebook.Web.Features.Recipes.Showing;

namespace Gylebook.Web.Features.Recipes.Travelling;

/// <summary>A format in which a recipe leaves for other programs.</summary>
/// <param name="Word">In addresses and on the command line: <c>beerjson</c>.</param>
/// <param name="Title">What it is called.</param>
/// <param name="Ending">Of its files.</param>
/// <param name="MediaType">Of its files.</param>
public sealed record TravelFormat(string Word, string Title, string Ending, string MediaType)
{
    /// <summary>What it is called over a part of a page.</summary>
    public string Heading => $"{char.ToUpperInvariant(Title[0])}{Title[1..]}";

    private Func<Recipe, Larder, BrewedFigures, WaterPlan?, (string, IReadOnlyList<Travel>)> Make { get; init; } = null!;

    /// <summary>All of them.</summary>
    public static IReadOnlyList<TravelFormat> All { get; } =
    [
        new("beerjson", BeerJsonFile.Standard, "beerjson.json", "application/json") { Make = (recipe, larder, figures, water) => BeerJsonFile.Write(recipe, larder, figures, water: water) },
        new("beerxml", BeerXmlFile.Standard, "xml", "application/xml") { Make = (recipe, larder, figures, water) => BeerXmlFile.Write(recipe, larder, figures, water: water) },
        new("csv", "a table", "csv", "text/csv") { Make = (recipe, larder, _, _) => RecipeCsv.Write(recipe, larder) },
    ];

    /// <summary>The one of that word; null when there is none.</summary>
    public static TravelFormat? Of(string? word) => All.FirstOrDefault(format => format.Word == word);

    /// <summary>A recipe in this format.</summary>
    internal (string Text, IReadOnlyList<Travel> Travels) Write(Recipe recipe, Larder larder, BrewedFigures figures, WaterPlan? water) => Make(recipe, larder, figures, water);
}

/// <summary>A recipe as it leaves for other programs.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Text">The file; null when the recipe cannot be read.</param>
/// <param name="Travels">What does not travel as it stands.</param>
/// <param name="Findings">What is wrong or doubtful in the recipe itself.</param>
public sealed record TravellingRecipe(string Name, string? Text, IReadOnlyList<Travel> Travels, IReadOnlyList<Finding> Findings)
{
    /// <summary>A recipe of the book, with the figures it comes to on its kit.</summary>
    /// <param name="book">The book.</param>
    /// <param name="file">The recipe as the book has it.</param>
    /// <param name="format">In which format.</param>
    /// <param name="kit">The kit; null for the one in use.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public static async Task<TravellingRecipe> OfAsync(Book book, KeptFile file, TravelFormat format, Kit? kit = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(file);
        Reading<Recipe> read = RecipeFile.Read(file.Text);
        if (read.Value is not { } recipe)
        {
            return new TravellingRecipe(file.Name, null, [], read.Findings);
        }

        RecipeWater water = new(book, file.Id);
        await water.LookAsync();
        return Of(recipe, kit ?? (await KitInUse.FindAsync(book, cancellation)).Kit, await OwnLarder.OfAsync(book, cancellation), format, water.Plan);
    }

    /// <summary>A recipe, with the figures it comes to on a kit.</summary>
    public static TravellingRecipe Of(Recipe recipe, Kit kit, Larder larder, TravelFormat format, WaterPlan? water = null)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        ArgumentNullException.ThrowIfNull(format);
        BrewForecast forecast = Forecaster.Forecast(recipe, kit, larder, "travel", water);
        (string text, IReadOnlyList<Travel> travels) = format.Write(recipe, larder, StatedFigures.Of(forecast), water);
        return new TravellingRecipe(recipe.Name, text, travels, forecast.Findings);
    }
}
