namespace Gylebook.Forecast.Telling;

/// <summary>Writes what is told of the beer itself: bitterness, colour, style.</summary>
internal static class BeerJson
{
    internal static void WriteHop(JsonPen pen, HopBitterness hop)
    {
        pen.Text("hop", hop.Hop);
        pen.Text("at", hop.At);
        pen.Text("model", hop.Model);
        pen.Number("ibu", hop.Ibu, 2);
        pen.Text("otherModel", hop.OtherModel);
        pen.Number("otherIbu", hop.OtherIbu, 2);
        pen.Number("alphaPercent", hop.AlphaPercent, 3);
    }

    internal static void WriteColour(JsonPen pen, ColourByLaw colour)
    {
        pen.Text("law", colour.Law);
        pen.Number("srm", colour.Srm, 2);
        pen.Flag("withinRange", colour.WithinRange);
    }

    internal static void WriteAppearance(JsonPen pen, Appearance seen)
    {
        pen.Text("hex", seen.Hex);
        pen.Number("pathLengthCm", seen.PathLengthCm, 3);
        pen.Text("illuminant", Appearance.Illuminant);
        pen.Text("observer", Appearance.Observer);
        pen.Flag("inGamut", seen.InGamut);
        pen.Flag("lowerBound", seen.IsLowerBound);
    }

    internal static void WriteStyle(JsonPen pen, StyleFit fit)
    {
        pen.Text("style", fit.Style);
        pen.Text("edition", fit.Edition);
        pen.Text("source", fit.Source.Source);
        pen.Text("status", fit.Source.Status);
        pen.Text("sentence", fit.Sentence);
        pen.List("rows", fit.Rows, row =>
        {
            pen.Text("name", row.Name);
            pen.Number("value", row.Value, row.Decimals);
            pen.Number("low", row.Low, 3);
            pen.Number("high", row.High, 3);
            pen.Text("unit", row.Unit);
            pen.Text("place", row.Place.ToString().ToLowerInvariant());
        });
    }
}
