using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Foods;
using Gylebook.Pictures;
using Gylebook.Science.Foods.Doses;

namespace Gylebook.Web.Features.Foods.Labels;

/// <summary>What a food's label means and does, in a brewer's words.</summary>
internal static class AnswerWords
{
    private const double Per100 = 100;

    /// <summary>The likely figure with its unit, and the ends where somebody knows them.</summary>
    public static (string Likely, string? Ends) Told(Band band, Shown shown)
    {
        (double factor, string unit) = band.Unit == "1" ? (Per100, "%") : (1, band.Unit);
        string likely = $"{Number(band.Likely * factor, shown)}{Shown.Space}{unit}";
        return (likely, band.Kind == BandKind.Point ? null : $"{Number(band.Low * factor, shown)} to {Number(band.High * factor, shown)}");
    }

    /// <summary>A dose against the usual.</summary>
    public static string Usual(DoseGuide guide, Shown shown)
    {
        string dose = $"{Number(guide.GramsPerLitre, shown)}{Shown.Space}g/L";
        string range = guide is { Low: { } low, High: { } high } ? $"{Number(low, shown)} to {Number(high, shown)}{Shown.Space}g/L" : "";
        return guide.Verdict switch
        {
            DoseVerdict.Unknown => $"{dose}. Nobody has told a usual dose of its kind.",
            DoseVerdict.Below => $"{dose}: less than the usual {range} ({DoseGuide.Source}). It may not be tasted.",
            DoseVerdict.Above => $"{dose}: more than the usual {range} ({DoseGuide.Source}).",
            _ => $"{dose}: as usual, {range} ({DoseGuide.Source}).",
        };
    }

    /// <summary>Fat as a light, in words; what must be told stands with the cautions.</summary>
    public static string Light(FatAdvice advice) => $"{advice.Light}. {(advice.Cautions.Any() ? "See below, at the pour." : $"{advice.Message} ({advice.Source})")}";

    /// <summary>Three figures that count are more than anyone knows of a food.</summary>
    public static string Number(double value, Shown shown) => shown.Number(value, Math.Abs(value) switch { >= 100 => 0, >= 10 => 1, >= 1 => 2, 0 => 0, _ => 3 });
}
