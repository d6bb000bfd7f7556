using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Liquors;
using Gylebook.Store;
using Gylebook.Web.Reading;

namespace Gylebook.Web.Features.Recipes.Showing;

/// <summary>A recipe's water as the book had it when somebody looked last.</summary>
internal sealed class RecipeWater(Book book, Guid recipe)
{
    private string? _text;

    /// <summary>The plan; null when there is none, or it cannot be read.</summary>
    public WaterPlan? Plan { get; private set; }

    /// <summary>Whether there is a plan whose text is damaged.</summary>
    public bool IsDamaged { get; private set; }

    /// <summary>Looks again.</summary>
    /// <returns>Whether it is another water now.</returns>
    public async Task<bool> LookAsync()
    {
        Sheet? sheet = await book.Waters.OfRecipeAsync(recipe);
        string? text = sheet?.Document;
        if (text == _text)
        {
            return false;
        }

        IsDamaged = sheet is not null && !WholeText.Is(sheet);
        (_text, Plan) = (text, text is null || IsDamaged ? null : WaterDraft.Of(text).Plan);
        return true;
    }
}
