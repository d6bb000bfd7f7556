using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Liquors;
using Gylebook.Forecast.Records;
using Gylebook.Forecast.Report.Beer;
using Gylebook.Forecast.Report.Bitterness;
using Gylebook.Forecast.Report.Cooling;
using Gylebook.Forecast.Report.Doubt;
using Gylebook.Forecast.Report.Labels;
using Gylebook.Forecast.Report.Mashing;
using Gylebook.Forecast.Report.Pitching;
using Gylebook.Forecast.Report.Readings;
using Gylebook.Forecast.Report.Stages;
using Gylebook.Recipes;

namespace Gylebook.Forecast.Report;

/// <summary>A recipe's whole way from water to glass on one kit, as it is told to people and files.</summary>
public sealed record BrewForecast
{
    /// <summary>The recipe's name.</summary>
    public required string Recipe { get; init; }

    /// <summary>The kit's name.</summary>
    public required string Kit { get; init; }

    /// <summary>Seed of the draws.</summary>
    public required string Seed { get; init; }

    /// <summary>How sure it is; null when nothing was drawn.</summary>
    public HowSure? HowSure { get; init; }

    /// <summary>The numbers asked for first, by their stable names, in order; null where unknown.</summary>
    public required IReadOnlyList<Headline> Headline { get; init; }

    /// <summary>What readings say of it; null when none were given.</summary>
    public AfterReadings? AfterReadings { get; init; }

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
