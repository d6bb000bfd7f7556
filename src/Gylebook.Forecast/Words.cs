using Gylebook.Engine.State;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Water;

namespace Gylebook.Forecast;

/// <summary>Stable names of stages, losses and times, as files and people know them.</summary>
public static class Words
{
    /// <summary>Who says so, where everybody does and nobody printed it.</summary>
    internal const string Trade = "common practice, no source";

    /// <summary>How every pH is meant: a sample cooled to 20 °C and free of gas.</summary>
    public const string PhAt20C = "pH at 20 °C";

    /// <summary>A stage's name in files: <c>copperUp</c>.</summary>
    public static string Of(Stage stage) => Names.Of(stage);

    /// <summary>A loss's name in files: <c>heldInGrain</c>.</summary>
    public static string Of(Loss loss) => Names.Of(loss);

    /// <summary>When something goes in, as recipes say it: <c>boil 60 min</c>.</summary>
    public static string Of(AdditionTime at) => at.Point switch
    {
        AdditionPoint.Mash => "mash",
        AdditionPoint.CopperUp => "copper-up",
        AdditionPoint.Boil => Invariant($"boil {at.Count:0.##} min"),
        AdditionPoint.KnockOut => "knock-out",
        AdditionPoint.Stand => Invariant($"stand {at.Count:0.##} min"),
        AdditionPoint.Pitch => "pitch",
        AdditionPoint.Ferment => Invariant($"ferment day {at.Count:0.##}"),
        AdditionPoint.Rack => "rack",
        _ => "package",
    };

    /// <summary>The key an ion has in files: <c>calcium</c>.</summary>
    public static string Of(Ion ion) => ion.ToString().ToLowerInvariant();

    /// <summary>A model's name in files: <c>timeGravity</c>.</summary>
    public static string Of(BitternessModel model) => Camel(model.ToString());

    /// <summary>How grain is rinsed, as recipes say it: <c>pour</c>.</summary>
    public static string Of(SpargeMethod method) => Camel(method.ToString());

    /// <summary>How serious, in files and to people.</summary>
    public static string Of(Severity severity) => Camel(severity.ToString());

    /// <summary>A stage or a loss as a brewer says it, from its name in files: <c>heldInGrain</c> is "held in the grain".</summary>
    public static string Spoken(string name) => Sayings.TryGetValue(name, out string? said) ? said : name;

    /// <summary>Those whose name in files is not already how people say it.</summary>
    private static readonly Dictionary<string, string> Sayings = new(StringComparer.Ordinal)
    {
        [Of(Stage.RunOff)] = "run-off",
        [Of(Stage.CopperUp)] = "copper-up",
        [Of(Stage.Sour)] = "soured",
        [Of(Stage.KnockOut)] = "knock-out",
        [Of(Stage.TopUp)] = "top-up",
        [Of(Loss.HeldInGrain)] = "held in the grain",
        [Of(Loss.TunDeadSpace)] = "under the tun",
        [Of(Loss.Kettle)] = "left in the kettle",
        [Of(Loss.SpentHops)] = "held in the hops",
        [Of(Loss.KettleSolids)] = "solids in the kettle",
        [Of(Loss.Gas)] = "carbon dioxide",
        [Of(Loss.Racking)] = "left at racking",
    };

    /// <summary>A name at the head of a sentence: <c>Lactic acid</c>.</summary>
    public static string Sentence(string name) => name.Length == 0 ? name : char.ToUpperInvariant(name[0]) + name[1..];

    private static string Camel(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
