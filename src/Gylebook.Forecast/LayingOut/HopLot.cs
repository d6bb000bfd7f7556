using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Boiling;

namespace Gylebook.Forecast.LayingOut;

/// <summary>The alpha acid a hop has on brew day: its assay, aged as it was kept.</summary>
public static class HopLot
{
    private const double RoomCelsius = 20;

    /// <summary>Alpha acids by mass on brew day, and where the figure is from.</summary>
    /// <param name="line">The hop's line, with age and storage.</param>
    /// <param name="cultivar">Its row of the table; may be null when the line has its own alpha acids.</param>
    public static (double Alpha, Provenance From) AlphaOf(IngredientLine line, HopCultivar? cultivar)
    {
        ArgumentNullException.ThrowIfNull(line);
        Provenance from = line.Alpha is null ? cultivar!.Provenance : Provenance.Entered;
        double assay = line.Alpha?.Value.Ratio ?? cultivar!.Alpha.Ratio;
        if (line.Age is not { } age || age.Value.Days <= 0 || !CanBe(line.Storage))
        {
            return (assay, from);
        }

        string aged = Invariant($"{from.Source}; aged {age.Value.Days:0.#} d, Garetz 1994");
        return (assay * ShareLeft(line, age.Value.Days), new Provenance(aged, from.Status));
    }

    /// <summary>What cannot be has a finding of its own; here it is passed over.</summary>
    private static bool CanBe(HopStorage? storage) =>
        storage is null || (storage.Temperature.Value.Celsius is >= -80 and <= 60 && storage.Lost is null or { Value.Percent: <= 99 });

    private static double ShareLeft(IngredientLine line, double days)
    {
        double lost = line.Storage?.Lost?.Value.Ratio ?? StartingValues.Of("hops.lostInSixMonths").Value;
        return line.Storage is { } storage
            ? HopAgeing.ShareLeft(days, storage.Temperature.Value.Celsius, storage.Pack, lost)
            : HopAgeing.ShareLeft(days, RoomCelsius, HopPack.Open, lost);
    }
}
