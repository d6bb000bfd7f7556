using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Foods;

namespace Gylebook.Forecast.Report.Labels;

/// <summary>The effects of a dose by their stable names, in the order in which they are told.</summary>
public static class EffectNames
{
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
