using Gylebook.Engine.Parameters;
using Gylebook.Engine.Stages;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Larders;
using Gylebook.Science.Boiling;

namespace Gylebook.Forecast.Ingredients;

/// <summary>The alpha acid a hop has on brew day: its assay, aged as it was kept.</summary>
public static class HopLot
{
    private const double RoomCelsius = 20;

    /// <summary>Alpha acids by mass on brew day, and where the figure is from.</summary>
    /// <param name="hand">The hop's line, with age and storage.</param>
    /// <param name="cultivar">Its row of the table; may be null when the line has its own alpha acids.</param>
    public static (double Alpha, Provenance From) AlphaOf(LineInHand hand, HopCultivar? cultivar)
    {
        ArgumentNullException.ThrowIfNull(hand);
        IngredientLine line = hand.Line;
        (double assay, Provenance from) = AssayOf(hand, cultivar);
        if (!Ages(line))
        {
            return (assay, from);
        }

        double days = line.Age!.Value.Value.Days;
        string aged = Invariant($"{from.Source}; aged {days:0.#} d, Garetz 1994");
        return (assay * HopAgeing.ShareLeft(days, CelsiusOf(line), PackOf(line), LostOf(line).Median), new Provenance(aged, from.Status));
    }

    /// <summary>Alpha acids by mass as assayed, or as the table has them.</summary>
    internal static (double Assay, Provenance From) AssayOf(LineInHand hand, HopCultivar? cultivar) =>
        (hand.Line.Alpha?.Value.Ratio ?? cultivar!.Alpha.Ratio, hand.Alpha switch
        {
            AlphaFrom.Cultivar => cultivar!.Provenance,
            AlphaFrom.Assay => hand.From,
            _ => hand.Typed.Alpha is null ? (hand with { Lot = null }).From : Provenance.Entered,
        });

    /// <summary>The parameter of those alpha acids, as wide as their source is vague: a cultivar's range, a sealed pack, an assay of the lot.</summary>
    internal static Parameter AssayParameter(LineInHand hand, HopCultivar? cultivar)
    {
        (double assay, Provenance from) = AssayOf(hand, cultivar);
        string id = $"hop.{hand.Key}.alpha";
        return hand.Alpha == AlphaFrom.Assay
            ? StartingParameters.Certified(id, assay, "kg/kg", from, "sealed")
            : StartingParameters.New(id, assay, "kg/kg", from, hand.Alpha == AlphaFrom.Cultivar ? "cultivar" : "sealed");
    }

    /// <summary>How it was kept since, for a run; null for fresh.</summary>
    internal static HopAge? AgeOf(IngredientLine line, ParameterList parameters) => Ages(line)
        ? new HopAge(line.Age!.Value.Value.Days, CelsiusOf(line), PackOf(line), parameters.Of(LostOf(line)))
        : null;

    private static bool Ages(IngredientLine line) => line.Age is { Value.Days: > 0 } && CanBe(line.Storage);

    /// <summary>What cannot be has a finding of its own; here it is passed over.</summary>
    private static bool CanBe(HopStorage? storage) =>
        storage is null || (storage.Temperature.Value.Celsius is >= -80 and <= 60 && storage.Lost is null or { Value.Percent: <= 99 });

    private static double CelsiusOf(IngredientLine line) => line.Storage?.Temperature.Value.Celsius ?? RoomCelsius;

    private static HopPack PackOf(IngredientLine line) => line.Storage?.Pack ?? HopPack.Open;

    /// <summary>What it loses in six months at 20 °C in the open: the brewer's own figure, or any cultivar's.</summary>
    private static Parameter LostOf(IngredientLine line) => line.Storage?.Lost is { } own
        ? StartingParameters.New($"hop.{line.Of.ToLowerInvariant()}.lostInSixMonths", own.Value.Ratio, "1", Provenance.Entered)
        : LostByAny;

    private static readonly Parameter LostByAny = StartingParameters.Of("hops.lostInSixMonths");
}
