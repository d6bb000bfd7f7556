using Gylebook.Forecast.Report.Readings;
using Gylebook.Gyles.BrewDay;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Readings;
using Gylebook.Science.Quantities;

namespace Gylebook.Gyles.Plans;

/// <summary>What to do where the gravity comes out one point off the plan: the answer of today's engine, worked out before the day.</summary>
/// <param name="At">Where it is read.</param>
/// <param name="Gravity">The gravity that would be read, SG at 20 °C.</param>
/// <param name="IsLow">Whether it is below the plan.</param>
/// <param name="Ways">What lands nearer to the plan than letting it be: the best that takes time, and the best that is weighed or measured, the better first; empty where nothing does.</param>
public sealed record PointMend(ReadingPoint At, double Gravity, bool IsLow, IReadOnlyList<Mend> Ways)
{
    /// <summary>One point of gravity, as brewers count it.</summary>
    private const double Point = 0.001;

    private const double Room = 20;
    private const string Instrument = "hydrometerNarrow";

    /// <summary>One below and one above, at copper-up and at knock-out, where the plan has a gravity there.</summary>
    /// <param name="plan">The plan; its gravities are the frozen ones.</param>
    /// <returns>None where this program can no longer read a file of the plan.</returns>
    /// <remarks>The made-up reading is one that leaves least to doubt: litres as planned, and a narrow hydrometer that was checked, read twice, in a sample at 20 °C.</remarks>
    public static IReadOnlyList<PointMend> Of(GylePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return GyleInputs.Of(plan) is not { } inputs ? [] :
        [
            .. from at in new[] { ReadingPoint.CopperUp, ReadingPoint.KnockOut }
               let step = plan.Steps.FirstOrDefault(step => step.Key == ReadingsFile.Word(at))
               where step is not null && AimOf(step, "SG") is not null
               from off in new[] { -Point, Point }
               select Of(inputs, plan.Seed, at, step, off),
        ];
    }

    private static PointMend Of(GyleInputs inputs, string seed, ReadingPoint at, BrewStep step, double off)
    {
        double gravity = AimOf(step, "SG")!.Likely + off;
        IReadOnlyList<Mend> mends = inputs.Forecast(seed, [.. Readings(at, gravity, AimOf(step, "L")?.Likely)]).AfterReadings?.Mends ?? [];
        return new(at, gravity, off < 0, [.. mends.TakeWhile(mend => mend.IsChange).GroupBy(mend => mend.Minutes is null).Select(alike => alike.First())]);
    }

    private static IEnumerable<TakenReading> Readings(ReadingPoint at, double gravity, double? litres)
    {
        if (litres is { } planned)
        {
            yield return new(at) { Volume = new(HotVolume.FromLitres(planned), Invariant($"{planned:0.00} L")) };
        }

        yield return new(at)
        {
            Gravity = new(SpecificGravity.FromRatio(gravity), Invariant($"{gravity:0.0000}")),
            Temperature = new(Temperature.FromCelsius(Room), Invariant($"{Room} °C")),
            Instrument = Instrument, IsChecked = true, IsSure = true,
        };
    }

    private static StepAim? AimOf(BrewStep step, string unit) => step.Aims.FirstOrDefault(aim => aim.Unit == unit);
}
