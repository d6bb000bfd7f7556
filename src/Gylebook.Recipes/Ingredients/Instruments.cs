using Gylebook.Recipes.Data;
using Gylebook.Science.Data;

namespace Gylebook.Recipes.Ingredients;

/// <summary>An error of two parts: one in the unit, one as a share of what is read. Standard deviations.</summary>
/// <param name="InUnit">In the instrument's unit.</param>
/// <param name="Share">Of what is read.</param>
public readonly record struct InstrumentError(double InUnit, double Share)
{
    /// <summary>Its variance where so much is read.</summary>
    public double VarianceAt(double read) => (InUnit * InUnit) + (Share * read * Share * read);
}

/// <summary>An instrument, and how far it may be off.</summary>
/// <param name="Id">Stable id.</param>
/// <param name="Name">As people say it.</param>
/// <param name="Unit">What it reads in.</param>
/// <param name="Offset">Its own, the same in all its readings, as long as nobody has checked it.</param>
/// <param name="Checked">The same once somebody has.</param>
/// <param name="Scatter">Of one reading about that.</param>
/// <param name="Provenance">Where the figures come from.</param>
public sealed record Instrument(
    string Id, string Name, string Unit, InstrumentError Offset, InstrumentError Checked, InstrumentError Scatter, Provenance Provenance)
{
    /// <summary>Variance of one reading of an instrument nobody has checked.</summary>
    public double VarianceAt(double read) => Offset.VarianceAt(read) + Scatter.VarianceAt(read);

    /// <summary>What it reads, as the key of a readings file: <c>gravity</c>, <c>volume</c>, <c>ph</c> or <c>temperature</c>; null for what no such file takes.</summary>
    public string? Reads => Unit switch
    {
        "SG" or "°P" => "gravity",
        "L" => "volume",
        "pH" => "ph",
        "K" => "temperature",
        _ => null,
    };
}

/// <summary>Something a brewer can read on the way.</summary>
/// <param name="Id">Stable id.</param>
/// <param name="Reads">A number that can be told of a run, or a parameter.</param>
/// <param name="Instrument">With what.</param>
/// <param name="Words">As people say it.</param>
/// <param name="Minutes">Of work.</param>
public sealed record ReadingKind(string Id, string Reads, Instrument Instrument, string Words, double Minutes)
{
    /// <summary>Whether it is that number or parameter which is read.</summary>
    public bool IsOf(string id) => IdPattern.Fits(Reads, IdPattern.WithoutLot(id));

    /// <summary>What is read there, in words.</summary>
    public string Said(string id) => Words.Replace("{}", IdPattern.OpenPart(Reads, id), StringComparison.Ordinal);
}

/// <summary>Instruments and what is read with them: <c>data/instruments.csv</c>, <c>data/readings.csv</c>.</summary>
public static class Instruments
{
    private static readonly Lazy<Table<Instrument>> Rows = new(() => new Table<Instrument>(ReferenceData.Table("instruments.csv"), Make));
    private static readonly Lazy<Table<ReadingKind>> Kinds = new(() => new Table<ReadingKind>(ReferenceData.Table("readings.csv"), row => new ReadingKind(
        row.Required("id"), row.Required("reads"), Rows.Value.Of(row.Required("instrument")), row.Required("words"), row.Number("minutes"))));

    /// <summary>All instruments.</summary>
    public static IReadOnlyList<Instrument> All => Rows.Value.All;

    /// <summary>The instrument of that id or name; null for none.</summary>
    public static Instrument? Find(string named) =>
        All.FirstOrDefault(instrument => string.Equals(instrument.Id, named, StringComparison.OrdinalIgnoreCase) || string.Equals(instrument.Name, named, StringComparison.OrdinalIgnoreCase));

    /// <summary>All that can be read.</summary>
    public static IReadOnlyList<ReadingKind> Readings => Kinds.Value.All;

    private static Instrument Make(CsvRow row) => new(
        row.Required("id"), row.Required("name"), row.Required("unit"),
        Error(row, "offset"), Error(row, "checked"), Error(row, "scatter"), Provenance.Of(row));

    private static InstrumentError Error(CsvRow row, string column) =>
        new(row.NumberOrNull(column) ?? 0, row.NumberOrNull(column + "Share") ?? 0);
}
