using System.Globalization;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Beer;
using Gylebook.Forecast.Report.Bitterness;
using Spectre.Console;

namespace Gylebook.Terminal;

/// <summary>Bitterness by hop, colour in the glass, and how the beer compares with a style.</summary>
internal static class BeerText
{
    /// <summary>Writes them.</summary>
    public static void Write(IAnsiConsole console, BrewForecast forecast)
    {
        foreach (HopBitterness hop in forecast.BitternessBy)
        {
            console.MarkupLineInterpolated($"{hop.Hop}, {hop.At}: {Number(hop.Ibu, "0.0")} IBU {Spoken(hop.Model)} ({Number(hop.OtherIbu, "0.0")} {Spoken(hop.OtherModel)})");
        }

        if (forecast.Appearance is { } seen)
        {
            string screen = seen.InGamut ? "" : ", the nearest a screen can show";
            console.MarkupLineInterpolated($"In {Number(seen.PathLengthCm, "0.#")} cm of glass: {seen.Hex}{screen}{(seen.IsLowerBound ? ", or darker" : "")}");
        }

        foreach (ColourByLaw other in forecast.ColourBy.Skip(1))
        {
            console.MarkupLineInterpolated($"Colour by the older straight lines: {Number(other.Srm, "0.0")} SRM");
        }

        if (forecast.StyleFit is { } fit)
        {
            console.WriteLine();
            console.MarkupLineInterpolated($"{fit.Sentence} ({fit.Source.Source}; {fit.Source.Status})");
            Table table = new Table().Border(TableBorder.Simple).AddColumns("", "this beer", "style");
            foreach (StyleRow row in fit.Rows)
            {
                string digits = "F" + row.Decimals.ToString(CultureInfo.InvariantCulture);
                table.AddRow(row.Spoken, $"{Number(row.Value, digits)} {row.Unit}", $"{Number(row.Low, digits)} to {Number(row.High, digits)}");
            }

            console.Write(table);
        }
    }

    private static string Spoken(string model) => model == "timeGravity" ? "by time and gravity" : "by isomerisation";

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
