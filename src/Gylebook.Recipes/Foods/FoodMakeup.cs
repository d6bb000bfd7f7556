using Gylebook.Recipes.Data;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Foods.Words;

namespace Gylebook.Recipes.Foods;

/// <summary>What a food is made of and how it behaves, ready for the balance: kilograms per kilogram as is.</summary>
/// <remarks>
/// All masses together are 1. What the label or the table does not say is filled from the food's family; each such
/// filling is listed in <see cref="Assumed"/>.
/// </remarks>
public sealed record FoodMakeup
{
    /// <summary>Stable id.</summary>
    public required string Id { get; init; }

    /// <summary>Name to show.</summary>
    public required string Name { get; init; }

    /// <summary>Family whose habits it borrows: <c>nut or seed flour, defatted</c>.</summary>
    public required string Family { get; init; }

    /// <summary>The family's id: <c>nut-flour-defatted</c>.</summary>
    public required string FamilyId { get; init; }

    /// <summary>Water.</summary>
    public required double Water { get; init; }

    /// <summary>Sucrose.</summary>
    public double Sucrose { get; init; }

    /// <summary>Glucose.</summary>
    public double Glucose { get; init; }

    /// <summary>Fructose.</summary>
    public double Fructose { get; init; }

    /// <summary>Maltose.</summary>
    public double Maltose { get; init; }

    /// <summary>Lactose.</summary>
    public double Lactose { get; init; }

    /// <summary>Sugar alcohols.</summary>
    public double Polyols { get; init; }

    /// <summary>Starch.</summary>
    public double Starch { get; init; }

    /// <summary>Whether the starch is gelatinised already, or gelatinises in an ordinary mash.</summary>
    public bool StarchIsOpen { get; init; }

    /// <summary>Soluble carbohydrate no yeast takes: dextrins of syrups, pectin, soluble fibre.</summary>
    public double Dextrin { get; init; }

    /// <summary>Protein that dissolves.</summary>
    public double SolubleProtein { get; init; }

    /// <summary>Minerals that dissolve.</summary>
    public double Minerals { get; init; }

    /// <summary>Ethanol.</summary>
    public double Ethanol { get; init; }

    /// <summary>Lactic acid, with what of it is salt; so are the acids that follow.</summary>
    public double Lactic { get; init; }

    /// <summary>Acetic acid.</summary>
    public double Acetic { get; init; }

    /// <summary>Citric acid.</summary>
    public double Citric { get; init; }

    /// <summary>Malic acid.</summary>
    public double Malic { get; init; }

    /// <summary>Tartaric acid.</summary>
    public double Tartaric { get; init; }

    /// <summary>Quinic acid and its like.</summary>
    public double Quinic { get; init; }

    /// <summary>All its acids.</summary>
    public double Acids => Lactic + Acetic + Citric + Malic + Tartaric + Quinic;

    /// <summary>How little and how much acid there may be, as a share of these.</summary>
    public (double Low, double High) AcidEnds { get; init; } = (1, 1);

    /// <summary>pH of the food as it is; null where it is not known.</summary>
    public FoodPh? OwnPh { get; init; }

    /// <summary>Fat.</summary>
    public double Fat { get; init; }

    /// <summary>What never dissolves: fibre, bound protein, some ash.</summary>
    public double Insoluble { get; init; }

    /// <summary>Sodium, mg per kg; its mass is part of the minerals.</summary>
    public double SodiumMilligramsPerKilogram { get; init; }

    /// <summary>Potassium, mg per kg; its mass is part of the minerals.</summary>
    public double PotassiumMilligramsPerKilogram { get; init; }

    /// <summary>Calcium that dissolves, mg per kg; its mass is part of the minerals.</summary>
    public double CalciumMilligramsPerKilogram { get; init; }

    /// <summary>Magnesium that dissolves, mg per kg.</summary>
    public double MagnesiumMilligramsPerKilogram { get; init; }

    /// <summary>Phosphorus that dissolves, mg per kg of the element.</summary>
    public double PhosphorusMilligramsPerKilogram { get; init; }

    /// <summary>Chloride, mg per kg.</summary>
    public double ChlorideMilligramsPerKilogram { get; init; }

    /// <summary>Share of the starch that settles with the insolubles when no mash converts it; the rest hangs as haze.</summary>
    public double StarchThatSettles { get; init; }

    /// <summary>Kilograms of beer that a kilogram of what settles holds, settled starch included.</summary>
    public required double SettledHold { get; init; }

    /// <summary>Low end of it.</summary>
    public double SettledHoldLow { get; init; }

    /// <summary>High end of it.</summary>
    public double SettledHoldHigh { get; init; }

    /// <summary>Kilograms of wort that a kilogram of the insolubles holds in the bag.</summary>
    public required double BagHold { get; init; }

    /// <summary>What its name, its ingredient list and its "may contain" line give away: allergens, preservatives, stimulants.</summary>
    public IReadOnlyList<IngredientHit> Words { get; init; } = [];

    /// <summary>The insolubles, and the starch that settles with them when it was not mashed.</summary>
    public double InsolubleUnmashed => Insoluble + (Starch * StarchThatSettles);

    /// <summary>Whether it is a honey or a syrup: all of it dissolves, in more water than a crystal holds and less than the thinnest syrup.</summary>
    public bool IsSyrup => Insoluble + Starch + Fat < SyrupSolids && Water is > MostCrystalWater and < MostSyrupWater;

    /// <summary>Solids that a clear syrup may hold and be one still. Our choice.</summary>
    private const double SyrupSolids = 0.01;

    /// <summary>Water of the thinnest syrup: maple, of 66 % solids at least, 21 CFR 168.140.</summary>
    private const double MostSyrupWater = 0.34;

    /// <summary>Water of the wettest sugar that is a powder: dextrose monohydrate, 18.015/198.171 (stoichiometry).</summary>
    public const double MostCrystalWater = 0.0909;

    /// <summary>What it holds of stimulants; null when that is not known.</summary>
    public Stimulant? Stimulant { get; init; }

    /// <summary>Acid and buffer in the mash, as measured; null when nobody has.</summary>
    public MaltTitration? Acidity { get; init; }

    /// <summary>Makeups at the ends of what its label allows; none without a label.</summary>
    public IReadOnlyList<FoodMakeup> LabelEnds { get; init; } = [];

    /// <summary>What was assumed, and from where.</summary>
    public IReadOnlyList<FoodAssumption> Assumed { get; init; } = [];
}

/// <summary>Something taken from the food's family because nobody stated it.</summary>
/// <param name="What">The figure's name.</param>
/// <param name="Value">What was taken.</param>
/// <param name="Source">From where.</param>
public sealed record FoodAssumption(string What, string Value, string Source)
{
    /// <summary>The figure as people say it: <c>beer that its sludge holds</c>.</summary>
    public string Spoken => What switch
    {
        "insolubleAsh" => "share of the ash that never dissolves",
        "insolubleFibre" => "share of the fibre that never dissolves",
        "insolubleOther" => "share of the rest that never dissolves",
        "insolubleShare" => "share that never dissolves",
        "solubleProtein" => "share of the protein that dissolves",
        "settledHold" => "beer held by what settles",
        "heldLitresPerKg" => "beer held by a kilogram",
        "bagHold" => "wort held in the bag",
        "starchIsOpen" => "starch open to enzymes",
        "kindsOfSugar" => "kinds of sugar",
        "ownPh" => "pH of its own",
        _ => KeyWords.Of(What),
    };
}
