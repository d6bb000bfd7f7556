namespace Gylebook.Forecast.Telling;

/// <summary>The keys of a mash schedule and of chilling.</summary>
internal static class ScheduleJson
{
    public static void Write(JsonPen pen, MashSchedule schedule)
    {
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
        });
        pen.Block("infusionStrike", schedule.InfusionStrike, strike =>
        {
            pen.Number("litres", strike.Litres, 3);
            pen.Number("celsius", strike.Celsius, 2);
        });
        pen.Number("strikeHeatMinutes", schedule.StrikeHeatMinutes, 2);
        pen.Number("boilHeatMinutes", schedule.BoilHeatMinutes, 2);
    }

    public static void Write(JsonPen pen, Chilling chilling)
    {
        pen.Number("fromCelsius", chilling.FromCelsius, 2);
        pen.Number("toCelsius", chilling.ToCelsius, 2);
        pen.Number("minutes", chilling.Minutes, 2);
        pen.Number("coolantLitres", chilling.CoolantLitres, 2);
    }
}
