using Gylebook.Recipes.Data;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Data;

namespace Gylebook.Recipes.Foods;

/// <summary>Which way a food moves the pH of beer.</summary>
public enum PhPull
{
    /// <summary>Hardly at all.</summary>
    None,

    /// <summary>Down: it is more sour than beer.</summary>
    Lowers,

    /// <summary>Up: it is less sour than beer, and its salts take acid up.</summary>
    Raises,

    /// <summary>One way or the other.</summary>
    Either,
}

/// <summary>Foods that behave alike, and what they usually do with what no label says.</summary>
public sealed record FoodFamily
{
    /// <summary>Stable id: <c>nut-flour-defatted</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Name: <c>nut or seed flour, defatted</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Share of the protein that dissolves.</summary>
    public required double SolubleProtein { get; init; }

    /// <summary>Share of the fibre that does not dissolve.</summary>
    public required double InsolubleFibre { get; init; }

    /// <summary>Share of the ash that does not dissolve.</summary>
    public required double InsolubleAsh { get; init; }

    /// <summary>Share that settles of carbohydrate which is neither fibre, sugar nor starch.</summary>
    public required double InsolubleOther { get; init; }

    /// <summary>Starch, as a share of carbohydrate less fibre, sugars and sugar alcohols, when nobody measured it.</summary>
    public required double StarchShare { get; init; }

    /// <summary>Kilograms of beer that a kilogram of settled insolubles holds.</summary>
    public required double SettledHold { get; init; }

    /// <summary>Low end of it.</summary>
    public required double SettledHoldLow { get; init; }

    /// <summary>High end of it.</summary>
    public required double SettledHoldHigh { get; init; }

    /// <summary>Kilograms of wort that a kilogram of insolubles holds in the bag.</summary>
    public required double BagHold { get; init; }

    /// <summary>The kinds of its sugars, adding up to 1.</summary>
    public required SugarKinds SugarSplit { get; init; }

    /// <summary>Whether its starch is cooked already or gelatinises at or below 65 °C.</summary>
    public required bool StarchIsOpen { get; init; }

    /// <summary>Which way foods of the kind move the pH of a beer near 4.3.</summary>
    public required PhPull BeerPh { get; init; }

    /// <summary>Whether foods of the kind may stand above pH 4.6, where <i>Clostridium botulinum</i> can grow. From memory.</summary>
    public required bool IsLowAcid { get; init; }

    /// <summary>Whether the fruit may come with its stones, whose kernels hold cyanide. From memory.</summary>
    public required bool HasStones { get; init; }

    /// <summary>Fibre, as a share of all carbohydrate, when nobody stated it.</summary>
    public required double FibreOfCarbohydrate { get; init; }

    /// <summary>Sugars, as a share of all carbohydrate, when nobody stated them.</summary>
    public required double SugarsOfCarbohydrate { get; init; }

    /// <summary>Ash, g/100 g, when nobody stated it.</summary>
    public required double Ash { get; init; }

    /// <summary>Water, g/100 g, when nobody stated it.</summary>
    public required double Moisture { get; init; }

    /// <summary>A small dose, g per litre of finished beer; null when unknown.</summary>
    public double? DoseLow { get; init; }

    /// <summary>A usual dose; null when unknown.</summary>
    public double? DoseTypical { get; init; }

    /// <summary>A large dose; null when unknown.</summary>
    public double? DoseHigh { get; init; }

    /// <summary>Where the row comes from.</summary>
    public required Provenance Provenance { get; init; }

    /// <summary>Whether foods of the kind are spices: weighed by the gram, and there for their smell.</summary>
    public bool IsSpice => Id.Contains("spice", StringComparison.Ordinal);
}

/// <summary>Families of foods: <c>data/food-families.csv</c>.</summary>
public static class FoodFamilies
{
    private static readonly Lazy<Table<FoodFamily>> Rows =
        new(() => new Table<FoodFamily>(ReferenceData.Table("food-families.csv"), Make));

    /// <summary>All of them, in the order of the file.</summary>
    public static IReadOnlyList<FoodFamily> All => Rows.Value.All;

    /// <summary>The one of that id or name, or the names that come nearest.</summary>
    public static Found<FoodFamily> Find(string idOrName) => Rows.Value.Find(idOrName);

    /// <summary>The one of that id.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is none.</exception>
    public static FoodFamily Of(string id) => Rows.Value.Of(id);

    private static FoodFamily Make(CsvRow row) => new()
    {
        Id = row.Required("id"),
        Name = row.Required("name"),
        SolubleProtein = row.Number("solubleProtein"),
        InsolubleFibre = row.Number("insolubleFibre"),
        InsolubleAsh = row.Number("insolubleAsh"),
        InsolubleOther = row.Number("insolubleOther"),
        StarchShare = row.Number("starchShare"),
        SettledHold = row.Number("settledHold"),
        SettledHoldLow = row.Number("settledHoldLow"),
        SettledHoldHigh = row.Number("settledHoldHigh"),
        BagHold = row.Number("bagHold"),
        SugarSplit = new SugarKinds(
            row.Number("sucrose"), row.Number("glucose"), row.Number("fructose"), row.Number("maltose"), row.Number("lactose"),
            row.Number("dextrin")),
        StarchIsOpen = row.Yes("starchIsOpen"),
        BeerPh = Enum.TryParse(row.Required("beerPh"), ignoreCase: true, out PhPull pull) && Enum.IsDefined(pull)
            ? pull
            : throw row.Wrong("beerPh", $"is not none, lowers, raises or either: {row.Required("beerPh")}"),
        IsLowAcid = row.Yes("isLowAcid"),
        HasStones = row.Yes("hasStones"),
        FibreOfCarbohydrate = row.Number("fibreOfCarbohydrate"),
        SugarsOfCarbohydrate = row.Number("sugarsOfCarbohydrate"),
        Ash = row.Number("ash"),
        Moisture = row.Number("moisture"),
        DoseLow = row.NumberOrNull("doseLow"),
        DoseTypical = row.NumberOrNull("doseTypical"),
        DoseHigh = row.NumberOrNull("doseHigh"),
        Provenance = Provenance.Of(row),
    };
}
