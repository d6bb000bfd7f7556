using System.Globalization;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Beer;
using Gylebook.Forecast.Report.Stages;
using Gylebook.Science.Conditioning;
using Spectre.Console;

namespace Gylebook.Terminal;

/// <summary>A forecast as tables for a terminal; the same, without colour or frames that need one, when piped.</summary>
internal static class ForecastText
{
    private const int MostLearned = 8, MostPairs = 3;

    /// <summary>Writes it.</summary>
    public static void Write(BrewForecast forecast)
    {
        IAnsiConsole console = TableConsole.Create();

        console.MarkupLineInterpolated($"[bold]{forecast.Recipe}[/] on the {forecast.Kit} kit");
        if (!forecast.CanBeBrewed)
        {
            WriteFindings(console, forecast);
        }

        if (forecast.Stages.Count > 0)
        {
            WriteRun(console, forecast);
        }

        TellReadings(console, forecast);
        Lines(console, "How sure", DoubtText.Lines(forecast));
        Lines(console, "Mash day", MashDayText.Heat(forecast));
        Lines(console, "Ions", MashDayText.Ions(forecast));
        Lines(console, "Allergens", [forecast.Allergens.StatementUs + " (US)", forecast.Allergens.StatementEu + " (EU)"]);
        Lines(console, "Cautions", forecast.Cautions.Select(c => $"{c.Where}: {c.Message} ({c.Source})"));
        if (forecast.CanBeBrewed)
        {
            WriteFindings(console, forecast);
        }

        if (forecast.Balance is { } balance)
        {
            console.WriteLine();
            console.WriteLine(Invariant($"Balance: {balance.MassIn:0.000} kg in, {balance.MassOut:0.000} kg out; relative error {balance.RelativeError:0.0e+0} ({balance.Worst})"));
        }
    }

    /// <summary>What readings say, the numbers as they are now, and what is odd.</summary>
    public static void WriteAfterReadings(BrewForecast forecast)
    {
        IAnsiConsole console = TableConsole.Create();
        TellReadings(console, forecast);
        console.Write(Headline(forecast));
        WriteFindings(console, forecast);
    }

    private static void TellReadings(IAnsiConsole console, BrewForecast forecast)
    {
        if (forecast.AfterReadings is not { } after)
        {
            return;
        }

        Lines(console, "Readings", after.Readings.Select(reading => $"{reading.Sentence}."));
        Lines(console, "Learned", [.. after.Learned.Take(MostLearned).Select(learned => $"{learned.Sentence}."), .. after.Pairs.Take(MostPairs).Select(pair => $"{pair.Sentence}.")]);
        Lines(console, "Ways on, the nearest to the plan first", after.Mends.Select(mend => $"{mend.Sentence}."));
    }

    private static void WriteFindings(IAnsiConsole console, BrewForecast forecast) =>
        Lines(console, "Findings", forecast.Findings.OrderByDescending(f => f.Severity).Select(FindingLines.Spoken));

    private static void WriteRun(IAnsiConsole console, BrewForecast forecast)
    {
        console.Write(Stages(forecast));
        console.Write(Losses(forecast));
        console.Write(Headline(forecast));
        WritePackage(console, forecast);
    }

    private static Table Stages(BrewForecast forecast)
    {
        bool split = forecast.Stages.Select(s => s.Portion).Distinct().Count() > 1;
        Table table = Ruled("Stage", "L at 20 °C", "L in the vessel", "°C", "gravity", "°P", "% ABV");
        foreach (StageRow row in forecast.Stages)
        {
            table.AddRow(Cells(
                split ? $"{Names.Said(row.Stage)}, {row.Portion}" : Names.Said(row.Stage),
                Number(row.LitresAt20C, "0.00"),
                Number(row.VesselLitres, "0.00"),
                row.TemperatureC is double celsius ? Number(celsius, "0.0") : "",
                Number(row.Gravity, "0.0000"),
                Number(row.ExtractPlato, "0.00"),
                row.AlcoholByVolume > 0 ? Number(row.AlcoholByVolume, "0.00") : ""));
        }

        return table;
    }

    private static Table Losses(BrewForecast forecast)
    {
        bool split = forecast.Losses.Select(l => l.Portion).Distinct().Count() > 1;
        Table table = Ruled("Lost", "at", "L at 20 °C", "kg in all", "kg extract");
        foreach (LossRow row in forecast.Losses)
        {
            table.AddRow(Cells(
                Names.Said(row.What), split ? $"{Names.Said(row.Place)}, {row.Portion}" : Names.Said(row.Place), Number(row.LitresAt20C, "0.00"), Number(row.Kilograms, "0.000"), Number(row.ExtractKg, "0.000")));
        }

        return table;
    }

    private static Table Headline(BrewForecast forecast)
    {
        bool drawn = forecast.HowSure is not null;
        Table table = drawn ? Ruled("The beer", "likely", "low to high", "") : Ruled("The beer", "likely", "");
        foreach (Headline headline in forecast.Headline)
        {
            if (headline.Band is not { } band)
            {
                continue;
            }

            string likely = Rounded(band.Likely), ends = $"{Rounded(band.Low)} to {Rounded(band.High)}";
            table.AddRow(drawn
                ? Cells(headline.Title, likely, band.Kind == BandKind.Point ? "" : ends, band.Kind == BandKind.Bounds ? $"{band.Unit}, the ends there can be" : band.Unit)
                : Cells(headline.Title, likely, band.Kind == BandKind.Bounds ? $"{band.Unit}, {ends}" : band.Unit));

            string Rounded(double value) => value.ToString(Invariant($"F{headline.Decimals}"), CultureInfo.InvariantCulture);
        }

        return table;
    }

    private static void WritePackage(IAnsiConsole console, BrewForecast forecast)
    {
        PackageOutlook package = forecast.Package!;
        string count = package.Count is int many ? Invariant($"{many} × ") : "";
        string priming = package.PrimingSugarGrams > 0 ? $", primed with {Number(package.PrimingSugarGrams, "0")} g of white sugar" : "";
        console.MarkupLineInterpolated($"Package: {count}{package.In}, {Number(package.Co2Volumes, "0.00")} volumes of gas{priming}");
        if (package.Keg is { } keg)
        {
            console.MarkupLineInterpolated($"Keg: {Number(keg.GaugeBar, "0.00")} bar ({Number(keg.GaugeBar / KegPressure.BarPerPsi, "0.0")} psi) on the gauge at {Number(keg.Celsius, "0.#")} °C, at this kit's height");
        }

        if (forecast.Pitch is { } pitch)
        {
            string has = pitch.CellsBillions is double cells ? $"; the recipe pitches {Number(cells, "0")}" : "";
            console.MarkupLineInterpolated($"Pitch: {Number(pitch.CellsNeededBillions, "0")} billion cells wanted{has}");
        }

        BeerText.Write(console, forecast);
    }

    /// <summary>A titled list, wrapped to the terminal; nothing for no lines.</summary>
    internal static void Lines(IAnsiConsole console, string title, IEnumerable<string> lines)
    {
        List<string> all = [.. lines];
        if (all.Count > 0)
        {
            console.WriteLine();
            console.MarkupLineInterpolated($"[bold]{title}[/]");
            int width = Math.Max(40, console.Profile.Width - 1);
            foreach (string line in all.SelectMany(text => WrappedText.Lines(text, width, first: 2, rest: 6)))
            {
                console.WriteLine(line);
            }
        }
    }

    /// <summary>A table ruled under its head: names to the left, numbers to the right.</summary>
    internal static Table Ruled(params string[] columns)
    {
        Table table = new Table().Border(TableBorder.Simple);
        for (int i = 0; i < columns.Length; i++)
        {
            TableColumn column = new(Markup.Escape(columns[i]));
            table.AddColumn(i == 0 || columns[i].Length == 0 || columns[i] == "at" ? column.LeftAligned() : column.RightAligned());
        }

        return table;
    }

    /// <summary>Cells of plain text.</summary>
    internal static Text[] Cells(params string[] texts) => [.. texts.Select(t => new Text(t))];

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
