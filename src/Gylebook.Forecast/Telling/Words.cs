using Gylebook.Forecast.Running;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Telling;

/// <summary>Stable names of stages, losses and times, as files and people know them.</summary>
public static class Words
{
    /// <summary>A stage's name in files: <c>copperUp</c>.</summary>
    public static string Of(Stage stage) => Camel(stage.ToString());

    /// <summary>A loss's name in files: <c>heldInGrain</c>.</summary>
    public static string Of(Loss loss) => Camel(loss.ToString());

    /// <summary>When something goes in, as recipes say it: <c>boil 60 min</c>.</summary>
    public static string Of(AdditionTime at) => at.Point switch
    {
        AdditionPoint.Mash => "mash",
        AdditionPoint.CopperUp => "copper-up",
        AdditionPoint.Boil => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"boil {at.Count:0.##} min"),
        AdditionPoint.KnockOut => "knock-out",
        AdditionPoint.Stand => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"stand {at.Count:0.##} min"),
        AdditionPoint.Pitch => "pitch",
        AdditionPoint.Ferment => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"ferment day {at.Count:0.##}"),
        AdditionPoint.Rack => "rack",
        _ => "package",
    };

    /// <summary>A model's name in files: <c>timeGravity</c>.</summary>
    public static string Of(BitternessModel model) => Camel(model.ToString());

    private static string Camel(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
