using System.Globalization;
using Gylebook.Recipes;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Foods;

/// <summary>Whether a dose could be meant for that much beer.</summary>
internal static class DoseCheck
{
    /// <summary>The dose; without its amount or its litres, and with a finding, where they cannot be meant.</summary>
    /// <param name="amount">How much; null when unsaid.</param>
    /// <param name="into">Into how much; null when unsaid.</param>
    /// <param name="findings">Takes what is wrong.</param>
    public static (Entered<Mass>? Amount, Entered<VolumeAt20C>? Into) Sane(
        Entered<Mass>? amount, Entered<VolumeAt20C>? into, List<Finding> findings)
    {
        if (amount is { Value.Kilograms: <= 0 } nothing)
        {
            findings.Add(new("quantity.nothing", Severity.Error, "amount", $"{nothing.Text}; must be more than nothing", nothing.Text, "above 0 g"));
            return (null, into);
        }

        if (into is { Value.Litres: <= 0 } dry)
        {
            findings.Add(new("quantity.nothing", Severity.Error, "into", $"{dry.Text}; must be more than nothing", dry.Text, "above 0 L"));
            return (amount, null);
        }

        if (amount is { } much && into is { } litres && much.Value.Kilograms > RecipeCheck.MostKilogramsPerLitre * litres.Value.Litres)
        {
            string most = string.Create(CultureInfo.InvariantCulture, $"{RecipeCheck.MostKilogramsPerLitre * litres.Value.Litres:0.####} kg");
            findings.Add(new(
                "dose.absurd", Severity.Error, "amount",
                $"{much.Text}; must be at most {most} into {litres.Text}: it would be more solid than liquid", much.Text, most));
            return (null, into);
        }

        return (amount, into);
    }

    /// <summary>A dose whose solids hold all the beer there is.</summary>
    public static Finding NothingLeft(Dose dose)
    {
        string grams = string.Create(CultureInfo.InvariantCulture, $"{dose.GramsPerLitre:0.#} g/L");
        string at = Words.Of(dose.At);
        return new("dose.nothingLeft", Severity.Error, "amount", $"{grams} at {at}; its solids hold all the beer, and nothing is left to package. Dose less", grams);
    }
}
