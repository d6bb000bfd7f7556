using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Boiling;
using Gylebook.Science.Cooling;
using Gylebook.Science.Mashing;

namespace Gylebook.Forecast.Report.Mashing;

/// <summary>The heat of the mash: strike, steps, and up to the boil. No temperature moves mass in this version.</summary>
internal sealed class MashHeat
{
    private readonly BrewPlan _laidOut;
    private readonly Kit _kit;
    private readonly IReadOnlyList<Rest> _rests;
    private readonly double _grist;
    private readonly double _moisture;
    private readonly bool _inTun;

    public MashHeat(BrewPlan brew)
    {
        (_laidOut, _kit) = (brew, brew.Kit);
        _rests = brew.Recipe.Mash?.Rests ?? [];
        List<PlannedLine> grist = [.. brew.Lines.Where(l => l.Line.At.Point == AdditionPoint.Mash && l.Kilograms > 0)];
        _grist = grist.Sum(l => l.Kilograms);
        _moisture = _grist > 0 ? Math.Min(0.5, grist.Sum(l => l.Makeup[Component.Water]) / _grist) : 0;
        _inTun = RunParameters.UsesTun(brew.Recipe, brew.Kit);
    }

    /// <summary>The boil at this kit's altitude.</summary>
    private double Boiling => BoilingPoint.CelsiusAt(_kit.MetresAboveSea);

    private double Liquor => _laidOut.Plan is { } plan ? plan.Liquors[0] : 0;

    private double Room => _kit.GrainTemperature.Value.Celsius;

    /// <summary>What grain and a vessel that is not warm already take up.</summary>
    private double GrainHeat => Infusion.MashKilojoulesPerKelvin(_grist, _moisture, 0) + Vessel;

    private double Vessel => _inTun ? _kit.Tun!.HeatCapacity.Value.KilojoulesPerKelvin : 0;

    /// <summary>Power that reaches the liquid; null when unknown.</summary>
    private double? Kilowatts => _kit.Kettle.Power?.Value.Kilowatts * StartingValues.Of("kettle.heatShare").Value;

    /// <summary>Strike temperature by heat balance, with so much liquor; a bag hangs in the warm kettle, a tun starts as cold as the grain.</summary>
    public double? StrikeCelsius(double kilograms) => _rests.Count == 0 || kilograms <= 0 ? null : StrikeHeat.StrikeCelsius(
        new MashIn
        {
            GrainKilograms = _grist,
            GrainMoisture = _moisture,
            GrainCelsius = Room,
            LiquorKilograms = kilograms,
            VesselKilojoulesPerKelvin = Vessel,
            VesselCelsius = Room,
            SlakingKelvins = StartingValues.Of("mash.slakingKelvins").Value,
        },
        _rests[0].Temperature.Value.Celsius);

    /// <summary>The schedule; null without a mash.</summary>
    /// <param name="copperUp">The wort before the boil.</param>
    public MashSchedule? Schedule(in Wort copperUp)
    {
        if (_rests.Count == 0 || Liquor <= 0 || _grist <= 0)
        {
            return null;
        }

        List<MashStepUp> steps = [.. Enumerable.Range(1, _rests.Count - 1).Select(i => new MashStepUp(EndOf(i - 1) ?? CelsiusOf(i - 1), CelsiusOf(i)))];
        bool allUp = steps.Count > 0 && steps.All(step => step.ToCelsius > step.FromCelsius && step.ToCelsius < Boiling);
        InfusionShares? shares = allUp ? InfusionSchedule.Of(GrainHeat, Liquor, steps, Boiling) : null;
        InfusionStrike? strike = shares is null ? null
            : new(shares.StrikeKilograms / Wort.WaterKilogramsPerLitre, StrikeCelsius(shares.StrikeKilograms)!.Value);
        double celsius = StrikeCelsius(Liquor)!.Value;
        IReadOnlyList<EnzymesLeft> left = _laidOut.Plan!.Mash.Rests.LeftAfter();
        return new MashSchedule(
            [.. _rests.Select((_, i) => (i == 0 ? First() : Later(i, steps[i - 1], shares)) with { AlphaLeft = left[i].Alpha, BetaLeft = left[i].Beta })],
            strike, HeatMinutes(Liquor * WortHeat.Water, Room, celsius), BoilMinutes(copperUp))
        {
            StrikeLitres = Liquor / Wort.WaterKilogramsPerLitre,
            StrikeCelsius = celsius,
            HasBoil = _laidOut.Recipe.Boil is not null,
            CopperUpLitres = copperUp.Litres,
            BoilCelsius = Boiling,
            Rinse = _laidOut.Recipe.Mash!.Sparge is { Volume: { } litres } sparge
                ? new MashRinse(sparge.Method, litres.Value.Litres, sparge.Temperature?.Value.Celsius)
                : null,
        };
    }

    private double CelsiusOf(int rest) => _rests[rest].Temperature.Value.Celsius;

    /// <summary>What a rest has fallen to by its end: the room is as warm as the grain.</summary>
    private double? EndOf(int rest) => _kit.MashCooling is { } cooling
        ? NewtonCooling.Celsius(CelsiusOf(rest), Room, _rests[rest].Time.Value.Hours, cooling.Value.Hours)
        : null;

    private MashRest First() => new(CelsiusOf(0), _rests[0].Time.Value.Minutes, EndOf(0), null, null, null, null, null);

    private MashRest Later(int rest, MashStepUp step, InfusionShares? shares)
    {
        bool up = step.ToCelsius > step.FromCelsius && step.ToCelsius < Boiling;
        double? share = up ? Decoction.Share(step.FromCelsius, step.ToCelsius, Boiling) : null;
        double mash = GrainHeat + (Liquor * WortHeat.Water);
        return new MashRest(
            step.ToCelsius, _rests[rest].Time.Value.Minutes, EndOf(rest),
            shares?.InfusionKilograms[rest - 1] / Wort.WaterKilogramsPerLitre, shares is null ? null : Boiling,
            up && !_inTun ? HeatMinutes(mash, step.FromCelsius, step.ToCelsius) : null,
            share, share * (_grist + Liquor));
    }

    /// <summary>Unknown without a heater, or with one so weak that the minutes are none; and for what would have to be hotter than the boil.</summary>
    private double? HeatMinutes(double kilojoulesPerKelvin, double from, double to)
    {
        if (Kilowatts is not > 0 || kilojoulesPerKelvin <= 0 || to > Boiling)
        {
            return null;
        }

        double minutes = HeatUp.Minutes(kilojoulesPerKelvin, 1, from, Math.Max(from, to), Kilowatts.Value, 1);
        return double.IsFinite(minutes) ? minutes : null;
    }

    private double? BoilMinutes(in Wort copperUp) => _laidOut.Recipe.Boil is null ? null : HeatMinutes(
        copperUp.Mass * WortHeat.OfWort(Math.Clamp(copperUp.RealExtractPlato, 0, 100)),
        _laidOut.Recipe.Souring?.Temperature.Value.Celsius ?? CelsiusOf(_rests.Count - 1), Boiling);
}
