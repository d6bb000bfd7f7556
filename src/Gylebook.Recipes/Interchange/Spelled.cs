using System.Globalization;
using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Liquors;
using Gylebook.Recipes.Lots;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange;

/// <summary>Values that are written in a way of their own.</summary>
internal static class Spelled
{
    private const double KilojoulesInKilocalorie = 4.184; // The thermochemical calorie, exactly.

    /// <summary>No hydrometer is so wrong: our choice.</summary>
    private const double MostOff = 0.1;

    /// <summary>Several times what the strongest distilling malt has. Common practice, no source.</summary>
    internal const double MostLintner = 500;

    /// <summary>A number of yeast cells: <c>100 billion</c>.</summary>
    public static ValueForm<CellCount> Cells { get; } = new SpelledForm<CellCount>(
        "cells.wrong",
        text => NumberBefore.Unit(text, "billion") is <= 100_000 and var billions && text.Trim().EndsWith(" billion", StringComparison.Ordinal) ? (true, new CellCount(billions, text)) : (false, default),
        cells => cells.Text,
        text => ($"\"{text}\"; write cells as \"100 billion\", from 0 to 100000 billion", "0 to 100000 billion"),
        ("pattern", new TextNode(@"^\s*[0-9]+(\.[0-9]+)? billion\s*$")), SchemaParts.Example("100 billion"));

    /// <summary>A pH, <c>"3.4"</c> or a bare number: it has no unit to forget. A comma before the decimals is read too.</summary>
    public static ValueForm<PhTarget> Ph { get; } = new SpelledForm<PhTarget>(
        "ph.wrong",
        text => double.TryParse(text.Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double ph) && ph is >= 0 and <= 14
            ? (true, new PhTarget(ph, text))
            : (false, null!),
        ph => ph.Text,
        text => ($"\"{text}\"; write a pH as \"3.4\", from 0 to 14", "0 to 14"),
        ("pattern", new TextNode(@"^\s*[0-9]+([.,][0-9]+)?\s*$")), SchemaParts.Example("3.4"))
    {
        TakesNumbers = true,
    };

    /// <summary>A sum of money: <c>4.20 EUR</c>. A comma before the decimals is read too.</summary>
    public static ValueForm<Price> Price { get; } = new SpelledForm<Price>(
        "price.wrong",
        text => ReadPrice(text) is { } price ? (true, price) : (false, default),
        price => price.Text,
        text => ($"\"{text}\"; write a price as \"4.20 EUR\": a number from 0, a space, the currency's three capital letters", "a number from 0 and three capital letters"),
        ("pattern", new TextNode(@"^\s*[0-9]{1,9}([.,][0-9]{1,4})? [A-Z]{3}\s*$")), SchemaParts.Example("4.20 EUR"));

    /// <summary>Diastatic power: <c>60 Lintner</c>, <c>194 WK</c>.</summary>
    public static ValueForm<DiastaticPower> DiastaticPower { get; } = new SpelledForm<DiastaticPower>(
        "power.wrong",
        text => ReadPower(text) is >= 0 and <= MostLintner and var lintner ? (true, new DiastaticPower(lintner, text)) : (false, default),
        power => power.Text,
        text => (Invariant($"\"{text}\"; write diastatic power as \"60 Lintner\" or \"194 WK\", from 0 to {MostLintner:0} Lintner"), Invariant($"0 to {MostLintner:0} Lintner")),
        ("pattern", new TextNode(@"^\s*[0-9]+([.][0-9]+)?\s*°?([lL][iI][nN][tT][nN][eE][rR]|[wW][kK])\s*$")), SchemaParts.Example("194 WK"));

    /// <summary>The most that a trial doses, g or mL in a litre: more is no longer a dose. Our choice.</summary>
    internal const double MostDose = 1000;

    /// <summary>A dose in a beer: <c>3 g/L</c>, <c>300 mg/L</c>, <c>0.5 mL/L</c>. A comma before the decimals is read too.</summary>
    public static ValueForm<TrialDose> Dose { get; } = new SpelledForm<TrialDose>(
        "dose.wrong",
        text => ReadDose(text) is { PerLitre: <= MostDose } dose ? (true, dose) : (false, default),
        dose => dose.Text,
        text => (Invariant($"\"{text}\"; write a dose as \"3 g/L\", \"300 mg/L\" or \"0.5 mL/L\", from 0 to {MostDose:0} in a litre"), Invariant($"0 to {MostDose:0} g/L or mL/L")),
        ("pattern", new TextNode(@"^\s*[0-9]+([.,][0-9]+)?\s*([mM]?[gG]|[mM][lL])/[lL]\s*$")), SchemaParts.Example("3 g/L"));

    /// <summary>Food energy in kilocalories, as labels print it: <c>110 kcal</c> or <c>460 kJ</c>. A comma before the decimals is read too.</summary>
    public static ValueForm<double> Energy { get; } = new SpelledForm<double>(
        "energy.wrong",
        text => ReadEnergy(text) is >= 0 and <= 100_000 and var energy ? (true, energy) : (false, 0),
        energy => Invariant($"{energy:0.######} kcal"),
        text => ($"{text}; must be a number from 0 with kcal or kJ", "a number from 0 with kcal or kJ"),
        ("pattern", new TextNode(@"^\s*([0-9]+([.,][0-9]*)?|[.,][0-9]+)\s*(kcal|kJ)\s*$")), SchemaParts.Example("110 kcal"));

    /// <summary>How far a hydrometer may be off: <c>± 0.001</c>, a difference of gravities, which has no unit; kept as typed.</summary>
    public static ValueForm<string> PlusMinus { get; } = Off("", text => double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double off) && off < MostOff);

    /// <summary>How far an instrument may be off: <c>± 0.3 L</c>; kept as typed.</summary>
    /// <typeparam name="T">What it measures.</typeparam>
    public static ValueForm<string> PlusMinusOf<T>()
        where T : struct, IQuantity<T> =>
        Off($" with {string.Join(", ", UnitTable.UnitsOf<T>())}", text => UnitTable.TryParse<T>(text, out _, out _));

    private static SpelledForm<string> Off(string units, Func<string, bool> isRead)
    {
        string form = units.Length == 0 ? Invariant($"± and a number below {MostOff}") : $"± and a number{units}";
        return new SpelledForm<string>(
            "instrument.wrong",
            text => (text.StartsWith('±') && isRead(text[1..].Trim()), text),
            text => text,
            text => ($"{text}; must be {form}", form),
            ("pattern", new TextNode("^±")));
    }

    private static double? ReadEnergy(string text) =>
        Pointed(text) is { } pointed ? NumberBefore.Unit(pointed, "kcal") ?? (NumberBefore.Unit(pointed, "kJ") / KilojoulesInKilocalorie) : null;

    private static TrialDose? ReadDose(string text) => Pointed(text) is not { } pointed ? null
        : NumberBefore.Unit(pointed, "mg/L") is { } milligrams ? new TrialDose(milligrams / 1000, false, text)
        : NumberBefore.Unit(pointed, "mL/L") is { } millilitres ? new TrialDose(millilitres, true, text)
        : NumberBefore.Unit(pointed, "g/L") is { } grams ? new TrialDose(grams, false, text)
        : null;

    /// <summary>With a point before the decimals. "1,355 kJ" is refused, as "1,355 kg" is: whether that is one or a thousand nobody can know.</summary>
    private static string? Pointed(string text)
    {
        int comma = text.IndexOf(',', StringComparison.Ordinal);
        bool isThousand = comma >= 0 && text[(comma + 1)..].TakeWhile(char.IsAsciiDigit).Count() == 3;
        return isThousand ? null : text.Replace(',', '.');
    }

    private static Price? ReadPrice(string text) => text.Trim().Split(' ') is [var sum, { Length: 3 } currency]
        && currency.All(char.IsAsciiLetterUpper) && sum.Length is > 0 and <= 14
        && decimal.TryParse(sum.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal value)
            ? new Price(value, currency, text)
            : null;

    private static double? ReadPower(string text) => NumberBefore.Unit(text.Replace("°", "", StringComparison.Ordinal), "Lintner")
        ?? (NumberBefore.Unit(text.Replace("°", "", StringComparison.Ordinal), "WK") is { } kolbach ? Ingredients.DiastaticPower.LintnerOf(kolbach) : null);
}
