using Gylebook.Recipes.Checks;

namespace Gylebook.Recipes;

/// <summary>Finds what cannot be brewed, or cannot be meant, in a recipe whose quantities are all legal.</summary>
/// <remarks>
/// Bounds on what is sensible are our own, set far outside what is brewed: common practice, no source, unless said.
/// What needs the tables or a kit (is there such a malt, does it fit the kettle) is for the forecast.
/// </remarks>
public static class RecipeCheck
{
    /// <summary>Malt, sugar or food in each litre of beer beyond which it would be more solid than liquid, kg. Common practice, no source.</summary>
    public const double MostKilogramsPerLitre = 2;

    /// <summary>All findings at once, each with field, value, limit and reason; empty when nothing is doubtful.</summary>
    public static IReadOnlyList<Finding> Findings(Recipe recipe)
    {
        var findings = new FindingList();
        PackageCheck.Check(recipe, findings);
        MashCheck.Check(recipe, findings);
        SouringCheck.Check(recipe, findings);
        BoilCheck.Check(recipe, findings);
        FermentCheck.Check(recipe, findings);
        PortionCheck.Check(recipe, findings);
        AdditionCheck.Check(recipe, findings);
        AmountCheck.Check(recipe, findings);
        return findings.All;
    }
}
