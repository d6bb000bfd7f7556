using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes.Kits;

namespace Gylebook.Forecast.Report.Beer;

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

    /// <summary>The package that a recipe asks for, filled.</summary>
    internal static PackageOutlook Of(BrewPlan brew, RunOutcome figures)
    {
        PackageKind kind = BrewPlanner.PackageOf(brew.Recipe, brew.Kit)!;
        double each = (kind.Fill ?? kind.Brim).Value.Litres;
        return new PackageOutlook(
            kind.Kind,
            figures[BeerReadouts.CarbonationVolumes],
            figures[BeerReadouts.RefermentableVolumes],
            kind.MaxVolumes?.Value.Volumes,
            figures[PackageReadouts.PrimingGrams],
            each > 0 ? (int)Math.Ceiling((figures[BeerReadouts.PackagedLitres] / each) - 1e-9) : null)
        {
            Keg = figures.Plan.Surroundings?.Keg is { } keg ? new KegGauge(keg.Celsius, figures[PackageReadouts.GaugeBar]) : null,
        };
    }
}

/// <summary>What the regulator of a keg reads, under the air of the kit's height, to keep the beer's carbonation.</summary>
/// <param name="Celsius">Temperature of the beer it is for.</param>
/// <param name="GaugeBar">Bar above the air there.</param>
public sealed record KegGauge(double Celsius, double GaugeBar);
