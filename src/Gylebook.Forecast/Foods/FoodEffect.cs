using Gylebook.Engine.Readouts;

namespace Gylebook.Forecast.Foods;

/// <summary>What a dose of one food does to a plain beer; null where nobody knows or nothing is brought.</summary>
/// <remarks>
/// Differences between the engine's own run with the food and without it. With a label the ends are those of all compositions
/// that print as the label, at both ends of the hold its family is known to have; what was assumed besides is held at the
/// assumption. Without a label, and where nothing has a width, the kind is a point.
/// </remarks>
public sealed record FoodEffect
{
    /// <summary>The dose.</summary>
    public required Dose Dose { get; init; }

    /// <summary>Points of the clear liquid: original gravity, all in; for a dose after fermentation, the beer's as it goes in.</summary>
    public Band? GravityPoints { get; init; }

    /// <summary>The same with solids stirred in, as a sample drawn too soon reads.</summary>
    public Band? SuspensionPoints { get; init; }

    /// <summary>Points that are still there at the end.</summary>
    public Band? FinalGravityPoints { get; init; }

    /// <summary>Share of the food's extract that ferments, as a hydrometer counts extract; null when it brings none.</summary>
    public Band? FermentableShare { get; init; }

    /// <summary>What dissolves or hangs and does not ferment, as sucrose reads, g/L.</summary>
    public Band? UnfermentableGramsPerLitre { get; init; }

    /// <summary>All starch it brings, g.</summary>
    public Band? StarchGrams { get; init; }

    /// <summary>Starch that the mash turns into sugar and dextrin, g.</summary>
    public Band? StarchConvertedGrams { get; init; }

    /// <summary>Starch that hangs in the beer as haze, g.</summary>
    public Band? StarchHazeGrams { get; init; }

    /// <summary>Starch that stays with the grain or settles, g.</summary>
    public Band? StarchSettledGrams { get; init; }

    /// <summary>Volumes of gas if something eats the haze in the package later.</summary>
    public Band? StarchLaterVolumes { get; init; }

    /// <summary>What never dissolves, starch aside, g.</summary>
    public Band? InsolubleGrams { get; init; }

    /// <summary>What of that leaves with the grain, g; the rest goes into the fermenter, or the package.</summary>
    public Band? InsolubleWithGrainGrams { get; init; }

    /// <summary>Litres of sludge it adds: solids and the beer they hold. After racking it lies in the package.</summary>
    public Band? SludgeLitres { get; init; }

    /// <summary>Litres of sludge in the fermenter all told: the plain beer's own yeast and break, and the food's.</summary>
    public Band? SludgeInAllLitres { get; init; }

    /// <summary>Litres of wort or beer that its solids hold back, in the grain and in the sludge.</summary>
    public Band? BeerLostLitres { get; init; }

    /// <summary>Litres more (or fewer) in the package from the same liquor.</summary>
    public Band? PackagedLitres { get; init; }

    /// <summary>Litres of liquor more (or fewer) that fill the package as before.</summary>
    public Band? ExtraLiquorLitres { get; init; }

    /// <summary>Fat it brings, g/L.</summary>
    public Band? FatGramsPerLitre { get; init; }

    /// <summary>Fat that stays dispersed in the beer, mg/L.</summary>
    public Band? FatKeptMgPerL { get; init; }

    /// <summary>What that means for head and shelf life.</summary>
    public required FatAdvice Fat { get; init; }

    /// <summary>Protein that dissolves, g/L.</summary>
    public Band? ProteinGramsPerLitre { get; init; }

    /// <summary>Sodium, mg/L; null when nothing states the food's sodium.</summary>
    public Band? SodiumMgPerL { get; init; }

    /// <summary>Potassium, mg/L; null when nothing states the food's potassium.</summary>
    public Band? PotassiumMgPerL { get; init; }

    /// <summary>Acids with their salts, g/L; null where no table here has both them and the food's pH.</summary>
    public Band? AcidsGramsPerLitre { get; init; }

    /// <summary>Change of the beer's pH; null where the acids are not known.</summary>
    public Band? BeerPh { get; init; }

    /// <summary>Water it brings, litres.</summary>
    public Band? WaterLitres { get; init; }

    /// <summary>Alcohol it brings itself, g.</summary>
    public Band? EthanolGrams { get; init; }

    /// <summary>Change of alcohol as served, per cent by volume.</summary>
    public Band? AlcoholByVolume { get; init; }

    /// <summary>Colour, SRM: unknown for foods.</summary>
    public Band? ColourSrm { get; init; }

    /// <summary>Volumes of gas if this dose goes into the package and ferments there.</summary>
    public Band? Co2VolumesIfPackaged { get; init; }
}
