using System.Globalization;
using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Recipes.Interchange.OpenFormats.Tables;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.BeerJson;

/// <summary>The quantities of BeerJSON: an object of a unit and a value.</summary>
internal static class BeerJsonLeaves
{
    /// <summary>The parts of US measures that our own files have not: 3 teaspoons are a tablespoon, 2 tablespoons a fluid ounce, 8 of these a cup.</summary>
    private const double FluidOuncesInTeaspoon = 1.0 / 6, FluidOuncesInTablespoon = 0.5, FluidOuncesInCup = 8;

    /// <summary>EBC is 25 and SRM 12.7 times the same absorbance (EBC 9.6, ASBC Beer-10).</summary>
    private const double EbcInSrm = 25 / 12.7;

    /// <summary>Litres in a cubic foot over kilograms in a pound: 28.316846592 and 0.45359237, both exactly.</summary>
    private const double LitresPerKilogramInCubicFeetPerPound = 28.316846592 / 0.45359237;

    public static OpenValue<Entered<VolumeAt20C>> Volume { get; } = Of<VolumeAt20C>(
        new("l", "L"), new("ml", "mL"), new("gal", "US gal"), new("qt", "US qt"), new("pt", "US pt"), new("floz", "US fl oz"), new("bbl", "US bbl"),
        new("igal", "imp gal"), new("iqt", "imp qt"), new("ipt", "imp pt"), new("ifloz", "imp fl oz"), new("ibbl", "imp bbl"),
        new("tsp", "US fl oz", FluidOuncesInTeaspoon), new("tbsp", "US fl oz", FluidOuncesInTablespoon), new("cup", "US fl oz", FluidOuncesInCup));

    public static OpenValue<Entered<Mass>> Mass { get; } = Of<Mass>(new("kg", "kg"), new("g", "g"), new("mg", "mg"), new("lb", "lb"), new("oz", "oz"));

    public static OpenValue<Entered<Temperature>> Temperature { get; } = Of<Temperature>(new("C", "°C"), new("F", "°F"));

    public static OpenValue<Entered<Duration>> Time { get; } =
        new Measured<Duration>([new("min", "min"), new("sec", "s"), new("hr", "h"), new("day", "d"), new("week", "week")]) { Whole = new("sec", "s") };

    public static OpenValue<Entered<Fraction>> Percent { get; } = Of<Fraction>(new OpenUnit("%", "%"));

    public static OpenValue<Entered<MaltColour>> MaltColour { get; } = Of<MaltColour>(new("EBC", "EBC"), new("Lovi", "Lovibond"), new("SRM", "EBC", EbcInSrm));

    public static OpenValue<Entered<BeerColour>> BeerColour { get; } = Of<BeerColour>(new("EBC", "EBC"), new("SRM", "SRM"), new("Lovi", "Lovibond"));

    public static OpenValue<Entered<SpecificGravity>> Gravity { get; } =
        new Measured<SpecificGravity>([new("sg", "SG"), new("plato", "°P"), new("brix", "Brix")]) { Mend = OpenMends.Gravity };

    public static OpenValue<Entered<Bitterness>> Bitterness { get; } = Of<Bitterness>(new OpenUnit("IBUs", "IBU"));

    public static OpenValue<Entered<Concentration>> Concentration { get; } = Of<Concentration>(new("ppm", "ppm"), new("mg/l", "mg/L"), new("ppb", "mg/L", 0.001));

    public static OpenValue<Entered<SpecificVolume>> SpecificVolume { get; } = Of<SpecificVolume>(
        new("l/kg", "L/kg"), new("qt/lb", "US qt/lb"), new("gal/lb", "US gal/lb"), new("l/g", "L/kg", 1000), new("m^3/kg", "L/kg", 1000),
        new("gal/oz", "US gal/lb", 16), new("floz/oz", "US gal/lb", 16.0 / 128), new("ft^3/lb", "L/kg", LitresPerKilogramInCubicFeetPerPound));

    public static OpenValue<double> Ph { get; } = new Counted(("pH", 1));

    /// <summary>kJ/(kg K); a calorie is 4.184 J (thermochemical, exactly), and a BTU/(lb °F) the same as a calorie to four digits.</summary>
    public static OpenValue<double> SpecificHeat { get; } = new Counted(("J/(kg K)", 0.001), ("Cal/(g C)", 4.184), ("BTU/(lb F)", 4.184));

    public static OpenValue<DiastaticPower> Power { get; } = new PowerValue();

    public static OpenValue<OpenAmount> Amount { get; } = new AmountValue();

    /// <summary>A range of shares.</summary>
    public static OpenValue<OpenRange<Fraction>> PercentRange { get; } = new OpenForm<OpenRange<Fraction>>(new OpenRange<Fraction>(null, null))
        .Row("minimum", "low end", Percent, r => r.Low, (r, v) => r with { Low = v })
        .Row("maximum", "high end", Percent, r => r.High, (r, v) => r with { High = v });

    private static Measured<T> Of<T>(params OpenUnit[] units)
        where T : struct, IQuantity<T> => new(units);

    /// <summary>The unit and the number of an object that has just these; null, and told, for anything else.</summary>
    private static (string Unit, double Number)? Parts(Node node, OpenCursor at, string wanted)
    {
        if (node is ObjectNode pairs && pairs["unit"] is TextNode unit && pairs["value"] is { } value && OpenLeaves.NumberIn(value, at) is { } number)
        {
            foreach ((string key, Node other) in pairs.Pairs.Where(pair => pair.Key is not ("unit" or "value")))
            {
                at.At(key).Leave($"{OpenWords.Quoted(other)}; no key of the standard");
            }

            return (unit.Text, number);
        }

        at.Leave($"{OpenWords.Quoted(node)}; must be an object with a \"value\", a number, and a \"unit\": {wanted}");
        return null;
    }

    private static ObjectNode Measure(string unit, decimal number) =>
        Node.Object(("unit", new TextNode(unit)), ("value", new BareNode(number.ToString(CultureInfo.InvariantCulture))));

    private static string Known(IEnumerable<string> units) => string.Join(", ", units);

    private sealed class Measured<T>(IReadOnlyList<OpenUnit> units) : OpenValue<Entered<T>>
        where T : struct, IQuantity<T>
    {
        /// <summary>The unit for a number that is not whole, where the format wants whole ones; null where it takes any.</summary>
        public OpenUnit? Whole { get; init; }

        /// <summary>What is plainly meant by a number; null where it is taken as it stands.</summary>
        public Func<double, OpenUnit, OpenCursor, double>? Mend { get; init; }

        /// <summary>Whether the unit is one of these.</summary>
        public bool Has(string unit) => units.Any(one => string.Equals(one.Theirs, unit, StringComparison.OrdinalIgnoreCase));

        public override bool TryRead(Node node, OpenCursor at, out Entered<T> value)
        {
            value = default;
            if (Parts(node, at, Known(units.Select(unit => unit.Theirs))) is not { } parts)
            {
                return false;
            }

            if (units.FirstOrDefault(one => string.Equals(one.Theirs, parts.Unit, StringComparison.OrdinalIgnoreCase)) is not { } unit)
            {
                at.Leave($"{OpenWords.Quoted(node)}; the unit must be one of {Known(units.Select(one => one.Theirs))}");
                return false;
            }

            double number = Mend?.Invoke(parts.Number, unit, at) ?? parts.Number;
            string digits = unit.Times == 1 && number == parts.Number && (node as ObjectNode)?["value"] is BareNode bare ? bare.Written : OpenUnits.Digits(number * unit.Times);
            if (!OpenUnits.TryMake(digits, unit.Ours, out value, out string problem))
            {
                at.Leave($"{OpenWords.Quoted(node)}; {problem.TrimEnd('.')}");
                return false;
            }

            if (unit.Times != 1)
            {
                at.Convert($"{OpenWords.Quoted(node)} is {value.Text}");
            }

            return true;
        }

        public override Node Write(Entered<T> value, OpenCursor at)
        {
            (decimal number, OpenUnit unit) = OpenUnits.Split(value, units, out bool isAsTyped);
            if (Whole is not null && number != decimal.Truncate(number))
            {
                (number, unit, isAsTyped) = (OpenUnits.In(value.Value, Whole.Ours), Whole, false);
                number = decimal.Round(number);
            }

            if (!isAsTyped && value.Text.Length > 0)
            {
                at.Convert($"{value.Text} is written as {number.ToString("0.######", CultureInfo.InvariantCulture)} {unit.Theirs}");
            }

            return Measure(unit.Theirs, number);
        }
    }

    /// <summary>A number in units that we keep as a bare number.</summary>
    private sealed class Counted(params (string Unit, double Times)[] units) : OpenValue<double>
    {
        public override bool TryRead(Node node, OpenCursor at, out double value)
        {
            value = 0;
            if (Parts(node, at, Known(units.Select(unit => unit.Unit))) is not { } parts)
            {
                return false;
            }

            foreach ((string unit, double times) in units)
            {
                if (string.Equals(unit, parts.Unit, StringComparison.OrdinalIgnoreCase))
                {
                    value = parts.Number * times;
                    return true;
                }
            }

            return IsNot(node, at, $"in {Known(units.Select(unit => unit.Unit))}");
        }

        public override Node Write(double value, OpenCursor at) => Measure(units[0].Unit, (decimal)(value / units[0].Times));
    }

    private sealed class PowerValue : OpenValue<DiastaticPower>
    {
        public override bool TryRead(Node node, OpenCursor at, out DiastaticPower value)
        {
            value = default;
            if (Parts(node, at, "Lintner, WK") is not { } parts)
            {
                return false;
            }

            bool isKolbach = string.Equals(parts.Unit, "WK", StringComparison.OrdinalIgnoreCase);
            double lintner = isKolbach ? DiastaticPower.LintnerOf(parts.Number) : parts.Number;
            value = new DiastaticPower(lintner, $"{OpenUnits.Digits(parts.Number)} {(isKolbach ? "WK" : "Lintner")}");
            return (lintner is >= 0 and <= Spelled.MostLintner && parts.Number >= 0) || IsNot(node, at, Invariant($"from 0 to {Spelled.MostLintner:0} Lintner"));
        }

        public override Node Write(DiastaticPower value, OpenCursor at) => Measure("Lintner", decimal.Round((decimal)value.Lintner, 6));
    }

    /// <summary>A mass, a volume or a count; which is meant shows in the unit.</summary>
    private sealed class AmountValue : OpenValue<OpenAmount>
    {
        private static readonly string[] Counts = ["1", "unit", "each", "dimensionless", "pkg"];

        public override bool TryRead(Node node, OpenCursor at, out OpenAmount value)
        {
            value = new OpenAmount(null, null);
            string? unit = ((node as ObjectNode)?["unit"] as TextNode)?.Text;
            if (unit is not null && ((Measured<VolumeAt20C>)Volume).Has(unit))
            {
                bool isVolume = Volume.TryRead(node, at, out Entered<VolumeAt20C> volume);
                value = new OpenAmount(new Amount(null, volume), null);
                return isVolume;
            }

            if (unit is not null && Counts.Contains(unit, StringComparer.OrdinalIgnoreCase))
            {
                bool isCount = Parts(node, at, "") is { Number: >= 0 };
                value = new OpenAmount(null, Parts(node, at with { Travels = new() }, "")?.Number ?? 0);
                return isCount || IsNot(node, at, "0 or more");
            }

            bool isMass = Mass.TryRead(node, at, out Entered<Mass> mass);
            value = new OpenAmount(new Amount(mass, null), null);
            return isMass;
        }

        public override Node Write(OpenAmount value, OpenCursor at) => value switch
        {
            { Weighed: { Mass: { } mass } } => Mass.Write(mass, at),
            { Weighed: { Volume: { } volume } } => Volume.Write(volume, at),
            _ => Measure("each", (decimal)(value.Count ?? 0)),
        };
    }
}
