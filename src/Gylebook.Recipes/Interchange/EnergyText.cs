using System.Globalization;
using Gylebook.Recipes.Interchange.Json;

namespace Gylebook.Recipes.Interchange;

/// <summary>Food energy as labels print it: "110 kcal" or "460 kJ".</summary>
internal static class EnergyText
{
    /// <summary>The thermochemical calorie, 4.184 J exactly.</summary>
    private const double KilojoulesInKilocalorie = 4.184;

    private const double MostKilocalories = 100_000;

    /// <summary>The energy in kilocalories; null when there is none, or none that can be read.</summary>
    internal static double? Read(ObjectReader at, string key)
    {
        const int Longest = 64;
        if (at.Take(key) is not { } cursor || cursor.Text(Longest) is not { } text)
        {
            return null;
        }

        var energy = Number(text, "kcal") ?? (Number(text, "kJ") / KilojoulesInKilocalorie);
        if (energy is not (>= 0 and <= MostKilocalories))
        {
            const string Form = "a number from 0 with kcal or kJ";
            at.Findings.Error("energy.wrong", cursor.Path, $"{FindingList.Shorten(text)}; must be {Form}", text, Form);
        }

        return energy;
    }

    internal static string? Write(double? kilocalories) =>
        kilocalories is { } energy ? Invariant($"{energy:0.######} kcal") : null;

    private static double? Number(string text, string unit)
    {
        var trimmed = text.AsSpan().Trim();
        return trimmed.EndsWith(unit, StringComparison.Ordinal)
            && double.TryParse(trimmed[..^unit.Length].Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            ? number
            : null;
    }
}
