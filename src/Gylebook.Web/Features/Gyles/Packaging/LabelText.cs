using System.Globalization;
using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Labels;
using Gylebook.Gyles.Packaging;
using Gylebook.Gyles.Portions;
using Gylebook.Recipes.Ingredients;
using Gylebook.Web.Reading;

namespace Gylebook.Web.Features.Gyles.Packaging;

/// <summary>What stands on a bottle of a gyle.</summary>
/// <param name="Name">The beer's.</param>
/// <param name="Strength">Alcohol by volume as its band allows it to be told.</param>
/// <param name="Contains">Allergens in it, as the EU's and the US list say; empty for none known.</param>
/// <param name="MayContain">Those that a packet only warns of.</param>
/// <param name="Ingredients">All that went in and may be tasted or eaten, the most first.</param>
/// <param name="Litres">In one bottle; null where packages differ.</param>
/// <param name="Packaged">The day.</param>
/// <param name="BestBefore">Till when it is best, and why.</param>
public sealed record LabelText(
    string Name, string Strength, string Contains, string MayContain, string Ingredients, double? Litres, DateTimeOffset Packaged, (DateTimeOffset Day, string Why) BestBefore)
{
    /// <summary>Allergens in it, in a sentence.</summary>
    public string ContainsSentence => Contains.Length > 0 ? $"Contains: {Contains}." : "Contains no allergen that is known of.";

    /// <summary>Those that a packet warns of, in a sentence; empty for none.</summary>
    public string MayContainSentence => MayContain.Length > 0 ? $"May contain: {MayContain}." : "";

    /// <summary>How much, from when and till when, and for whom.</summary>
    /// <param name="litres">How the reader wants to see litres.</param>
    /// <param name="clock">The time, and its zone.</param>
    public string DaysSentence(Func<double, string> litres, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(litres);
        return $"{(Litres is { } each ? $"{litres(each)}. " : "")}Filled {Instants.Day(Packaged, clock)}. Best before {Instants.Day(BestBefore.Day, clock)}: {BestBefore.Why}. Cold and dark. Alcohol: for adults.";
    }

    private const int Months = 6, StrongMonths = 12, HoppedMonths = 3;
    private const double Strong = 7.5, Hopped = 50;

    /// <summary>The label of a gyle.</summary>
    public static LabelText Of(OpenPackage of, PackageQuestion? asked, PackagePlan? plan, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(of);
        AllergenOutlook allergens = of.Live.Allergens;
        DateTimeOffset day = of.Gyle.PackagedOf(of.Portion.Name) ?? now;
        double[] each = [.. (asked?.Fills ?? []).Select(fill => fill.LitresEach).Distinct()];
        string[] gone =
        [
            .. Forecaster.Plan(of.Inputs.Recipe, of.Inputs.Kit, of.Inputs.Larder, of.Inputs.Water).Brew.Lines
                .Where(line => of.Portion.Takes(line) && line.Line.Kind is not (IngredientKind.Salt or IngredientKind.Acid or IngredientKind.Water)).OrderByDescending(line => line.Kilograms).Select(line => line.Name),
        ];
        string[] primed = plan?.PrimingGrams > 0 ? [asked!.Priming!.Name] : [];
        return new(
            of.Portion.Name is { } portion ? $"{of.Inputs.Recipe.Name}, {portion}" : of.Inputs.Recipe.Name, StrengthOf(of), Listed(allergens.Eu, allergens.Us), Listed(allergens.MayContainEu, allergens.MayContainUs),
            string.Join(", ", ((string[])["water", .. gone, .. primed]).Distinct()), each.Length == 1 ? each[0] : null, day, BestBeforeOf(of.Live, day));
    }

    private static string Listed(IReadOnlyList<string> eu, IReadOnlyList<string> us) => string.Join(", ", eu.Union(us, StringComparer.OrdinalIgnoreCase));

    /// <summary>No finer than the band: half a per cent where it is wide. The EU allows 0.5 % vol either way, 1.0 with whole fruit in it (Reg. 1169/2011, Annex XII).</summary>
    private static string StrengthOf(OpenPackage of)
    {
        Band? band = PortionView.Band(of.Live, of.Portion.Alcohol);
        return band is null ? "strength unknown"
            : band.High - band.Low <= 0.5 ? string.Create(CultureInfo.InvariantCulture, $"{band.Likely:0.0} % vol")
            : string.Create(CultureInfo.InvariantCulture, $"about {Math.Round(band.Likely * 2) / 2:0.0} % vol ({band.Low:0.0} to {band.High:0.0})");
    }

    /// <summary>Common practice, no source: six months; a year where alcohol keeps it; three months where hops are what it is drunk for.</summary>
    private static (DateTimeOffset, string) BestBeforeOf(BrewForecast live, DateTimeOffset day)
    {
        double Likely(string name) => live.Headline.FirstOrDefault(headline => headline.Name == name)?.Band?.Likely ?? 0;
        return Likely("alcoholByVolume") >= Strong ? (day.AddMonths(StrongMonths), "strong beer keeps for a year, cold and dark")
            : Likely("bitterness") >= Hopped ? (day.AddMonths(HoppedMonths), "the hops fade first")
            : (day.AddMonths(Months), "it does not spoil after that, it grows stale");
    }
}
