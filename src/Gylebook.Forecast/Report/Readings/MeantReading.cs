using Gylebook.Engine.Readings;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Readings;
using Gylebook.Science.Liquids;
using Gylebook.Science.Mashing;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Report.Readings;

/// <summary>A reading as it was typed, and what it means to the brew.</summary>
/// <param name="Number">Its place in the list, from 0.</param>
/// <param name="Taken">As typed.</param>
/// <param name="Instrument">With what it was read.</param>
/// <param name="Meant">Which number it is of, and the value brought to what that number means.</param>
public sealed record MeantReading(int Number, TakenReading Taken, KitInstrument Instrument, Reading Meant)
{
    /// <summary>Where findings point to.</summary>
    public string Path => PathOf(Number, KeyOf(Taken));

    /// <summary>As people say it: "litres, knock-out".</summary>
    public string Said => $"{Meant.Readout.Title}, {ReadingsFile.Word(Taken.At)}";

    internal static string PathOf(int number, string key) => Invariant($"readings.readings[{number}].{key}");

    internal static string KeyOf(TakenReading taken) =>
        taken.Gravity is not null ? "gravity" : taken.Volume is not null ? "volume" : taken.Ph is not null ? "ph" : "temperature";
}

/// <summary>Finds out what readings mean: the stage, the portion, the temperature, the sample.</summary>
/// <param name="brew">The brew as planned.</param>
/// <param name="likely">Its likely run.</param>
/// <param name="findings">All that is odd, and what was done about it.</param>
internal sealed class ReadingMeaning(BrewPlan brew, RunOutcome likely, List<Finding> findings)
{
    private const double Room = 20, WarmSample = 30;

    /// <summary>The readings that can be set against the brew, in the order of the run.</summary>
    public IReadOnlyList<MeantReading> Of(BrewReadings readings)
    {
        List<MeantReading> meant = [];
        ReadingPoint latest = default;
        for (int i = 0; i < readings.Readings.Count; i++)
        {
            TakenReading taken = readings.Readings[i];
            if (taken.At < latest)
            {
                Add("reading.outOfOrder", Severity.Warning, i, "at", $"{ReadingsFile.Word(taken.At)}; it stands behind a reading at {ReadingsFile.Word(latest)}; it was taken as one of its own stage", ReadingsFile.Word(taken.At), ReadingsFile.Word(latest));
            }

            latest = taken.At > latest ? taken.At : latest;
            if (Of(i, taken) is { } reading)
            {
                meant.Add(reading);
            }
        }

        return [.. meant.OrderBy(reading => reading.Taken.At)];
    }

    private MeantReading? Of(int number, TakenReading taken)
    {
        if (PlaceOf(number, taken) is not (Stage stage, int portion))
        {
            return null;
        }

        KitInstrument instrument = KitInstrument.Of(taken);
        StageReadouts its = StageReadouts.Of(stage, portion);
        (Readout readout, double? value) =
            taken.Gravity is not null ? GravityOf(number, taken, instrument, its)
            : taken.Volume is not null ? (stage == Stage.Package ? its.Litres : its.LitresWithSolids, LitresOf(number, taken, its))
            : taken.Ph is not null ? (PhOf(stage), PhAtRoom(taken, stage))
            : (its.Celsius, taken.Temperature!.Value.Value.Celsius);
        if (value is not { } read)
        {
            return null;
        }

        if (!double.IsFinite(likely[readout]))
        {
            Add("reading.noNumber", Severity.Warning, number, MeantReading.KeyOf(taken), $"{readout.Title} at {ReadingsFile.Word(taken.At)} is not forecast here, so the reading was passed over", null, "a number of the forecast");
            return null;
        }

        double scatter = instrument.Kind.Scatter.VarianceAt(read);
        return new(number, taken, instrument, new Reading(Invariant($"{number} {readout.Id}"), readout, read, scatter, instrument.Off));
    }

    /// <summary>The stage of a point.</summary>
    internal static Stage StageOf(ReadingPoint point) => point switch
    {
        ReadingPoint.Mash => Stage.Mash,
        ReadingPoint.CopperUp => Stage.CopperUp,
        ReadingPoint.KnockOut => Stage.KnockOut,
        ReadingPoint.Chill => Stage.Chill,
        ReadingPoint.Cast => Stage.Cast,
        ReadingPoint.Ferment => Stage.Ferment,
        ReadingPoint.Crash => Stage.Crash,
        ReadingPoint.Rack => Stage.Rack,
        _ => Stage.Package,
    };

    private (Stage Stage, int Portion)? PlaceOf(int number, TakenReading taken)
    {
        Stage stage = StageOf(taken.At);
        int[] portions = [.. brew.Readouts!.Stages.Where(its => its.Place.Stage == stage).Select(its => its.Place.Portion)];
        string word = ReadingsFile.Word(taken.At);
        if (portions.Length == 0)
        {
            Add("reading.noStage", Severity.Warning, number, "at", $"{word}; this brew has no such stage, so the reading was passed over", word, string.Join(", ", brew.Readouts.Stages.Select(its => Names.Said(its.Place.Stage)).Distinct()));
            return null;
        }

        string[] names = [.. brew.PortionNames.Where(pair => portions.Contains(pair.Key)).Select(pair => pair.Value)];
        if (taken.Portion is { } named && brew.Recipe.Portions.Count > 0 && !brew.Recipe.Portions.Any(portion => portion.Name == named))
        {
            string known = string.Join(", ", brew.Recipe.Portions.Select(portion => portion.Name));
            Add("reading.portionUnknown", Severity.Warning, number, "portion", $"\"{named}\"; the portions are {known}; the reading was passed over", named, known);
            return null;
        }

        if (taken.Portion is { } one && (brew.Recipe.Portions.Count == 0 || !names.Contains(one)))
        {
            Add("reading.portionTooEarly", Severity.Warning, number, "portion", $"\"{one}\"; at {word} nothing is divided, so it was taken as a reading of the whole", one, "the whole");
            return (stage, portions[0]);
        }

        if (taken.Portion is null && portions.Length > 1)
        {
            string known = string.Join(", ", names);
            Add("reading.whichPortion", Severity.Warning, number, "portion", $"at {word} there are the portions {known}; name one: the reading was passed over", null, known);
            return null;
        }

        return (stage, taken.Portion is null ? portions[0] : brew.PortionNames.First(pair => pair.Value == taken.Portion && portions.Contains(pair.Key)).Key);
    }

    private (Readout Readout, double? Value) GravityOf(int number, TakenReading taken, KitInstrument instrument, StageReadouts its)
    {
        double shown = taken.Gravity!.Value.Value.Ratio;
        if (taken.IsPlatoWithoutUnit)
        {
            Add("reading.plato", Severity.Note, number, "gravity", Invariant($"{taken.Gravity.Value.Text}; no wort has that gravity, so it was taken as °P: {shown:0.0000}"), taken.Gravity.Value.Text, "0.9 to 1.2 without a unit");
        }

        if (instrument.Kind.Unit == "°P")
        {
            return (its.Plato, Refractometer.PlatoOfWort(SucroseSolution.PlatoAt(shown)));
        }

        if (taken.At >= ReadingPoint.Ferment && IsHydrometer(instrument) && taken.IsDegassed != true)
        {
            Add("reading.gas", Severity.Note, number, "degassed", "bubbles lift a hydrometer, and it shows too much; shake the gas out, and say \"degassed\": true. It was taken as it was shown", null, "true");
        }

        double? clear = IsHydrometer(instrument) ? Cooled(number, taken, shown) : shown;
        double swimming = taken.Sample == SampleKind.AsDrawn ? likely[its.SuspensionGravity] - likely[its.Gravity] : 0;
        return (its.Gravity, clear - (double.IsFinite(swimming) ? swimming : 0));
    }

    private double? Cooled(int number, TakenReading taken, double shown)
    {
        double marked = MarkedFor(taken), sample = taken.Temperature?.Value.Celsius ?? marked;
        if (!Hydrometer.IsCoolEnough(sample))
        {
            Add("reading.tooHot", Severity.Warning, number, "temperature", Invariant($"{sample:0.#} °C; above {Hydrometer.HottestAdvisedSampleCelsius:0} °C no correction is to be trusted, so the reading was passed over. Cool the sample, covered: a hot one scalds, and glass may crack"), Invariant($"{sample:0.#} °C"), Invariant($"{Hydrometer.HottestAdvisedSampleCelsius:0} °C"));
            return null;
        }

        return Hydrometer.Corrected(shown, sample, marked);
    }

    /// <summary>What a gravity would mean had the sample been so warm, or as cool as the mark; the one that is not what was taken. Null where it cannot be.</summary>
    internal (double Value, string Why, string Code)? OtherwiseMeant(MeantReading reading)
    {
        if (reading.Taken.Gravity is not { } shown || !IsHydrometer(reading.Instrument))
        {
            return null;
        }

        double marked = MarkedFor(reading.Taken);
        if (reading.Taken.Temperature is { } told)
        {
            return told.Value.Celsius > WarmSample
                ? (shown.Value.Ratio, Invariant($"as it was shown it would fit: was it corrected for {told.Value.Celsius:0.#} °C already?"), "reading.correctedTwice")
                : null;
        }

        double stage = likely[StageReadouts.Of(reading.Meant.Readout.Place.Stage, reading.Meant.Readout.Place.Portion).Celsius];
        return stage > WarmSample && stage <= 100
            ? (Hydrometer.Corrected(shown.Value.Ratio, stage, marked), Invariant($"it would fit if the sample was still {stage:0} °C warm: say how warm it was"), "reading.hotHydrometer")
            : null;
    }

    private double LitresOf(int number, TakenReading taken, StageReadouts its)
    {
        double stage = likely[its.Celsius];
        double celsius = taken.Temperature?.Value.Celsius ?? (double.IsFinite(stage) ? stage : Room);
        if (taken.Temperature is null)
        {
            Add("reading.temperatureUnsaid", Severity.Note, number, "temperature", Invariant($"hot wort stands up to 4 % higher, and nobody said how warm it was; it was taken to be {celsius:0} °C, as at {ReadingsFile.Word(taken.At)}"), null, Invariant($"{celsius:0} °C"));
        }

        double bounded = Math.Clamp(celsius, 0, 100);
        return taken.Volume!.Value.Value.Litres * WaterDensity.KilogramsPerLitreAt(bounded) / WaterDensity.KilogramsPerLitreAt(Room);
    }

    /// <summary>How warm a sample was; room temperature where nobody said.</summary>
    internal static Entered<Temperature> SampleOf(TakenReading taken) => taken.Temperature ?? new(Temperature.FromCelsius(Room), Invariant($"{Room:0} °C"));

    /// <summary>The pH of a mash is told of a cooled sample; in a warm one the acids have let go of more.</summary>
    private static double PhAtRoom(TakenReading taken, Stage stage) =>
        stage == Stage.Mash ? MashPhTemperature.ToRoom(taken.Ph!.Value, SampleOf(taken).Value) : taken.Ph!.Value;

    private static Readout PhOf(Stage stage) => stage switch
    {
        Stage.Mash => PhReadouts.MashPh,
        < Stage.Ferment => PhReadouts.WortPh,
        _ => PhReadouts.BeerPh,
    };

    private static double MarkedFor(TakenReading taken) => taken.Marked?.Value.Celsius ?? Room;

    private static bool IsHydrometer(KitInstrument instrument) => instrument.Kind.Id.StartsWith("hydrometer", StringComparison.Ordinal);

    private void Add(string code, Severity severity, int number, string key, string message, string? value, string? limit) =>
        findings.Add(new Finding(code, severity, MeantReading.PathOf(number, key), message, value, limit));
}
