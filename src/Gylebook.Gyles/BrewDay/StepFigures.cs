using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Mashing;
using Gylebook.Recipes;
using Gylebook.Science.Liquids;
using Gylebook.Science.Mashing;

namespace Gylebook.Gyles.BrewDay;

/// <summary>Figures of a forecast as the steps of brew day tell them.</summary>
/// <param name="forecast">The forecast.</param>
internal sealed class StepFigures(BrewForecast forecast)
{
    /// <summary>When it foams: there is nothing to reckon, only to do.</summary>
    public static StepTrouble FoamsUp { get; } = new(
        "It foams up", "Flame off, or the element, at once. Stand back, stir, and spray a little cold water on the foam; go on when it has sunk.");

    /// <summary>The likely value of a number; null where it is not known.</summary>
    public double? Of(Readout readout) => forecast.HowSure?.BandOf(readout)?.Likely;

    /// <summary>Numbers to come to, those that are known.</summary>
    public IReadOnlyList<StepAim> Aims(params (string What, Readout Readout)[] told) =>
    [
        .. told.Select(aim => (aim.What, aim.Readout, Band: forecast.HowSure?.BandOf(aim.Readout))).Where(aim => aim.Band is not null)
            .Select(aim => new StepAim(aim.What, aim.Band!.Low, aim.Band.Likely, aim.Band.High, aim.Readout.Unit, aim.Readout.Decimals)),
    ];

    /// <summary>Both readings that tell most of a kettle or a fermenter.</summary>
    public static IReadOnlyList<StepReading> GravityAndVolume(string at) =>
    [
        new(at, "volume", "By the marks or a dip stick, with its temperature: hot wort stands up to 4 % higher."),
        new(at, "gravity", "Stirred, then a covered sample cooled below 40 °C; type what it shows and how warm it is."),
    ];

    /// <summary>A mash that came out too warm or too cold: the litres of water that move it by one degree.</summary>
    public static StepTrouble[] OffTemperature(MashSchedule mash, double gristKilograms)
    {
        double rest = mash.Rests[0].Celsius, heat = Infusion.MashKilojoulesPerKelvin(gristKilograms, UsualMoisture, mash.StrikeLitres * WaterDensity.KilogramsPerLitreAt(Room));
        double boiling = Infusion.WaterKilograms(heat, rest - 1, rest, mash.BoilCelsius), cold = heat / (WortHeat.Water * (rest - CoolWater));
        return
        [
            new("Too cold", Invariant($"Heat gently and stir; or stir in {boiling:0.0} L of boiling water for each degree below {rest:0.#} °C, and leave as much out of the sparge. Boiling water scalds.")),
            new("Too warm", Invariant($"Stir with the lid off; or stir in {cold:0.0} L of water at {CoolWater:0} °C for each degree above {rest:0.#} °C, and leave as much out of the sparge.")),
        ];
    }

    /// <summary>Grain that will not give its wort back.</summary>
    public static StepTrouble Stuck(MashMethod method) => method == MashMethod.Tun
        ? new("It does not run", "Close the tap, stir the bed, let it stand ten minutes, and open the tap a little at a time.")
        : new("The bag sticks or will not drip", "Let it down again, stir inside it to break the bed, and lift slowly; tie it off and let it hang. Never pull a hot bag towards you.");

    /// <summary>Too little in the kettle.</summary>
    public StepTrouble TooLittle()
    {
        double? litres = Of(StageReadouts.Of(Engine.State.Stage.CopperUp, 0).LitresHot);
        string wanted = litres is { } planned ? Invariant($" {planned:0.0} L were planned.") : "";
        return new("Too little, or too much, in the kettle", $"Read it and write it in: litres and gravity together say whether water, a longer boil or nothing at all is the way on.{wanted}");
    }

    /// <summary>Water from the tap, °C, and the moisture of malt: common practice, no source. What is told is told of such water.</summary>
    private const double CoolWater = 12, UsualMoisture = 0.04;

    private const double Room = 20;
}
