using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Liquors;

namespace Gylebook.Terminal;

/// <summary>What a meter reading of the mash says, as lines for a terminal.</summary>
internal static class MashReadingText
{
    /// <summary>Writes it.</summary>
    public static void Write(MashReadingReport reading, MashMend? mend, Action<FormattableString> line)
    {
        line($"Meter: pH {reading.Meter.Ph:0.00} in a sample at {reading.Meter.Sample.Text}, {reading.PhAt20C:0.00} at 20 °C; forecast for that mash {reading.Forecast:0.00}, so its grist lies {reading.Shift.Likely:+0.00;-0.00;0.00} pH off");
        if (mend is not null)
        {
            string what = mend.Acid?.Name ?? mend.Salt!.Name;
            Band amount = mend.Amount;
            line($"Add to the mash now: {mend.Units:0.0} {amount.Unit} {what}, wanted {amount.Low:0.0} to {amount.High:0.0}; then pH {mend.Ph.Likely:0.00}, between {mend.Ph.Low:0.00} and {mend.Ph.High:0.00} at 20 °C");
        }

        if (reading.Malts.Count > 0)
        {
            line($"Learned, for \"malts\" of the next plan:");
        }

        foreach (LearnedMalt malt in reading.Malts)
        {
            line($"  {{ \"malt\": \"{malt.Malt.Name}\", \"distilledPh\": {malt.DistilledPh.Likely:0.###}, \"buffer\": {malt.Buffer:0.##} }}  (pH between {malt.DistilledPh.Low:0.00} and {malt.DistilledPh.High:0.00})");
        }
    }
}
