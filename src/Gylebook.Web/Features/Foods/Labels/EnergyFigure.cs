using System.Globalization;

namespace Gylebook.Web.Features.Foods.Labels;

/// <summary>A panel's energy as text. A food file keeps kilocalories; packets print either, as round numbers.</summary>
public static class EnergyFigure
{
    /// <summary>The thermochemical calorie, 4.184 J exactly.</summary>
    private const double KilojoulesInKilocalorie = 4.184;

    private const double MostKilocalories = 100_000;
    private const int MostDecimals = 3;

    /// <summary>In the unit in which the number is rounder, which is the one that was printed, or means exactly the same.</summary>
    public static string? Text(double? kilocalories)
    {
        if (kilocalories is not { } energy)
        {
            return null;
        }

        double kilojoules = energy * KilojoulesInKilocalorie;
        return Decimals(kilojoules) < Decimals(energy) ? Written(kilojoules, "kJ") : Written(energy, "kcal");
    }

    /// <summary>Reads "110 kcal" or "460 kJ", with a decimal comma or point.</summary>
    public static bool TryRead(string text, out double kilocalories)
    {
        string trimmed = text.Trim();
        bool isKilojoules = trimmed.EndsWith("kJ", StringComparison.Ordinal);
        string number = (isKilojoules ? trimmed[..^"kJ".Length] : trimmed.EndsWith("kcal", StringComparison.Ordinal) ? trimmed[..^"kcal".Length] : "").Trim();
        bool isRead = double.TryParse(number.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out kilocalories);
        kilocalories /= isKilojoules ? KilojoulesInKilocalorie : 1;
        return isRead && kilocalories <= MostKilocalories;
    }

    private static string Written(double energy, string unit) => string.Create(CultureInfo.InvariantCulture, $"{energy:0.###} {unit}");

    private static int Decimals(double number)
    {
        // A file writes six decimals of a kilocalorie, which is five millionths of a kilojoule at worst.
        const double WriteError = 5e-6;
        return Enumerable.Range(0, MostDecimals).FirstOrDefault(n => Math.Abs(number - Math.Round(number, n)) <= WriteError, MostDecimals);
    }
}
