using Gylebook.Forecast.Report;
using Gylebook.Pictures;
using Gylebook.Pictures.Sheets;
using Gylebook.Recipes;
using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Store;
using Gylebook.Web.Features.Kits;
using Gylebook.Web.Features.Larders;
using Gylebook.Web.Features.Recipes.Showing;

namespace Gylebook.Web.Features.Recipes.Printing;

/// <summary>A recipe of the book as its sheet, with all that the book holds around it: kit, larder, water.</summary>
public static class PrintedRecipe
{
    /// <summary>The sheet; with findings alone when the recipe cannot be read.</summary>
    /// <param name="book">The book.</param>
    /// <param name="file">The recipe as the book has it.</param>
    /// <param name="kit">The kit; null for the one in use.</param>
    /// <param name="units">What the reader wants to see.</param>
    /// <param name="asked">What the reader asks for besides; null for what everybody gets.</param>
    public static async Task<RecipeSheet> OfAsync(Book book, KeptFile file, Kit? kit, ReaderUnits units, ForecastRequest? asked = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(file);
        Reading<Recipe> read = RecipeFile.Read(file.Text);
        if (read.Value is not { } recipe)
        {
            return new RecipeSheet { Name = file.Name, Findings = read.Findings };
        }

        RecipeWater water = new(book, file.Id);
        await water.LookAsync();
        RecipeSheet sheet = RecipeSheet.Of(
            recipe, kit ?? (await KitInUse.FindAsync(book)).Kit, await OwnLarder.OfAsync(book), water.Plan, units, asked);
        List<Finding> findings = [.. read.Findings, .. sheet.Findings];
        if (water.IsDamaged)
        {
            findings.Insert(0, new("water.damaged", Severity.Error, "water", "the water plan of this recipe is damaged and cannot be read: its liquor counts as pure here"));
        }

        return sheet with { Findings = findings };
    }
}
