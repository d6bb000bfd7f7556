using System.Collections.Concurrent;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Science.Cooling;
using Gylebook.Science.Mashing;

namespace Gylebook.Engine.Readouts;

/// <summary>What can be told of one rest of the mash, and of each way to get to it from the one before.</summary>
public sealed record RestReadouts
{
    private static readonly ConcurrentDictionary<int, RestReadouts> Made = new();

    /// <summary>The rows of a rest.</summary>
    /// <param name="rest">Which, from 0.</param>
    public static RestReadouts Of(int rest) => Made.GetOrAdd(rest, static which => new(which));

    private RestReadouts(int rest)
    {
        Rest = rest;
        Readout Row(string key, string title, string unit, int decimals, ReadoutOf of) =>
            new(Invariant($"rest.{rest + 1}.{key}"), title, unit, decimals, new(Stage.Mash), of);
        EndCelsius = Row("endCelsius", "by the rest's end, if nobody heats", "°C", 1, (in run) => EndOf(run, rest));
        InfusionLitres = Row("infusionLitres", "boiling liquor to get there", "L at 20 °C", 2, (in run) => InfusionOf(run, rest) / Wort.WaterKilogramsPerLitre);
        HeatMinutes = Row("heatMinutes", "of heat to get there", "min", 0, (in run) => HeatMinutesOf(run, rest));
        DecoctionShare = Row("decoctionShare", "of the mash to boil to get there", "%", 0, (in run) => 100 * DecoctionOf(run, rest));
        DecoctionKilograms = Row("decoctionKilograms", "mash to boil to get there", "kg", 1, (in run) => DecoctionOf(run, rest) * MashKilograms(run));
        AlphaLeft = Row("alphaLeft", "alpha-amylase left at its end", "%", 0, (in run) => 100 * run.Plan.Mash.Rests.LeftAfter(rest, run.Draw).Alpha);
        BetaLeft = Row("betaLeft", "beta-amylase left at its end", "%", 0, (in run) => 100 * run.Plan.Mash.Rests.LeftAfter(rest, run.Draw).Beta);
    }

    /// <summary>Which, from 0.</summary>
    public int Rest { get; }

    /// <summary>What it has fallen to by its end if nobody heats, °C.</summary>
    public Readout EndCelsius { get; }

    /// <summary>Boiling liquor to add, litres at 20 °C; the first rest has none.</summary>
    public Readout InfusionLitres { get; }

    /// <summary>Minutes of full heat; unknown in a tun.</summary>
    public Readout HeatMinutes { get; }

    /// <summary>Share of the mash to take out, boil and give back, %.</summary>
    public Readout DecoctionShare { get; }

    /// <summary>The same, kg.</summary>
    public Readout DecoctionKilograms { get; }

    /// <summary>Alpha-amylase left at its end, %.</summary>
    public Readout AlphaLeft { get; }

    /// <summary>Beta-amylase left at its end, %.</summary>
    public Readout BetaLeft { get; }

    /// <summary>All rows.</summary>
    public IEnumerable<Readout> All => [EndCelsius, InfusionLitres, HeatMinutes, DecoctionShare, DecoctionKilograms, AlphaLeft, BetaLeft];

    /// <summary>Strike when the steps are made with hot water out of the same planned liquor, litres at 20 °C.</summary>
    public static Readout InfusionStrikeLitres { get; } = new(
        "infusionStrikeLitres", "strike liquor, when the steps are infused", "L at 20 °C", 2, new(Stage.Strike),
        static (in run) => InfusionStrikeOf(run) / Wort.WaterKilogramsPerLitre);

    /// <summary>Its temperature, °C.</summary>
    public static Readout InfusionStrikeCelsius { get; } = new(
        "infusionStrikeCelsius", "its temperature", "°C", 1, new(Stage.Strike),
        static (in run) => InfusionStrikeOf(run) is > 0 and var kilograms ? Heat.StrikeCelsiusWith(run, kilograms) : double.NaN);

    private static IReadOnlyList<RestStep> RestsOf(in RunView run) => run.Plan.Mash.Rests.Rests;

    private static double MashKilograms(in RunView run) => run.Plan.Surroundings!.Mash!.GristKilograms + run.Plan.Liquors[0];

    /// <summary>The room is as warm as the grain.</summary>
    private static double EndOf(in RunView run, int rest)
    {
        RestStep its = RestsOf(run)[rest];
        return run.Plan.Surroundings?.Mash is { CoolingHours: { } hours } mash
            ? NewtonCooling.Celsius(its.Celsius, mash.RoomCelsius, its.Minutes / 60, hours) : double.NaN;
    }

    private static MashStepUp StepTo(in RunView run, int rest)
    {
        double end = EndOf(run, rest - 1);
        return new(double.IsNaN(end) ? RestsOf(run)[rest - 1].Celsius : end, RestsOf(run)[rest].Celsius);
    }

    private static bool IsUp(in RunView run, MashStepUp step) =>
        step.ToCelsius > step.FromCelsius && step.ToCelsius < run.Plan.Surroundings!.BoilCelsius;

    /// <summary>Kilograms of strike liquor where every step goes up, and the liquor is enough for all of them.</summary>
    private static double InfusionStrikeOf(in RunView run)
    {
        Span<MashStepUp> steps = stackalloc MashStepUp[Math.Max(0, RestsOf(run).Count - 1)];
        return run.Plan.Surroundings?.Mash is not null && TryClimb(run, steps)
            ? InfusionSchedule.StrikeKilograms(Heat.GristKilojoulesPerKelvin(run), run.Plan.Liquors[0], steps, run.Plan.Surroundings.BoilCelsius) ?? double.NaN
            : double.NaN;
    }

    private static double InfusionOf(in RunView run, int rest)
    {
        double strike = rest == 0 ? double.NaN : InfusionStrikeOf(run);
        if (double.IsNaN(strike))
        {
            return double.NaN;
        }

        Span<MashStepUp> steps = stackalloc MashStepUp[RestsOf(run).Count - 1];
        TryClimb(run, steps);
        return InfusionSchedule.InfusionKilograms(Heat.GristKilojoulesPerKelvin(run), strike, steps[..rest], run.Plan.Surroundings!.BoilCelsius);
    }

    private static bool TryClimb(in RunView run, Span<MashStepUp> steps)
    {
        for (int i = 0; i < steps.Length; i++)
        {
            steps[i] = StepTo(run, i + 1);
            if (!IsUp(run, steps[i]))
            {
                return false;
            }
        }

        return steps.Length > 0;
    }

    private static double DecoctionOf(in RunView run, int rest) =>
        rest > 0 && run.Plan.Surroundings?.Mash is not null && StepTo(run, rest) is var step && IsUp(run, step)
            ? Decoction.Share(step.FromCelsius, step.ToCelsius, run.Plan.Surroundings.BoilCelsius) : double.NaN;

    private static double HeatMinutesOf(in RunView run, int rest)
    {
        if (rest == 0 || run.Plan.Surroundings?.Mash is not { IsInTun: false } || StepTo(run, rest) is var step && !IsUp(run, step))
        {
            return double.NaN;
        }

        double mash = Heat.GristKilojoulesPerKelvin(run) + (run.Plan.Liquors[0] * WortHeat.Water);
        return Heat.MinutesFor(run, mash, step.FromCelsius, step.ToCelsius);
    }
}
