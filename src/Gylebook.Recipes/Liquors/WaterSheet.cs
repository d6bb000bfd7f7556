using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Recipes.Liquors;

/// <summary>A water plan as its file says it, field by field; <see cref="WaterPlan"/> is what that means.</summary>
public sealed record WaterSheet
{
    /// <summary>What the brewer calls it.</summary>
    public required string Name { get; init; }

    /// <summary>Anything to remember; null when nothing.</summary>
    public string? Notes { get; init; }

    /// <summary>The waters at hand.</summary>
    public required IReadOnlyList<WaterSourceSheet> Sources { get; init; }

    /// <summary>A recipe file beside the plan; null for none.</summary>
    public string? Recipe { get; init; }

    /// <summary>Liquor the mash starts in.</summary>
    public Entered<VolumeAt20C>? Strike { get; init; }

    /// <summary>Liquor that rinses the grain.</summary>
    public Entered<VolumeAt20C>? Sparge { get; init; }

    /// <summary>Litres packaged.</summary>
    public Entered<VolumeAt20C>? Package { get; init; }

    /// <summary>A balance in plain words; null for none.</summary>
    public string? Balance { get; init; }

    /// <summary>Ions wanted, line by line.</summary>
    public IReadOnlyList<IonWish> Targets { get; init; } = [];

    /// <summary>Salts at hand.</summary>
    public IReadOnlyList<SaltSheet> Salts { get; init; } = [];

    /// <summary>Acids at hand.</summary>
    public IReadOnlyList<AcidSheet> Acids { get; init; } = [];

    /// <summary>Largest share that distilled water may replace.</summary>
    public Entered<Fraction>? Dilution { get; init; }

    /// <summary>pH wanted of the mash.</summary>
    public double? MashPh { get; init; }

    /// <summary>pH wanted of the sparge liquor.</summary>
    public double? SpargePh { get; init; }

    /// <summary>pH wanted of the wort.</summary>
    public double? WortPh { get; init; }

    /// <summary>What a meter read of the mash.</summary>
    public MeterSheet? MashReading { get; init; }

    /// <summary>What a meter read of the wort.</summary>
    public MeterSheet? WortReading { get; init; }

    /// <summary>Malts the brewer has titrated or learned.</summary>
    public IReadOnlyList<TitratedSheet> Malts { get; init; } = [];

    /// <summary>What is mashed.</summary>
    public IReadOnlyList<GristSheet> Grist { get; init; } = [];
}

/// <summary>One water.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Share">Its share of the liquor; null for all.</param>
/// <param name="IsDistilled">Whether it says to be distilled; null when unsaid.</param>
/// <param name="Report">What the laboratory printed.</param>
/// <param name="IsBoiled">Whether it is boiled first; null when unsaid.</param>
/// <param name="BoiledTo">Alkalinity after that.</param>
public sealed record WaterSourceSheet(
    string Name, Entered<Fraction>? Share, bool? IsDistilled, ReportSheet? Report, bool? IsBoiled, Entered<Equivalents>? BoiledTo);

/// <summary>A report as a laboratory printed it: each figure with its text, whatever unit it has.</summary>
public sealed record ReportSheet
{
    /// <summary>Calcium, as itself or as hardness.</summary>
    public Entered<Concentration>? Calcium { get; init; }

    /// <summary>Magnesium, as itself or as hardness.</summary>
    public Entered<Concentration>? Magnesium { get; init; }

    /// <summary>Total hardness.</summary>
    public Entered<Equivalents>? Hardness { get; init; }

    /// <summary>Alkalinity.</summary>
    public Entered<Equivalents>? Alkalinity { get; init; }

    /// <summary>Bicarbonate.</summary>
    public Entered<Concentration>? Bicarbonate { get; init; }

    /// <summary>Carbonate.</summary>
    public Entered<Concentration>? Carbonate { get; init; }

    /// <summary>Sulphate.</summary>
    public Entered<Concentration>? Sulphate { get; init; }

    /// <summary>Sulphate, as its sulphur.</summary>
    public Entered<Concentration>? SulphateSulphur { get; init; }

    /// <summary>Chloride.</summary>
    public Entered<Concentration>? Chloride { get; init; }

    /// <summary>Nitrate.</summary>
    public Entered<Concentration>? Nitrate { get; init; }

    /// <summary>Nitrate, as its nitrogen.</summary>
    public Entered<Concentration>? NitrateNitrogen { get; init; }

    /// <summary>Sodium.</summary>
    public Entered<Concentration>? Sodium { get; init; }

    /// <summary>Potassium.</summary>
    public Entered<Concentration>? Potassium { get; init; }

    /// <summary>pH at room temperature.</summary>
    public double? Ph { get; init; }

    /// <summary>Conductivity at 25 °C.</summary>
    public PrintedConductivity? Conductivity { get; init; }
}

/// <summary>A conductivity at 25 °C, and the text it was typed as.</summary>
/// <param name="Microsiemens">µS/cm.</param>
/// <param name="Text">As typed.</param>
public sealed record PrintedConductivity(double Microsiemens, string Text);

/// <summary>An ion wanted.</summary>
/// <param name="Ion">Which.</param>
/// <param name="Amount">How much.</param>
/// <param name="Weight">How much a miss matters beside the others; null for as much.</param>
public sealed record IonWish(Ion Ion, Entered<Concentration> Amount, double? Weight);

/// <summary>A salt at hand, as written.</summary>
/// <param name="Salt">Its name.</param>
/// <param name="Into">Where it goes; null for the liquor.</param>
/// <param name="Least">No less than this.</param>
/// <param name="Most">No more than this.</param>
/// <param name="Price">How unwelcome it is.</param>
/// <param name="Assay">The CaCl₂ of calcium chloride.</param>
public sealed record SaltSheet(
    string Salt, LiquorPlace? Into, Entered<Concentration>? Least, Entered<Concentration>? Most, Entered<Fraction>? Price, Entered<Fraction>? Assay);

/// <summary>An acid at hand, as written.</summary>
/// <param name="Acid">Its name with its strength.</param>
/// <param name="Most">No more than this: a volume, of a powder a mass.</param>
/// <param name="Density">Of the bottle.</param>
public sealed record AcidSheet(string Acid, Amount? Most, Density? Density);

/// <summary>A density at 20 °C, and the text it was typed as.</summary>
/// <param name="KilogramsPerLitre">kg/L.</param>
/// <param name="Text">As typed.</param>
public sealed record Density(double KilogramsPerLitre, string Text);

/// <summary>What a meter read, as written.</summary>
/// <param name="Ph">The pH it showed.</param>
/// <param name="Sample">How warm the sample was.</param>
/// <param name="Acid">How much of the plan's acid was in by then.</param>
public sealed record MeterSheet(double Ph, Entered<Temperature> Sample, Amount? Acid);

/// <summary>A malt somebody titrated, as written.</summary>
/// <param name="Malt">Its name.</param>
/// <param name="DistilledPh">pH in distilled water.</param>
/// <param name="Buffer">mEq/(kg·pH).</param>
public sealed record TitratedSheet(string Malt, double DistilledPh, double Buffer);

/// <summary>A malt or a food in the mash, as written.</summary>
/// <param name="IsFood">Whether it is a food.</param>
/// <param name="Of">Its name.</param>
/// <param name="Amount">How much.</param>
/// <param name="Colour">A malt's colour.</param>
/// <param name="DistilledPh">Its pH in distilled water.</param>
/// <param name="Buffer">Its buffer, mEq/(kg·pH).</param>
public sealed record GristSheet(bool IsFood, string Of, Entered<Mass> Amount, Entered<MaltColour>? Colour, double? DistilledPh, double? Buffer);
