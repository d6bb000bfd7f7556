using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Report.Doubt;

namespace Gylebook.Forecast.Json;

/// <summary>How sure a forecast is: causes of doubt, readings worth taking, and the band of every number there is.</summary>
internal static class DoubtJson
{
    /// <summary>Its keys.</summary>
    public static void Write(JsonPen pen, HowSure sure)
    {
        pen.Number("unfinishedShare", sure.Unfinished, 4);
        pen.List("causes", sure.Causes, doubt =>
        {
            pen.Text("number", doubt.Readout.Id);
            pen.Text("aside", doubt.Aside);
            pen.List("shares", doubt.Causes, cause =>
            {
                pen.Text("parameter", cause.Id);
                pen.Text("words", cause.Words);
                pen.Number("share", cause.Share, 4);
            });
        });
        pen.List("measureNext", sure.MeasureNext, advice =>
        {
            pen.Text("reading", advice.Reading.Id);
            pen.Text("words", advice.Words);
            pen.Text("instrument", advice.Reading.Instrument.Name);
            pen.Number("minutes", advice.Reading.Minutes, 1);
            pen.List("narrows", advice.Narrows, narrows =>
            {
                pen.Text("number", narrows.Readout.Id);
                pen.Number("share", narrows.Share, 3);
            });
        });
        pen.Block("bands", () =>
        {
            foreach (Readout readout in sure.Ensemble.Readouts)
            {
                ForecastJson.WriteBand(pen, readout.Id, sure.BandOf(readout));
            }
        });
    }
}
