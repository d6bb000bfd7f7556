using Gylebook.Engine.Readings;
using Gylebook.Forecast.Report.Readings;
using Gylebook.Recipes.Interchange;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Forecast.Json;

/// <summary>What readings say of a brew: each of them, the ways on, and what was learned. Null where none were given.</summary>
internal static class ReadingsJson
{
    /// <summary>Its keys.</summary>
    public static void Write(JsonPen pen, AfterReadings? after)
    {
        if (after is null)
        {
            pen.Text("readings", null);
            pen.Text("mends", null);
            pen.Text("learned", null);
            return;
        }

        pen.List("readings", after.Readings, reading => WriteReading(pen, reading));
        pen.List("mends", after.Mends, mend =>
        {
            pen.Text("words", mend.Words);
            pen.Number("minutes", mend.Minutes, 1);
            pen.Number("kilowattHours", mend.KilowattHours, 2);
            pen.Number("cost", (double?)mend.Cost?.Value, 2);
            pen.Text("currency", mend.Cost?.Currency);
            pen.Number("off", mend.Off, 3);
            pen.Block("lands", () =>
            {
                foreach (Landing landing in mend.Lands)
                {
                    ForecastJson.WriteBand(pen, landing.Readout.Id, landing.Band);
                }
            });
        });
        pen.Block("learned", () =>
        {
            pen.List("figures", after.Learned, learned => WriteFigure(pen, learned));
            pen.List("inseparable", after.Pairs, pair =>
            {
                pen.Text("one", pair.One);
                pen.Text("other", pair.Other);
                pen.Number("correlation", pair.Correlation, 3);
                pen.Text("partedBy", pair.Parting);
            });
        });
    }

    private static void WriteReading(JsonPen pen, ReadingOutcome outcome)
    {
        pen.Number("number", outcome.Reading.Number, 0);
        pen.Text("at", ReadingsFile.Word(outcome.Reading.Taken.At));
        pen.Text("reads", outcome.Reading.Meant.Readout.Id);
        pen.Text("instrument", outcome.Reading.Instrument.Kind.Id);
        pen.Text("unit", outcome.Reading.Meant.Readout.Unit);
        pen.Number("value", outcome.Reading.Meant.Value, 5);
        pen.Number("forecast", outcome.Forecast, 5);
        pen.Number("deviationsOff", outcome.Gate.Off, 3);
        pen.Text("taken", outcome.Gate.Trust switch { ReadingTrust.AsItIs => "asItIs", ReadingTrust.Halfway => "halfway", _ => "setAside" });
        pen.Number("now", outcome.Now, 5);
        pen.Number("instrumentOff", outcome.InstrumentOff, 5);
    }

    private static void WriteFigure(JsonPen pen, LearnedFigure learned)
    {
        pen.Text("parameter", learned.Figure.Parameter.Id);
        pen.Text("words", learned.Words);
        pen.Text("unit", learned.Figure.Parameter.Unit);
        WriteEnds(pen, "before", learned.Figure.Before);
        WriteEnds(pen, "after", learned.Figure.After);
        pen.Number("narrower", learned.Figure.Narrower, 3);
    }

    private static void WriteEnds(JsonPen pen, string name, Quantiles band) => pen.Block(name, () =>
    {
        pen.Number("low", band.Low, 5);
        pen.Number("middle", band.Middle, 5);
        pen.Number("high", band.High, 5);
    });
}
