using System.Globalization;
using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange.OpenFormats.Tables;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.BeerXml;

/// <summary>The quantities of BeerXML: a number in a fixed unit.</summary>
internal static class BeerXmlLeaves
{
    public static OpenValue<Entered<Mass>> Kilograms { get; } = new Fixed<Mass>("kg") { Small = ("g", 1000) };

    public static OpenValue<Entered<VolumeAt20C>> Litres { get; } = new Fixed<VolumeAt20C>("L") { Small = ("mL", 1000) };

    public static OpenValue<Entered<Temperature>> Celsius { get; } = new Fixed<Temperature>("°C");

    public static OpenValue<Entered<Duration>> Minutes { get; } = new Fixed<Duration>("min") { Large = ("d", 1440) };

    public static OpenValue<Entered<Duration>> Days { get; } = new Fixed<Duration>("d");

    public static OpenValue<Entered<Fraction>> Percent { get; } = new Fixed<Fraction>("%");

    /// <summary>A share that is never so small: 0.75 means 75 %.</summary>
    public static OpenValue<Entered<Fraction>> WholePercent { get; } = new Fixed<Fraction>("%") { Mend = OfFraction };

    public static OpenValue<Entered<MaltColour>> Lovibond { get; } = new Fixed<MaltColour>("Lovibond");

    public static OpenValue<Entered<Concentration>> Ppm { get; } = new Fixed<Concentration>("ppm");

    public static OpenValue<DiastaticPower> Lintner { get; } = new LintnerValue();

    private static double OfFraction(double number, OpenCursor at)
    {
        if (number is <= 0 or > 1)
        {
            return number;
        }

        at.Repair($"{OpenUnits.Digits(number)} %; nothing is so little, so it is read as {OpenUnits.Digits(number * 100)} %");
        return number * 100;
    }

    private static double? NumberIn(Node node, OpenCursor at, string unit)
    {
        double? number = OpenLeaves.NumberIn(node, at);
        if (number is null && node is TextNode { Text: var text } && text.Trim().Split(' ', 2) is [var digits, { Length: > 0 } rest])
        {
            number = OpenLeaves.NumberIn(new TextNode(digits), at);
            if (number is not null)
            {
                at.Repair($"\"{FindingList.Shorten(text)}\"; a number in {unit} is wanted, and \"{FindingList.Shorten(rest)}\" is not looked at");
            }
        }

        return number;
    }

    private sealed class Fixed<T>(string unit) : OpenValue<Entered<T>>
        where T : struct, IQuantity<T>
    {
        /// <summary>The unit people say for less than one, and how many of it that is; null for none.</summary>
        public (string Unit, int Times)? Small { get; init; }

        /// <summary>The unit people say for whole numbers of it, and how many of the fixed one it is; null for none.</summary>
        public (string Unit, int Times)? Large { get; init; }

        /// <summary>What is plainly meant by a number; null where it is taken as it stands.</summary>
        public Func<double, OpenCursor, double>? Mend { get; init; }

        public override bool TryRead(Node node, OpenCursor at, out Entered<T> value)
        {
            value = default;
            if (NumberIn(node, at, unit) is not { } number)
            {
                return IsNot(node, at, $"a number, in {unit}");
            }

            number = Mend?.Invoke(number, at) ?? number;
            if (OpenUnits.TryMake(Text(number), out value, out string problem))
            {
                return true;
            }

            at.Leave($"{OpenWords.Quoted(node)}; {problem.TrimEnd('.')}");
            return false;
        }

        public override Node Write(Entered<T> value, OpenCursor at) =>
            new TextNode(OpenUnits.In(value.Value, unit).ToString("0.############", CultureInfo.InvariantCulture));

        private string Text(double number) =>
            Small is { } small && number is > 0 and < 1 && decimal.TryParse(OpenUnits.Digits(number), CultureInfo.InvariantCulture, out decimal exact) ? $"{OpenUnits.Digits((double)(exact * small.Times))} {small.Unit}"
            : Large is { } large && number > 0 && number % large.Times == 0 ? $"{OpenUnits.Digits(number / large.Times)} {large.Unit}"
            : $"{OpenUnits.Digits(number)} {unit}";
    }

    private sealed class LintnerValue : OpenValue<DiastaticPower>
    {
        public override bool TryRead(Node node, OpenCursor at, out DiastaticPower value)
        {
            double? number = NumberIn(node, at, "Lintner");
            value = new DiastaticPower(number ?? 0, $"{OpenUnits.Digits(number ?? 0)} Lintner");
            return number is >= 0 and <= Spelled.MostLintner || IsNot(node, at, Invariant($"a number from 0 to {Spelled.MostLintner:0}, in Lintner"));
        }

        public override Node Write(DiastaticPower value, OpenCursor at) => new TextNode(OpenUnits.Digits(Math.Round(value.Lintner, 3)));
    }
}
