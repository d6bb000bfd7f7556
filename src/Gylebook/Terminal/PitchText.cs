using System.Globalization;
using Gylebook.Forecast;
using Gylebook.Forecast.Report.Pitching;
using Gylebook.Science.Fermenting;

namespace Gylebook.Terminal;

/// <summary>How much yeast, in lines.</summary>
internal static class PitchText
{
    /// <summary>Writes it.</summary>
    public static void Write(PitchAdvice? pitch, IEnumerable<Caution> cautions)
    {
        if (pitch is null)
        {
            Console.WriteLine("No yeast is pitched.");
            return;
        }

        Console.WriteLine($"{string.Join(", ", pitch.Yeasts)}: {Number(pitch.CellsNeededBillions, "0")} billion cells wanted, {Number(pitch.Rate, "0.##")} million per mL and °P");
        Console.WriteLine(pitch.CellsLowBillions is double low
            ? $"Pitched: {Number(low, "0")} to {Number(pitch.CellsHighBillions!.Value, "0")} billion living cells"
            : "Pitched: the recipe does not say how many cells");
        Console.WriteLine($"That is {Number(pitch.DryYeastGrams, "0.0")} g of dry yeast, or {Number(pitch.SlurryMillilitres, "0")} mL of settled slurry");
        if (pitch.OfThisSlurryMillilitres is var (mild, harsh))
        {
            Console.WriteLine($"Of this slurry: {(Math.Round(mild) == Math.Round(harsh) ? Number(mild, "0") : $"{Number(mild, "0")} to {Number(harsh, "0")}")} mL, by what of it lives");
        }

        Console.WriteLine(pitch.OxygenMgPerL is double oxygen ? $"Oxygen: {Number(oxygen, "0")} mg/L" : "Oxygen: not needed by dry yeast pitched for the first time");
        foreach (StarterAdvice starter in pitch.Starters)
        {
            WriteStarter(starter);
        }

        foreach (Caution caution in cautions)
        {
            Console.WriteLine($"{Words.Of(caution.Severity)}, {caution.Where}: {CommandLine.OneLine(caution.Message)} ({caution.Source})");
        }
    }

    private static void WriteStarter(StarterAdvice starter)
    {
        string how = starter.Handling == StarterHandling.Stirred ? "Stirred" : "Still";
        Console.WriteLine($"{how} starter{(starter.Reaches ? "" : ", which does not reach it")} (± 45 %):");
        foreach (StarterAdviceStep step in starter.Steps)
        {
            Console.WriteLine($"  {Number(step.Litres, "0.0")} L with {Number(step.DryExtractGrams, "0")} g of dry malt extract: {Number(step.StartBillions, "0")} to {Number(step.EndBillions, "0")} billion cells");
        }
    }

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
