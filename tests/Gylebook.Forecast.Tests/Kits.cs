using Gylebook.Forecast.Planning;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Quantities;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests;

/// <summary>Kits for tests, built on the published samples.</summary>
internal static class Kits
{
    /// <summary>A sample as it stands in <c>samples/kits</c>.</summary>
    public static Kit Sample(string name) =>
        KitFile.Read(File.ReadAllText(RepositoryFile.PathOf($"samples/kits/{name}.json"))).Value!;

    /// <summary>Tun, bag, keg and bottle, and a loss at every place that can lose.</summary>
    public static Kit Whole { get; } = Sample("tun-and-kettle") with
    {
        Name = "Whole",
        Bag = new Bag(Typed.LitresPerKilogram(0.6), Typed.Share(0.6), true),
    };

    /// <summary>A kit that loses nothing it can help, for laws and for working by hand.</summary>
    public static Kit Lossless { get; } = Whole with
    {
        Name = "Lossless",
        Kettle = Whole.Kettle with { LeftBehind = Typed.Litres(0), SolidsLeft = Typed.Share(0) },
        Tun = Whole.Tun! with { DeadSpace = Typed.Litres(0) },
        RackingLeftBehind = Typed.Litres(0),
    };

    /// <summary>The same kit with another conversion.</summary>
    public static Kit Converting(this Kit kit, double share) => kit with { Conversion = Typed.Share(share) };

    /// <summary>The same kit with another evaporation.</summary>
    public static Kit Evaporating(this Kit kit, double litresPerHour) => kit with
    {
        Kettle = kit.Kettle with { Evaporation = new(Evaporation.FromLitresPerHour(litresPerHour), $"{litresPerHour} L/h") },
    };

    /// <summary>Lays out with foods from the tables alone.</summary>
    public static BrewPlan PlanOn(this Recipe recipe, Kit kit) => BrewPlanner.Plan(recipe, kit, RandomBrews.Foods);
}
