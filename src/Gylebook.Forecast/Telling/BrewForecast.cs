using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Treating;
using Gylebook.Recipes;

namespace Gylebook.Forecast.Telling;

/// <summary>A recipe's whole way from water to glass on one kit, as it is told to people and files.</summary>
public sealed record BrewForecast
{
    /// <summary>The recipe's name.</summary>
    public required string Recipe { get; init; }

    /// <summary>The kit's name.</summary>
    public required string Kit { get; init; }

    /// <summary>Seed of the draws.</summary>
    public required string Seed { get; init; }

    /// <summary>The numbers asked for first, by their stable names, in order; null where unknown.</summary>
    public required IReadOnlyList<Headline> Headline { get; init; }

    /// <summary>The stages, in order.</summary>
    public required IReadOnlyList<StageRow> Stages { get; init; }

    /// <summary>Every loss, by name.</summary>
    public required IReadOnlyList<LossRow> Losses { get; init; }

    /// <summary>All that goes in, by name, in the order of the run.</summary>
    public IReadOnlyList<AdditionRow> Additions { get; init; } = [];

    /// <summary>The yeast; null when none is pitched.</summary>
    public PitchAdvice? Pitch { get; init; }

    /// <summary>Bitterness by hop.</summary>
    public required IReadOnlyList<HopBitterness> BitternessBy { get; init; }

    /// <summary>What it looks like; null when the run was not made.</summary>
    public Appearance? Appearance { get; init; }

    /// <summary>Colour by each published law; the first is the headline's.</summary>
    public IReadOnlyList<ColourByLaw> ColourBy { get; init; } = [];

    /// <summary>How it compares with the style that was asked for; null when none was.</summary>
    public StyleFit? StyleFit { get; init; }

    /// <summary>The package; null when the run was not made.</summary>
    public PackageOutlook? Package { get; init; }

    /// <summary>Ions by place; null when no water was given.</summary>
    public IonTable? Ions { get; init; }

    /// <summary>The water plan carried out for this brew; null when none was given.</summary>
    public WaterOutcome? Water { get; init; }

    /// <summary>The rests and the ways between them; null without a mash.</summary>
    public MashSchedule? MashSchedule { get; init; }

    /// <summary>Chilling; null when nothing has to be chilled.</summary>
    public Chilling? Chilling { get; init; }

    /// <summary>What must be told to people who cannot eat everything.</summary>
    public required AllergenOutlook Allergens { get; init; }

    /// <summary>Hazards, and limits of models.</summary>
    public required IReadOnlyList<Caution> Cautions { get; init; }

    /// <summary>What is wrong or doubtful in what was entered.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>What went in against what came out; null when the run was not made.</summary>
    public Ledger? Balance { get; init; }

    /// <summary>What failed when this could not be reckoned, for a log; null as a rule. A finding says it to the brewer.</summary>
    public Exception? Failure { get; init; }

    /// <summary>Whether the recipe can be brewed as it is: no finding of severity error.</summary>
    public bool CanBeBrewed => Findings.All(f => f.Severity != Severity.Error);
}

/// <summary>A headline number.</summary>
/// <param name="Name">Stable name: <c>originalGravity</c>.</param>
/// <param name="Title">As people say it: "original gravity, all in"; screens and pages use this one.</param>
/// <param name="Decimals">Digits after the point that a person makes use of.</param>
/// <param name="Band">The number; null where unknown.</param>
public sealed record Headline(string Name, string Title, int Decimals, Band? Band);

/// <summary>A stage of one portion.</summary>
/// <param name="Stage">Stable name: <c>copperUp</c>.</param>
/// <param name="Portion">Name of the portion.</param>
/// <param name="LitresAt20C">Clear liquid.</param>
/// <param name="LitresWithSolids">What the vessel's marks would read at 20 °C.</param>
/// <param name="LitresHot">Clear liquid as it stands at its temperature.</param>
/// <param name="TemperatureC">Degrees; null when nobody knows.</param>
/// <param name="Gravity">Of the clear liquid.</param>
/// <param name="SuspensionGravity">With what has not settled stirred in.</param>
/// <param name="ExtractPlato">Real extract.</param>
/// <param name="AlcoholByVolume">Per cent.</param>
/// <param name="ColourSrm">Colour of the liquid once it has one: from knock-out on.</param>
public sealed record StageRow(
    string Stage, string Portion, double LitresAt20C, double LitresWithSolids, double LitresHot, double? TemperatureC,
    double Gravity, double SuspensionGravity, double ExtractPlato, double AlcoholByVolume, double ColourSrm)
{
    /// <summary>What the vessel's marks read as it stands: hot, with everything that has not settled out of it.</summary>
    public double VesselLitres => LitresWithSolids + LitresHot - LitresAt20C;
}

/// <summary>A loss.</summary>
/// <param name="Stage">Where.</param>
/// <param name="Portion">From which portion.</param>
/// <param name="What">Stable name: <c>heldInGrain</c>.</param>
/// <param name="LitresAt20C">Clear liquid lost.</param>
/// <param name="Kilograms">Everything lost, solids and gas included.</param>
/// <param name="ExtractKg">Extract lost.</param>
public sealed record LossRow(string Stage, string Portion, string What, double LitresAt20C, double Kilograms, double ExtractKg);

/// <summary>Something that goes in.</summary>
/// <param name="Stage">Where.</param>
/// <param name="Portion">Into which portion.</param>
/// <param name="What">Its name, or what it is for: <c>sparge liquor</c>.</param>
/// <param name="Kilograms">All of it.</param>
/// <param name="LitresAt20C">Clear liquid it brings by itself; starch that the mash has yet to dissolve is not in it.</param>
public sealed record AdditionRow(string Stage, string Portion, string What, double Kilograms, double LitresAt20C);

/// <summary>One hop's bitterness.</summary>
/// <param name="Hop">Name.</param>
/// <param name="At">When it went in.</param>
/// <param name="Model">Which model says so.</param>
/// <param name="Ibu">In the served beer.</param>
public sealed record HopBitterness(string Hop, string At, string Model, double Ibu)
{
    /// <summary>Its place among the recipe's ingredients, from 0.</summary>
    public required int Line { get; init; }

    /// <summary>The model that is not shown.</summary>
    public required string OtherModel { get; init; }

    /// <summary>What it says, in the served beer.</summary>
    public required double OtherIbu { get; init; }

    /// <summary>Alpha acids on brew day, % by mass.</summary>
    public required double AlphaPercent { get; init; }
}

/// <summary>The beer in its package.</summary>
/// <param name="In">Kind of package.</param>
/// <param name="Co2Volumes">As served.</param>
/// <param name="RefermentableVolumes">Made by sugar in the package.</param>
/// <param name="MaxVolumes">What the package is made for; null when unsaid.</param>
/// <param name="PrimingSugarGrams">White sugar that was solved for; 0 for none.</param>
/// <param name="Count">How many packages that fills; null when the kit does not say their size.</param>
public sealed record PackageOutlook(
    string In, double Co2Volumes, double RefermentableVolumes, double? MaxVolumes, double PrimingSugarGrams, int? Count)
{
    /// <summary>Pressure to keep it under; null unless gas comes from a cylinder.</summary>
    public KegGauge? Keg { get; init; }
}

/// <summary>Allergens in what was used.</summary>
/// <param name="Us">Those of the US list.</param>
/// <param name="Eu">Those of the EU list.</param>
/// <param name="StatementUs">Ready to print, US.</param>
/// <param name="StatementEu">Ready to print, EU.</param>
public sealed record AllergenOutlook(
    IReadOnlyList<string> Us, IReadOnlyList<string> Eu, string StatementUs, string StatementEu);
