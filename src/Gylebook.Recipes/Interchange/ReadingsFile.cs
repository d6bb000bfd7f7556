using System.Text.Json;
using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Readings;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange;

/// <summary>Readings of a brew, <c>gylebook-readings/1</c>: what was read, where and with what; see <c>docs/guide/readings.md</c>.</summary>
public static class ReadingsFile
{
    /// <summary>What the file's <c>format</c> key says.</summary>
    public const string Format = "gylebook-readings/1";

    private static readonly WordTable<ReadingPoint> Points = new(
        (ReadingPoint.Mash, "mash"), (ReadingPoint.CopperUp, "copper-up"), (ReadingPoint.KnockOut, "knock-out"), (ReadingPoint.Chill, "chill"),
        (ReadingPoint.Cast, "cast"), (ReadingPoint.Ferment, "ferment"), (ReadingPoint.Crash, "crash"), (ReadingPoint.Rack, "rack"), (ReadingPoint.Package, "package"));

    private static readonly WordTable<SampleKind> Samples = new(
        (SampleKind.Settled, "settled"), (SampleKind.Filtered, "filtered"), (SampleKind.AsDrawn, "as drawn"));

    private static readonly ValueForm<Entered<SpecificGravity>> Gravity = new SpelledForm<Entered<SpecificGravity>>(
        "gravity.wrong",
        text => (ReadingText.TryGravity(text, out Entered<SpecificGravity> gravity), gravity),
        gravity => gravity.Text,
        text => ($"\"{text}\"; write a gravity as \"1.048\" or \"12.0 °P\"", "0.9 to 1.2, or 1.5 to 40 °P"),
        ("pattern", new TextNode(@"^\s*[0-9]+([.,][0-9]+)?\s*(SG|sg|°P|P|Plato|degP|°Plato|Brix|°Bx|Bx|°Brix)?\s*$")), SchemaParts.Example("1.048"));

    private static readonly Form<TakenReading> Reading = new Form<TakenReading>(new TakenReading(default)) { About = "One reading, as the instrument showed it: one of gravity, volume and ph, or a temperature alone." }
        .Need("at", "at", Leaves.Word(Points), r => r.At, (r, v) => r with { At = v }, new("Where in the brew."))
        .May("gravity", "gravity", Gravity, r => r.Gravity, (r, v) => r with { Gravity = v }, new("As shown: \"1.048\", \"12 °P\"."))
        .May("volume", "volume", Leaves.Of<HotVolume>(), r => r.Volume, (r, v) => r with { Volume = v }, new("As it stands in the vessel, hot or cold: say how warm."))
        .May("ph", "pH", Spelled.Ph, r => r.Ph, (r, v) => r with { Ph = v }, new("Of a sample cooled to 20 °C: of the mash, the wort in the fermenter, or the beer."))
        .May("temperature", "temperature", Leaves.Of<Temperature>(), r => r.Temperature, (r, v) => r with { Temperature = v }, new("Of the sample, or of what stands in the vessel. Cool a sample before you read it: a hot one scalds, and glass may crack."))
        .May("instrument", "instrument", Leaves.Name, r => r.Instrument, (r, v) => r with { Instrument = v }, new("By id or name: hydrometer, hydrometerNarrow, refractometerWort, floatingSensor, volumeMarks, phMeter, phStrips, thermometerDial, thermometerDigital. The usual one when left out."))
        .May("called", "called", Leaves.Name, r => r.Called, (r, v) => r with { Called = v }, new("Which of several of that kind: each is off in its own way."))
        .May("checked", "checked", Leaves.Flag, r => r.IsChecked, (r, v) => r with { IsChecked = v }, new("Whether it was checked: a hydrometer in water, a meter in buffers, marks with a scale."))
        .May("marked", "marked for", Leaves.Of<Temperature>(), r => r.Marked, (r, v) => r with { Marked = v }, new("The temperature a hydrometer is marked for; 20 °C when left out."))
        .May("sample", "sample", Leaves.Word(Samples), r => r.Sample, (r, v) => r with { Sample = v }, new("How it was taken; settled when left out. As drawn it is heavier by what swims in it."))
        .May("degassed", "degassed", Leaves.Flag, r => r.IsDegassed, (r, v) => r with { IsDegassed = v }, new("Whether the gas was shaken out: bubbles lift a hydrometer."))
        .May("portion", "portion", Leaves.Name, r => r.Portion, (r, v) => r with { Portion = v }, new("Which portion, where the cast was divided."))
        .May("sure", "sure", Leaves.Flag, r => r.IsSure, (r, v) => r with { IsSure = v }, new("Whether you have read it again: then it is taken, however odd."))
        .Agree(Check);

    /// <summary>The table of its fields.</summary>
    public static FileForm<BrewReadings> Form { get; } = new(
        Format,
        "Readings of a Gylebook brew",
        new Form<BrewReadings>(new BrewReadings { Name = "", Readings = [] }) { About = "What was read of one brew, in the order in which it was read." }
            .Need("name", "name", Leaves.Name, r => r.Name, (r, v) => r with { Name = v })
            .May("notes", "notes", Leaves.Prose, r => r.Notes, (r, v) => r with { Notes = v })
            .Need("readings", "readings", new ListForm<TakenReading>(Reading) { NeedsOne = true, ItemSaid = "reading" }, r => r.Readings, (r, v) => r with { Readings = v }, new("In the order in which they were read.")));

    /// <summary>Reads them from the text of a file.</summary>
    public static Reading<BrewReadings> Read(string text) => Form.Read(text);

    /// <summary>Reads them from an open file; the stream stays open.</summary>
    public static Reading<BrewReadings> Read(Stream stream) => Form.Read(stream);

    /// <summary>One reading as the JSON of its entry: what a book keeps of it.</summary>
    public static string WriteEntry(TakenReading reading)
    {
        using var file = JsonDocument.Parse(Form.Write(new BrewReadings { Name = OfAnEntry, Readings = [reading] }));
        return file.RootElement.GetProperty("readings")[0].GetRawText();
    }

    /// <summary>One reading from the JSON of its entry, with all that is wrong in it.</summary>
    public static (TakenReading? Reading, IReadOnlyList<Finding> Findings) ReadEntry(string entry)
    {
        Reading<BrewReadings> read = Read($$"""{ "format": "{{Format}}", "name": "{{OfAnEntry}}", "readings": [ {{entry}} ] }""");
        return (read.Value?.Readings[0], read.Findings);
    }

    private const string OfAnEntry = "an entry";

    /// <summary>A place as files have it.</summary>
    public static string Word(ReadingPoint point) => Points.Word(point);

    private static void Check(TakenReading reading, PartCursor at)
    {
        int read = (reading.Gravity is null ? 0 : 1) + (reading.Volume is null ? 0 : 1) + (reading.Ph is null ? 0 : 1);
        if (read > 1 || (read == 0 && reading.Temperature is null))
        {
            at.Error("reading.one", "", read > 1
                ? "a reading has one of gravity, volume and ph; write the others as readings of their own"
                : "a reading needs a gravity, a volume, a ph or a temperature");
        }

        if (reading.Instrument is { } named && Instruments.Find(named) is null)
        {
            string known = string.Join(", ", Instruments.All.Select(instrument => instrument.Id));
            at.Error("instrument.unknown", "instrument", $"\"{FindingList.Shorten(named)}\" is not one of {known}; the nearest is \"{NearestWord.To(named, Instruments.All.Select(instrument => instrument.Id))}\"", named, known);
        }
    }
}
