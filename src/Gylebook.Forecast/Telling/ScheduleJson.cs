namespace Gylebook.Forecast.Telling;

/// <summary>The keys of a mash schedule and of chilling.</summary>
internal static class ScheduleJson
{
    public static void Write(JsonPen pen, MashSchedule schedule)
    {
        pen.Number("strikeLitres", schedule.StrikeLitres, 3);
        pen.Number("strikeCelsius", schedule.StrikeCelsius, 2);
        pen.List("rests", schedule.Rests, rest =>
        {
            pen.Number("celsius", rest.Celsius, 2);
            pen.Number("minutes", rest.Minutes, 2);
            pen.Number("endCelsius", rest.EndCelsius, 2);
            pen.Number("infusionLitres", rest.InfusionLitres, 3);
            pen.Number("infusionCelsius", rest.InfusionCelsius, 2);
            pen.Number("heatMinutes", rest.HeatMinutes, 2);
            pen.Number("decoctionShare", rest.DecoctionShare, 4);
            pen.Number("decoctionKg", rest.DecoctionKilograms, 3);
            pen.Number("alphaLeft", rest.AlphaLeft, 4);
            pen.Number("betaLeft", rest.BetaLeft, 4);
        });
        pen.Block("infusionStrike", schedule.InfusionStrike, strike =>
        {
            pen.Number("litres", strike.Litres, 3);
            pen.Number("celsius", strike.Celsius, 2);
        });
        pen.Number("strikeHeatMinutes", schedule.StrikeHeatMinutes, 2);
        pen.Number("boilHeatMinutes", schedule.BoilHeatMinutes, 2);
        pen.Block("rinse", schedule.Rinse, rinse =>
        {
            pen.Text("method", Words.Of(rinse.Method));
            pen.Number("litres", rinse.Litres, 3);
            pen.Number("celsius", rinse.Celsius, 2);
        });
    }

    public static void Write(JsonPen pen, Chilling chilling)
    {
        pen.Text("kind", chilling.Kind);
        pen.Number("fromCelsius", chilling.FromCelsius, 2);
        pen.Number("toCelsius", chilling.ToCelsius, 2);
        pen.Number("coolerCelsius", chilling.CoolerCelsius, 2);
        pen.Number("minutes", chilling.Minutes, 2);
        pen.Number("coolantLitres", chilling.CoolantLitres, 2);
        pen.Number("coolantOutCelsius", chilling.CoolantOutCelsius, 2);
        pen.Number("wortLitresPerMinute", chilling.WortLitresPerMinute, 3);
        pen.Number("wortOutCelsius", chilling.WortOutCelsius, 2);
        pen.Texts("needs", chilling.Needs);
    }
}
