using Gylebook.Science.Quantities;

namespace Gylebook.Science.Water;

/// <summary>The salts a brewer weighs.</summary>
/// <remarks>Masses of the formulas add up IUPAC atomic masses; nothing here is fitted. Use food grade only.</remarks>
public static class BrewingSalts
{
    private const double CalciumChlorideMass = AtomicMass.Calcium + (2 * AtomicMass.Chlorine);
    private const double GypsumMass = AtomicMass.Calcium + AtomicMass.Sulphate + (2 * AtomicMass.Water);

    /// <summary>Calcium sulphate dihydrate.</summary>
    public static BrewingSalt Gypsum { get; } =
        new("gypsum", "gypsum", "CaSO4·2H2O", GypsumMass, [(Ion.Calcium, 1), (Ion.Sulphate, 1)], Waters: 2);

    /// <summary>Calcium sulphate without water.</summary>
    public static BrewingSalt AnhydrousGypsum { get; } = new(
        "gypsum-anhydrous", "calcium sulphate, anhydrous", "CaSO4", AtomicMass.Calcium + AtomicMass.Sulphate,
        [(Ion.Calcium, 1), (Ion.Sulphate, 1)]);

    /// <summary>Calcium chloride dihydrate.</summary>
    public static BrewingSalt CalciumChloride { get; } = new(
        "calcium-chloride", "calcium chloride dihydrate", "CaCl2·2H2O", CalciumChlorideMass + (2 * AtomicMass.Water),
        [(Ion.Calcium, 1), (Ion.Chloride, 2)], Waters: 2);

    /// <summary>Calcium chloride without water; it heats the water it dissolves in.</summary>
    public static BrewingSalt AnhydrousCalciumChloride { get; } = new(
        "calcium-chloride-anhydrous", "calcium chloride, anhydrous", "CaCl2", CalciumChlorideMass,
        [(Ion.Calcium, 1), (Ion.Chloride, 2)], Caution: "Grows hot as it dissolves, and irritates eyes.");

    /// <summary>Magnesium sulphate heptahydrate.</summary>
    public static BrewingSalt Epsom { get; } = new(
        "epsom", "Epsom salt", "MgSO4·7H2O", AtomicMass.Magnesium + AtomicMass.Sulphate + (7 * AtomicMass.Water),
        [(Ion.Magnesium, 1), (Ion.Sulphate, 1)], Waters: 7);

    /// <summary>Magnesium chloride hexahydrate.</summary>
    public static BrewingSalt MagnesiumChloride { get; } = new(
        "magnesium-chloride", "magnesium chloride hexahydrate", "MgCl2·6H2O",
        AtomicMass.Magnesium + (2 * AtomicMass.Chlorine) + (6 * AtomicMass.Water),
        [(Ion.Magnesium, 1), (Ion.Chloride, 2)], Waters: 6);

    /// <summary>Sodium chloride.</summary>
    public static BrewingSalt TableSalt { get; } = new(
        "table-salt", "table salt", "NaCl", AtomicMass.Sodium + AtomicMass.Chlorine,
        [(Ion.Sodium, 1), (Ion.Chloride, 1)]);

    /// <summary>Sodium bicarbonate.</summary>
    public static BrewingSalt BakingSoda { get; } = new(
        "baking-soda", "baking soda", "NaHCO3", AtomicMass.Sodium + AtomicMass.Bicarbonate,
        [(Ion.Sodium, 1)], AlkalinityPerMole: 1, CarbonatePerMole: 1);

    /// <summary>Sodium carbonate.</summary>
    public static BrewingSalt WashingSoda { get; } = new(
        "sodium-carbonate", "sodium carbonate", "Na2CO3", (2 * AtomicMass.Sodium) + AtomicMass.Carbonate,
        [(Ion.Sodium, 2)], AlkalinityPerMole: 2, CarbonatePerMole: 1, Caution: "Irritates eyes.");

    /// <summary>Calcium carbonate, counted as if all dissolved.</summary>
    public static BrewingSalt Chalk { get; } = new(
        "chalk", "chalk", "CaCO3", AtomicMass.CalciumCarbonate,
        [(Ion.Calcium, 1)], AlkalinityPerMole: 2, CarbonatePerMole: 1);

    /// <summary>Calcium hydroxide.</summary>
    public static BrewingSalt Lime { get; } = new(
        "lime", "slaked lime", "Ca(OH)2", AtomicMass.Calcium + (2 * AtomicMass.Hydroxide),
        [(Ion.Calcium, 1)], AlkalinityPerMole: 2, Caution: "Burns eyes, skin and lungs: goggles, gloves, no dust.");

    /// <summary>Potassium chloride.</summary>
    public static BrewingSalt PotassiumChloride { get; } = new(
        "potassium-chloride", "potassium chloride", "KCl", AtomicMass.Potassium + AtomicMass.Chlorine,
        [(Ion.Potassium, 1), (Ion.Chloride, 1)]);

    /// <summary>Potassium bicarbonate.</summary>
    public static BrewingSalt PotassiumBicarbonate { get; } = new(
        "potassium-bicarbonate", "potassium bicarbonate", "KHCO3", AtomicMass.Potassium + AtomicMass.Bicarbonate,
        [(Ion.Potassium, 1)], AlkalinityPerMole: 1, CarbonatePerMole: 1);

    /// <summary>Potassium sulphate.</summary>
    public static BrewingSalt PotassiumSulphate { get; } = new(
        "potassium-sulphate", "potassium sulphate", "K2SO4", (2 * AtomicMass.Potassium) + AtomicMass.Sulphate,
        [(Ion.Potassium, 2), (Ion.Sulphate, 1)]);

    /// <summary>Sodium hydroxide.</summary>
    public static BrewingSalt Lye { get; } = new(
        "lye", "sodium hydroxide", "NaOH", AtomicMass.Sodium + AtomicMass.Hydroxide,
        [(Ion.Sodium, 1)], AlkalinityPerMole: 1,
        Caution: "Severe burns, blinds: goggles and gloves, lye into cold water. Food grade, where local law allows it.");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<BrewingSalt> All { get; } =
    [
        Gypsum, AnhydrousGypsum, CalciumChloride, AnhydrousCalciumChloride, Epsom, MagnesiumChloride, TableSalt,
        BakingSoda, WashingSoda, Chalk, Lime, PotassiumChloride, PotassiumBicarbonate, PotassiumSulphate, Lye,
    ];

    /// <summary>Calcium chloride as bought, by the CaCl2 its label or a hydrometer states; 75.5 % is pure dihydrate.</summary>
    public static BrewingSalt CalciumChlorideOfAssay(Fraction calciumChloride) => AnhydrousCalciumChloride with
    {
        Name = "calcium chloride of known assay",
        Formula = "CaCl2·nH2O",
        Purity = calciumChloride,
    };

    /// <summary>The salt of that id.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is none.</exception>
    public static BrewingSalt Find(string id) => All.FirstOrDefault(salt => salt.Id == id)
        ?? throw new ArgumentOutOfRangeException(nameof(id), id, "No salt of that name.");
}
