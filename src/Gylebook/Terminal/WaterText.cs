using Gylebook.Forecast;
using Gylebook.Forecast.Liquors;
using Gylebook.Recipes;
using Gylebook.Science.Water;

namespace Gylebook.Terminal;

/// <summary>What came of a water plan, as lines for a terminal.</summary>
internal static class WaterText
{
    /// <summary>Writes it.</summary>
    public static void Write(WaterOutcome outcome, IReadOnlyList<Finding> findings)
    {
        Line($"{outcome.Name}");
        Line($"Source: pH {outcome.Source.Ph:0.00}, alkalinity {outcome.Source.Ions.AlkalinityMilliequivalents / HardnessUnits.MilligramsCalciumCarbonate:0} mg/L CaCO3, charge balance {outcome.ChargeBalancePercent:+0.0;-0.0;0.0} %");
        Doses("mash", outcome.Mash);
        Doses("sparge", outcome.Sparge);
        Doses("kettle", outcome.Kettle);
        Doses("package", outcome.Package);
        Ions(outcome);
        if (outcome.MashPh is { } ph)
        {
            Line($"Mash pH {ph.Likely:0.00}, between {ph.Low:0.00} and {ph.High:0.00}, sample cooled to 20 °C");
        }

        if (outcome.MashReading is { } reading)
        {
            MashReadingText.Write(reading, outcome.Mend, Line);
        }

        if (outcome.Wort is { } wort)
        {
            Line($"Wort from pH {wort.From.Likely:0.00} ({(wort.Measured ? "measured" : "the mash's")}) to {wort.To:0.00} at 20 °C: {wort.Units:0.0} {wort.Amount.Unit} of acid into the kettle, between {wort.Amount.Low:0.0} and {wort.Amount.High:0.0}");
        }

        if (outcome.Sparge.Ph is double sparge)
        {
            Line($"Sparge liquor pH {sparge:0.00} at 20 °C");
        }

        foreach (Caution caution in outcome.Cautions)
        {
            Line($"Caution, {caution.Where}: {caution.Message} ({caution.Source})");
        }

        foreach (Finding finding in findings)
        {
            Line($"{FindingLines.Spoken(finding)}");
        }
    }

    private static void Doses(string place, TreatedLiquor liquor)
    {
        string[] parts =
        [
            .. liquor.ShareDistilled > 0 ? [Invariant($"{liquor.ShareDistilled * liquor.Litres:0.0} L of it distilled water")] : Array.Empty<string>(),
            .. liquor.Salts.Select(dose => Invariant($"{dose.Grams:0.0} g {dose.Salt.Name}")),
            .. liquor.Acids.Select(dose => Invariant($"{dose.Units:0.0} {dose.Acid.Acid.UnitSymbol} {dose.Acid.Name}")),
        ];
        if (liquor.Litres > 0 && (place != "kettle" || parts.Length > 0))
        {
            Line($"Into the {place} ({liquor.Litres:0.0} L): {(parts.Length > 0 ? string.Join(", ", parts) : "nothing")}");
        }
    }

    private static void Ions(WaterOutcome outcome)
    {
        Line($"{"mg/L",-12}{"source",10}{"mash",10}{"sparge",10}{"kettle",10}");
        foreach (Ion ion in Science.Water.Ions.All)
        {
            string sparge = outcome.Sparge.Litres > 0 ? Invariant($"{outcome.Sparge.Ions[ion]:0}") : "";
            Line($"{Words.Of(ion),-12}{Invariant($"{outcome.Source.Ions[ion]:0}"),10}{Invariant($"{outcome.Mash.Ions[ion]:0}"),10}{sparge,10}{Invariant($"{outcome.Kettle.Ions[ion]:0}"),10}");
        }
    }

    private static void Line(FormattableString text) => Console.WriteLine(CommandLine.OneLine(Invariant(text)));
}
