using System.Globalization;
using Gylebook.Science.Quantities;

namespace Gylebook.Gyles.Cellar;

/// <summary>A line of a table of readings that was not taken.</summary>
/// <param name="Line">Its number in the file, from 1.</param>
/// <param name="Why">Column, value and limit.</param>
public readonly record struct RefusedLine(int Line, string Why);

/// <summary>A table of readings as a logger or a spreadsheet writes it: columns found by name.</summary>
/// <remarks>
/// <para>The first line that is no comment names the columns: a time (or a date and a time), and one or more of gravity, temperature, pressure and battery, each with its
/// unit where that is not SG, °C, bar or V: <c>gravity (°P)</c>, <c>temp_f</c>. Other columns are passed over and named. Values are parted by comma, semicolon or tab.</para>
/// <para>Times are as <see cref="TryTime"/> has them; one without a zone is of the zone that is given.</para>
/// </remarks>
public sealed class CsvReadings
{
    /// <summary>More lines than a device writes in years.</summary>
    public const int MostLines = 200_000;

    private static readonly string[] TimeFormats = ["yyyy-MM-dd HH:mm", "yyyy-MM-dd HH:mm:ss", "yyyy-MM-dd HH:mm:ss.FFFFFFF", "yyyy/MM/dd HH:mm", "yyyy/MM/dd HH:mm:ss", "d.M.yyyy HH:mm", "d.M.yyyy HH:mm:ss", "d.M.yyyy H:mm"];

    private static readonly (Column Column, string[] Names)[] Known =
    [
        (Column.Time, ["time", "timestamp", "datetime", "date time", "at", "when", "date/time"]),
        (Column.Date, ["date", "day"]),
        (Column.Gravity, ["gravity", "sg", "specific gravity", "plato", "extract", "apparent extract"]),
        (Column.Temperature, ["temperature", "temp"]),
        (Column.Pressure, ["pressure"]),
        (Column.Battery, ["battery", "voltage"]),
        (Column.Id, ["id"]),
    ];

    private readonly List<SensorReading> _taken = [];
    private readonly List<RefusedLine> _refused = [];
    private readonly DateTimeOffset _arrived;
    private readonly TimeZoneInfo _zone;
    private (Column Column, string Unit)[] _columns = [];
    private char _parting = ',';

    private CsvReadings(DateTimeOffset arrived, TimeZoneInfo zone) => (_arrived, _zone) = (arrived, zone);

    private enum Column
    {
        None,
        Time,
        Date,
        Gravity,
        Temperature,
        Pressure,
        Battery,
        Id,
    }

    /// <summary>Readings that can be taken.</summary>
    public IReadOnlyList<SensorReading> Taken => _taken;

    /// <summary>Lines that cannot.</summary>
    public IReadOnlyList<RefusedLine> Refused => _refused;

    /// <summary>Columns that were passed over.</summary>
    public IReadOnlyList<string> PassedOver { get; private set; } = [];

    /// <summary>Why nothing can be taken at all; null when the table has what it needs.</summary>
    public string? Fault { get; private set; }

    /// <summary>Reads a table.</summary>
    /// <param name="text">All of it.</param>
    /// <param name="arrived">The time.</param>
    /// <param name="zone">The zone of times that name none.</param>
    public static CsvReadings Read(string text, DateTimeOffset arrived, TimeZoneInfo zone)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(zone);
        CsvReadings read = new(arrived, zone);
        int number = 0;
        foreach (string line in text.TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n'))
        {
            number++;
            if (line.Length == 0 || line.StartsWith('#') || string.IsNullOrWhiteSpace(line))
            {
                continue;
            }

            if (number > MostLines)
            {
                read.Fault = Invariant($"the file has more than {MostLines} lines; give it in parts");
            }
            else if (read._columns.Length == 0)
            {
                read.Fault = read.Heading(line);
            }
            else
            {
                read.Row(number, line);
            }

            if (read.Fault is not null)
            {
                return read;
            }
        }

        read.Fault = read._columns.Length == 0 ? "the file is empty: its first line names the columns, such as time,gravity,temperature" : null;
        return read;
    }

    /// <summary>An instant as devices write it: ISO 8601, a date and a time with a space between (year first, or day first with points), or seconds since 1970.</summary>
    public static bool TryTime(string text, TimeZoneInfo zone, out DateTimeOffset at)
    {
        ArgumentNullException.ThrowIfNull(text);
        text = text.Trim();
        if (double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double seconds))
        {
            bool isInstant = seconds is > 1e8 and < 1e11;
            at = isInstant ? DateTimeOffset.FromUnixTimeMilliseconds((long)(seconds * 1000)) : default;
            return isInstant;
        }

        at = default;
        if (DateTime.TryParseExact(text.Replace('T', ' '), TimeFormats, CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime local))
        {
            at = new DateTimeOffset(local, zone.GetUtcOffset(local)).ToUniversalTime();
            return true;
        }

        // With a zone at its end there is nothing to guess.
        bool hasZone = text.EndsWith('Z') || (text.Length > 16 && text.AsSpan(16).IndexOfAny('+', '-') >= 0);
        return hasZone && char.IsAsciiDigit(text[0]) && text.IndexOf('-', StringComparison.Ordinal) == 4
            && DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.AdjustToUniversal, out at);
    }

    private string? Heading(string line)
    {
        _parting = line.Contains(';', StringComparison.Ordinal) ? ';' : line.Contains('\t', StringComparison.Ordinal) ? '\t' : ',';
        string[] names = Cells(line);
        _columns = [.. names.Select(ColumnOf)];
        PassedOver = [.. names.Where((name, i) => _columns[i].Column == Column.None && name.Length > 0)];
        IGrouping<Column, (Column Column, string Unit)>? twice = _columns.Where(column => column.Column != Column.None).GroupBy(column => column.Column).FirstOrDefault(same => same.Count() > 1);
        bool hasValue = _columns.Any(column => column.Column is Column.Gravity or Column.Temperature or Column.Pressure);
        return !_columns.Any(column => column.Column is Column.Time or Column.Date) ? $"the first line names no column \"time\"; it names {string.Join(", ", names)}"
            : !hasValue ? $"the first line names no column \"gravity\", \"temperature\" or \"pressure\"; it names {string.Join(", ", names)}"
            : twice is not null ? $"two columns are a {Said(twice.Key)}: leave one out"
            : null;
    }

    private void Row(int number, string line)
    {
        string[] cells = Cells(line);
        SensorReading reading = new(default, _arrived);
        string time = string.Join(' ', new[] { Column.Date, Column.Time }.Select(column => Cell(cells, column)).Where(text => text.Length > 0));
        string? why = TryTime(time, _zone, out DateTimeOffset at) ? null
            : $"time \"{time}\": write 2026-03-01 18:30, 2026-03-01T18:30:00Z, 1.3.2026 18:30 or seconds since 1970";
        reading = reading with { At = at };
        for (int i = 0; i < Math.Min(cells.Length, _columns.Length) && why is null; i++)
        {
            why = cells[i].Length == 0 ? null : Value(ref reading, _columns[i].Column, cells[i], _columns[i].Unit);
        }

        why ??= reading.SaysSomething ? null : "it has a time and no value";
        if (why is null)
        {
            _taken.Add(reading);
        }
        else
        {
            _refused.Add(new RefusedLine(number, why));
        }
    }

    private static string? Value(ref SensorReading reading, Column column, string cell, string unit)
    {
        string text = unit.Length == 0 || !char.IsAsciiDigit(cell[^1]) ? cell : $"{cell} {unit}";
        string? why = null;
        switch (column)
        {
            case Column.Gravity:
                why = SensorText.Gravity(text, out SpecificGravity? gravity);
                reading = reading with { Gravity = gravity };
                break;
            case Column.Temperature:
                why = SensorText.Temperature(text, out Temperature? temperature);
                reading = reading with { Temperature = temperature };
                break;
            case Column.Pressure:
                why = SensorText.Pressure(text, out GaugePressure? pressure);
                reading = reading with { Pressure = pressure };
                break;
            case Column.Battery:
                why = SensorText.Battery(text, out double? volts);
                reading = reading with { BatteryVolts = volts };
                break;
            case Column.Id:
                reading = reading with { Id = cell };
                break;
        }

        return why;
    }

    private string Cell(string[] cells, Column wanted)
    {
        int place = Array.FindIndex(_columns, column => column.Column == wanted);
        return place >= 0 && place < cells.Length ? cells[place] : "";
    }

    /// <summary>What a heading means: "Temp (°F)", "gravity_P", "Plato".</summary>
    private static (Column Column, string Unit) ColumnOf(string name)
    {
        string[] words = name.ToLowerInvariant().Split(['(', ')', '[', ']', '_', ' '], StringSplitOptions.RemoveEmptyEntries);
        for (int taken = words.Length; taken > 0; taken--)
        {
            string said = string.Join(' ', words[..taken]);
            (Column Column, string[] Names) known = Known.FirstOrDefault(one => one.Names.Contains(said));
            if (known.Column != Column.None)
            {
                string unit = said is "plato" or "extract" or "apparent extract" ? "°P" : UnitOf(known.Column, string.Join(' ', words[taken..]));
                return (known.Column, unit);
            }
        }

        return (Column.None, "");
    }

    /// <summary>As the table of units writes it; the usual one is left out.</summary>
    private static string UnitOf(Column column, string said) => (column, said) switch
    {
        (Column.Gravity, "°p" or "p" or "plato" or "degp") => "°P",
        (Column.Temperature, "°f" or "f" or "degf" or "fahrenheit") => "°F",
        (Column.Pressure, "psi" or "kpa" or "mbar") => said == "kpa" ? "kPa" : said,
        _ => "",
    };

    private static string Said(Column column) => column.ToString().ToLowerInvariant();

    private string[] Cells(string line) => [.. line.Split(_parting).Select(cell => cell.Trim().Trim('"').Trim())];
}
