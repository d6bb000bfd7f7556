using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Boiling;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Foods;

/// <summary>How much of a food goes in, where, and into how much.</summary>
/// <param name="Amount">The food as is.</param>
/// <param name="At">The place in the run.</param>
/// <param name="Into">Litres at 20 °C: of wort in the fermenter for every place up to fermentation, of beer in the package after it.</param>
public sealed record Dose(Mass Amount, AdditionTime At, VolumeAt20C Into)
{
    /// <summary>Grams of food per litre.</summary>
    public double GramsPerLitre => Amount.Grams / Into.Litres;

    /// <summary>How high above the sea it is packaged, which sets the air that gas works against; null where nobody says: the sea's.</summary>
    public Entered<Length>? Height { get; init; }

    /// <summary>The air there, kPa.</summary>
    internal double AirKilopascals => BoilingPoint.PressureKilopascals(Height?.Value.Metres ?? 0);

    /// <summary>The height a dose has on a kit; null without a kit, without its word, and where nobody lives.</summary>
    /// <param name="kit">The kit; null for none.</param>
    /// <param name="findings">Takes what is wrong with its height, as <c>kit.altitude</c>.</param>
    public static Entered<Length>? HeightOn(Kit? kit, ICollection<Finding> findings)
    {
        if (kit is not null && KitCheck.Findings(kit).FirstOrDefault(f => f.Code == "kit.altitude") is { } wrong)
        {
            findings.Add(wrong with { Where = $"kit.{wrong.Where}" });
            return null;
        }

        return kit?.Altitude;
    }
}
