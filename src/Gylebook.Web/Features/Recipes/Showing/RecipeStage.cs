using Gylebook.Engine.State;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Web.Features.Recipes.Showing;

/// <summary>The stages a recipe is written in, in order.</summary>
public enum RecipeStage
{
    /// <summary>Strike, mash, grain out, sparge.</summary>
    Mash,

    /// <summary>Copper-up and boil.</summary>
    Boil,

    /// <summary>Knock-out, stand and chilling.</summary>
    KnockOut,

    /// <summary>Cast, pitch, ferment.</summary>
    Ferment,

    /// <summary>Rack, package, pour.</summary>
    Package,
}

/// <summary>Where lines, findings and cautions belong on the page.</summary>
public static class StagePlaces
{
    /// <summary>The stage a line goes in at.</summary>
    public static RecipeStage Of(AdditionPoint point) => point switch
    {
        AdditionPoint.Mash => RecipeStage.Mash,
        AdditionPoint.CopperUp or AdditionPoint.Boil => RecipeStage.Boil,
        AdditionPoint.KnockOut or AdditionPoint.Stand => RecipeStage.KnockOut,
        AdditionPoint.Pitch or AdditionPoint.Ferment => RecipeStage.Ferment,
        _ => RecipeStage.Package,
    };

    /// <summary>Where a stage stands on the page: what follows the # in its address.</summary>
    public static string AnchorOf(RecipeStage stage) => $"stage-{stage.ToString().ToLowerInvariant()}";

    /// <summary>The stage of the page that a stage of the run is told in.</summary>
    public static RecipeStage Of(Stage stage) => stage switch
    {
        <= Stage.TopUp => RecipeStage.Mash,
        <= Stage.Boil => RecipeStage.Boil,
        <= Stage.Chill => RecipeStage.KnockOut,
        <= Stage.Crash => RecipeStage.Ferment,
        _ => RecipeStage.Package,
    };

    /// <summary>The stage a finding outside the lines belongs to; null when it is about the recipe as a whole.</summary>
    /// <remarks>What does not fit a vessel names the vessel, and is shown where it would run over: its code says where.</remarks>
    public static RecipeStage? Of(Finding finding)
    {
        string first = finding.Where.StartsWith("kit", StringComparison.Ordinal) || finding.Where == "ingredients" ? finding.Code : finding.Where;
        return first.Split('.', '[')[0] switch
        {
            "mash" or "liquor" => RecipeStage.Mash,
            "souring" or "culture" or "boil" or "kettle" => RecipeStage.Boil,
            "stand" => RecipeStage.KnockOut,
            "ferment" or "fermenter" or "yeast" or "portions" => RecipeStage.Ferment,
            "package" or "carbonation" => RecipeStage.Package,
            _ => null,
        };
    }

    /// <summary>The line a finding is about; null when it is about none.</summary>
    public static int? LineOf(Finding finding) =>
        finding.Where.StartsWith("ingredients[", StringComparison.Ordinal)
        && int.TryParse(finding.Where.AsSpan("ingredients[".Length, finding.Where.IndexOf(']') - "ingredients[".Length), System.Globalization.CultureInfo.InvariantCulture, out int line)
            ? line
            : null;
}
