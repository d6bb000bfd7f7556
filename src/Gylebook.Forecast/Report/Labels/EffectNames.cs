using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Foods;

namespace Gylebook.Forecast.Report.Labels;

/// <summary>The parts of a food and the effects of a dose by their stable names, in the order in which they are told, and in words.</summary>
public static class EffectNames
{
    private static readonly Dictionary<string, string> Names = new(StringComparer.Ordinal)
    {
        ["protein"] = "protein", ["fat"] = "fat", ["carbohydrate"] = "carbohydrate, fibre included", ["fibre"] = "fibre", ["sugars"] = "sugars",
        ["sugarAlcohols"] = "sugar alcohols", ["starch"] = "starch", ["starchAndOther"] = "starch and the like",
        ["waterAshAlcohol"] = "water, ash, alcohol", ["sodium"] = "sodium", ["potassium"] = "potassium",
        ["gravityPoints"] = "gravity, clear", ["suspensionPoints"] = "gravity, stirred up", ["finalGravityPoints"] = "final gravity",
        ["fermentableShare"] = "of its extract ferments", ["unfermentableGramsPerLitre"] = "never ferments", ["alcoholByVolume"] = "alcohol by volume",
        ["co2VolumesIfPackaged"] = "gas if it ferments in the package", ["starchGrams"] = "starch it brings",
        ["starchConvertedGrams"] = "starch converted", ["starchHazeGrams"] = "starch left as haze", ["starchSettledGrams"] = "starch settled",
        ["starchLaterVolumes"] = "gas if the haze is eaten later", ["insolubleGrams"] = "never dissolves",
        ["insolubleWithGrainGrams"] = "of that, out with the grain", ["sludgeLitres"] = "sludge it adds", ["sludgeInAllLitres"] = "sludge in all",
        ["beerLostLitres"] = "wort or beer held back", ["packagedLitres"] = "more or less to package", ["extraLiquorLitres"] = "liquor to make up for it",
        ["fatGramsPerLitre"] = "fat it brings", ["fatKeptMgPerL"] = "fat that stays", ["proteinGramsPerLitre"] = "protein that dissolves",
        ["sodiumMgPerL"] = "sodium", ["potassiumMgPerL"] = "potassium", ["acidsGramsPerLitre"] = "acids", ["beerPhChange"] = "pH of the beer",
        ["waterLitres"] = "water it brings",
        ["ethanolGrams"] = "alcohol it brings itself", ["colourSrm"] = "colour",
    };

    /// <summary>A stable name as people say it.</summary>
    public static string Spoken(string name) => Names.GetValueOrDefault(name, name);

    /// <summary>Name and number; every number null without an effect.</summary>
    public static IReadOnlyList<(string Name, Band? Band)> Of(FoodEffect? effect) =>
    [
        ("gravityPoints", effect?.GravityPoints),
        ("suspensionPoints", effect?.SuspensionPoints),
        ("finalGravityPoints", effect?.FinalGravityPoints),
        ("fermentableShare", effect?.FermentableShare),
        ("unfermentableGramsPerLitre", effect?.UnfermentableGramsPerLitre),
        ("alcoholByVolume", effect?.AlcoholByVolume),
        ("co2VolumesIfPackaged", effect?.Co2VolumesIfPackaged),
        ("starchGrams", effect?.StarchGrams),
        ("starchConvertedGrams", effect?.StarchConvertedGrams),
        ("starchHazeGrams", effect?.StarchHazeGrams),
        ("starchSettledGrams", effect?.StarchSettledGrams),
        ("starchLaterVolumes", effect?.StarchLaterVolumes),
        ("insolubleGrams", effect?.InsolubleGrams),
        ("insolubleWithGrainGrams", effect?.InsolubleWithGrainGrams),
        ("sludgeLitres", effect?.SludgeLitres),
        ("sludgeInAllLitres", effect?.SludgeInAllLitres),
        ("beerLostLitres", effect?.BeerLostLitres),
        ("packagedLitres", effect?.PackagedLitres),
        ("extraLiquorLitres", effect?.ExtraLiquorLitres),
        ("fatGramsPerLitre", effect?.FatGramsPerLitre),
        ("fatKeptMgPerL", effect?.FatKeptMgPerL),
        ("proteinGramsPerLitre", effect?.ProteinGramsPerLitre),
        ("sodiumMgPerL", effect?.SodiumMgPerL),
        ("potassiumMgPerL", effect?.PotassiumMgPerL),
        ("acidsGramsPerLitre", effect?.AcidsGramsPerLitre),
        ("beerPhChange", effect?.BeerPh),
        ("waterLitres", effect?.WaterLitres),
        ("ethanolGrams", effect?.EthanolGrams),
        ("colourSrm", effect?.ColourSrm),
    ];
}
