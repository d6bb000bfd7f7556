using Gylebook.Forecast.Report;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Report;

/// <summary>Odd recipes, as samples: what must be said of each, and what must not. Why, stands in the science pages; here is that it is said.</summary>
public sealed class EdgeRecipesTests
{
    /// <summary>Sample; codes of cautions and findings that must be there; codes that must not.</summary>
    public static TheoryData<string, string[], string[]> Expected => new()
    {
        // All sugar, all honey: no nitrogen; honey is no powder.
        { "all-sugar", ["pitch.nitrogen", "boilover.powder"], ["boilover.syrup", "mash.enzyme", "mash.conversion"] },
        { "all-honey", ["pitch.nitrogen", "boilover.syrup"], ["boilover.powder", "kettle.headspace", "mash.conversion"] },
        { "sugar-saison", ["pitch.nitrogen"], ["bottle.strayYeast"] },
        // Fruit: cells for all of it, stones, raw food.
        { "fruit-at-pitch", ["pitch.under", "pitch.nitrogen", "food.raw", "pits.cyanide"], ["pitch.doubtful"] },
        { "dates", ["food.raw", "foam.fermenter"], ["pitch.nitrogen", "pits.cyanide"] },
        { "watery-fruit", ["food.raw", "foam.fermenter"], ["pitch.nitrogen"] },
        { "raw-pumpkin", [], ["mash.enzyme", "food.raw"] },
        // Strong, and sugar left.
        { "yeast-tires", ["yeast.tolerance", "bottle.strayYeast", "yeast.strongWort"], ["pitch.nitrogen"] },
        { "very-strong", ["yeast.tolerance", "yeast.strongWort"], ["pitch.nitrogen"] },
        { "maltose-in-bottle", ["bottle.strayYeast", "alcohol.little"], ["yeast.tolerance"] },
        { "low-alcohol", ["alcohol.little", "gravity.thin"], ["bottle.strayYeast", "yeast.tolerance"] },
        { "dry-saison", ["yeast.harvest"], ["bottle.strayYeast", "yeast.tolerance"] },
        { "told-attenuation", ["yeast.told"], ["yeast.attenuationUnreached"] },
        // Hops.
        { "thousand-ibu", ["bitterness.solubility"], ["bitterness.lowerBound"] },
        { "no-hops", [], ["bitterness.solubility", "boilover.hops"] },
        // Wishes.
        { "strike-misses", ["package.missed"], ["volumes.noSolution"] },
        { "fixed-strike", [], ["package.missed", "gravity.thin"] },
        { "thinned", ["gravity.thin"], ["package.missed"] },
        { "kettle-too-small", ["kettle.brim", "mash.brim", "fermenter.tooSmall"], ["package.missed"] },
        // The mash.
        { "dextrin-malt", ["mash.conversion"], ["mash.shortRest", "mash.enzyme"] },
        { "half-caramel", [], ["mash.conversion", "mash.enzyme"] },
        { "one-minute-mash", ["mash.conversion", "mash.shortRest", "gravity.thin"], ["mash.enzyme"] },
        { "cold-mash", ["mash.conversion", "attenuation.range", "gravity.thin"], ["mash.enzyme"] },
        { "hot-mash", ["mash.conversion"], ["attenuation.range"] },
        { "minute-then-hot", [], ["mash.conversion", "attenuation.range"] },
        { "thick-mash", ["mash.thick"], ["mash.tooThick", "mash.conversion"] },
        { "too-few-enzymes", ["mash.enzyme", "gravity.thin"], ["mash.conversion"] },
        { "raw-wheat", ["starch.cookFirst"], ["mash.conversion", "mash.enzyme"] },
        { "raw-rice", ["starch.cookFirst"], ["mash.conversion", "mash.enzyme"] },
        // Acids, and foods without figures.
        { "raspberries", ["ph.foodsCounted", "food.raw"], ["ph.foodAcids", "food.noFigures"] },
        { "pear", ["food.noFigures"], ["pits.cyanide"] },
        { "many-dry-hops", ["bitterness.dryHops"], ["ph.foodAcids", "food.noFigures"] },
        // Foods and packages.
        { "fat-collapses", ["fat.head", "food.raw", "foam.fermenter"], ["boilover.powder"] },
        { "lactose-stout", [], ["bottle.unfermentedSugar", "bottle.strayYeast"] },
        { "honey-in-bottle", ["bottle.unfermentedSugar", "package.overpressure", "carbonation.differs"], ["pitch.nitrogen"] },
    };

    public static TheoryData<string> Names => [.. Expected.Select(row => row.Data.Item1)];

    [Theory]
    [MemberData(nameof(Expected))]
    public void What_must_be_said_is_said_and_nothing_that_is_not_so(string sample, string[] said, string[] unsaid)
    {
        BrewForecast told = Tell(sample);
        string[] codes = [.. told.Cautions.Select(c => c.Code), .. told.Findings.Select(f => f.Code)];
        Assert.Empty(said.Except(codes));
        Assert.Empty(unsaid.Intersect(codes));
    }

    /// <summary>No sample tells of energy or carbohydrate below nothing, however dry it is.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Energy_and_carbohydrate_are_never_below_nothing(string sample) => Assert.All(
        Tell(sample).Headline.Where(h => h.Name is "energyKcalPer100ml" or "carbohydrateGPer100ml"), h => Assert.True(h.Band!.Low >= 0, h.Name));

    [Fact]
    public void The_traces_of_a_pack_are_told_of_the_beer() => Assert.Equal(["sesame"], Tell("fat-collapses").Allergens.MayContainEu);

    private static BrewForecast Tell(string sample)
    {
        Recipe recipe = RecipeFile.Read(File.ReadAllText(RepositoryFile.PathOf($"samples/recipes/edges/{sample}.json"))).Value!;
        return Forecaster.Forecast(recipe, BuiltInKit.LanternShed, Beside, sample);
    }

    private static readonly Larder Beside = new(
        Directory.GetFiles(RepositoryFile.PathOf("samples/recipes/edges/foods"), "*.json").Select(file => FoodFile.Read(File.ReadAllText(file)).Value!));
}
