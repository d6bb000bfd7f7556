using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readings;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Readings;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Forecast.Report.Readings;

/// <summary>One instrument in the brewer's hand, with how it may be off as parameters of the brew.</summary>
/// <param name="Kind">What sort it is.</param>
/// <param name="Called">Which of that sort; empty for the only one.</param>
/// <param name="Off">How it may be off.</param>
public sealed record KitInstrument(Instrument Kind, string Called, ReadingInstrument Off)
{
    private const string Prefix = "instrument.";

    /// <summary>As a brewer says it: "marks, dip stick or sight glass (kettle)".</summary>
    public string Said => Called.Length == 0 ? Kind.Name : $"{Kind.Name} ({Called})";

    /// <summary>The instrument of a reading: by its name, or the usual one. Marks belong to their vessel.</summary>
    public static KitInstrument Of(TakenReading taken)
    {
        Instrument kind = Instruments.Find(taken.Instrument ?? UsualFor(taken)) ?? throw new InvalidOperationException($"No instrument {taken.Instrument}.");
        string called = taken.Called ?? (kind.Id == "volumeMarks" ? VesselOf(taken.At) : "");
        InstrumentError error = taken.IsChecked == true ? kind.Checked : kind.Offset;
        return new(kind, called, new ReadingInstrument(
            Error(kind, called, "offset", error.InUnit, kind.Unit), Error(kind, called, "share", error.Share, "1")));
    }

    private static Parameter? Error(Instrument kind, string called, string what, double deviation, string unit) => deviation > 0
        ? new Parameter(
            $"{Prefix}{kind.Id}{(called.Length == 0 ? "" : $".{called.Replace('.', '-')}")}.{what}", 0,
            new Prior.Spread(new Width(Family.Normal, deviation, null, null, WidthEnds.Value), null, Tie.None), unit, kind.Provenance.Source, kind.Provenance.Status)
        : null;

    private static string UsualFor(TakenReading taken) =>
        taken.Gravity is not null ? "hydrometer" : taken.Volume is not null ? "volumeMarks" : taken.Ph is not null ? "phMeter" : "thermometerDigital";

    private static string VesselOf(ReadingPoint point) => point switch
    {
        <= ReadingPoint.Chill => "kettle",
        ReadingPoint.Package => "package",
        _ => "fermenter",
    };
}
