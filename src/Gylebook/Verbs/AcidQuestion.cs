using System.Globalization;
using Gylebook.Recipes;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;
using Gylebook.Terminal;

namespace Gylebook.Verbs;

/// <summary>What somebody asked of <c>water acid</c>, read; every option that is wrong is a finding.</summary>
internal sealed class AcidQuestion
{
    private const double LowestPh = 4.5;
    private const double HighestPh = 11;
    private readonly OptionReader _options = new();

    private AcidQuestion(WaterAcidVerb.Settings asked)
    {
        double alkalinity = _options.Quantity<Equivalents>("--alkalinity", asked.Alkalinity)?.MilliequivalentsPerLitre ?? 0;
        Ph = PhOf("--ph", asked.Ph);
        To = PhOf("--to", asked.To);
        Litres = _options.Quantity<VolumeAt20C>("--volume", asked.Volume)?.Litres ?? 0;
        Celsius = asked.Temperature is null ? 20 : _options.Quantity<Temperature>("--temperature", asked.Temperature)?.Celsius ?? 20;
        _options.Within("--temperature", Celsius, 0, 90, "°C");
        _options.Within("--alkalinity", alkalinity, 0, 100, "mEq/L");
        IsOpen = asked.Open;
        double? density = asked.Density is { } typed ? ShelfWords.Density(typed) : null;
        if (asked.Density is not null && density is null)
        {
            _options.Wrong("acid.density", "--density", $"{CommandLine.OneLine(asked.Density)}; must be {ShelfWords.DensityForm}", asked.Density);
        }

        Acid = ShelfWords.Sold(asked.Acid, density);
        if (Acid is null)
        {
            _options.Wrong("acid.unknown", "--acid", ShelfWords.UnknownAcid(CommandLine.OneLine(asked.Acid)), asked.Acid);
        }

        Ions = new IonProfile(
            Milligrams("--calcium", asked.Calcium), Milligrams("--magnesium", asked.Magnesium), Milligrams("--sodium", asked.Sodium),
            Milligrams("--potassium", asked.Potassium), alkalinity * Ion.Bicarbonate.EquivalentWeight(),
            Milligrams("--sulfate", asked.Sulphate), Milligrams("--chloride", asked.Chloride));
    }

    public IReadOnlyList<Finding> Findings => _options.Findings;

    public double Ph { get; }

    public double To { get; }

    public double Litres { get; }

    public double Celsius { get; }

    public AcidAsSold? Acid { get; }

    public IonProfile Ions { get; }

    /// <summary>Whether CO2 goes to the air until the liquor is at rest with it.</summary>
    public bool IsOpen { get; }

    public static AcidQuestion Read(WaterAcidVerb.Settings asked) => new(asked);

    private double PhOf(string option, string text)
    {
        if (!double.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double ph))
        {
            _options.Wrong("ph.wrong", option, Invariant($"{CommandLine.OneLine(text)}; a pH is a number from {LowestPh} to {HighestPh}"), text);
            return 7;
        }

        _options.Within(option, ph, LowestPh, HighestPh, "");
        return ph;
    }

    private double Milligrams(string option, string? text)
    {
        double milligrams = text is null ? 0 : _options.Quantity<Concentration>(option, text)?.MilligramsPerLitre ?? 0;
        _options.Within(option, milligrams, 0, 5000, "mg/L");
        return Math.Min(milligrams, 5000);
    }
}

/// <summary>How much acid.</summary>
/// <param name="IonicStrength">Of the liquor, mol/L.</param>
/// <param name="MilliequivalentsPerLitre">Acid each litre takes; 0 when it is sour enough already.</param>
/// <param name="Units">mL, or grams of a powder, for all of it.</param>
internal sealed record AcidAnswer(double IonicStrength, double MilliequivalentsPerLitre, double Units)
{
    public static AcidAnswer Of(AcidQuestion question)
    {
        double strength = Math.Min(0.5, question.Ions.IonicStrength);
        CarbonateConstants constants = CarbonateConstants.At(question.Celsius, strength);
        double alkalinity = question.Ions.AlkalinityMilliequivalents;
        double acid = Math.Max(0, question.IsOpen
            ? CarbonateSystem.AcidToOpenPh(constants, alkalinity, question.To, CarbonateSystem.AirCarbonDioxide)
            : CarbonateSystem.AcidToPh(constants, alkalinity, question.Ph, question.To));
        return new AcidAnswer(strength, acid, question.Acid!.UnitsFor(acid * question.Litres, question.To));
    }
}
